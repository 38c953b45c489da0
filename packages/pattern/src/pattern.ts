import type { Drawing, PatchRecord } from '@seamwright/arrangement';
import type { LengthUnit } from '@seamwright/geometry';
import type { PressingRecord } from './pressings.ts';
import type { Picture, Tracing } from './tracing/tracing.ts';
import type { SewingWishes } from './wishes.ts';

/** One block of the pattern: its drawing at finished size, and what the maker gave its patches. */
export interface Block {
  readonly id: string;
  readonly name: string;
  readonly drawing: Drawing;
  /** Spacing of the drawing grid, inches. */
  readonly grid: number;
  /** Into how many columns and rows the grid divides the block, whatever its size; then {@link grid} waits. */
  readonly gridParts?: number;
  /** What the maker gave the patches (a note, a fabric, …), kept with each patch while lines elsewhere move. */
  readonly patches: readonly PatchRecord[];
  /** How it is to be sewn; {@link NO_WISHES} where the maker said nothing. */
  readonly sewing?: SewingWishes;
  /** How single joins are pressed, where not as usual. */
  readonly pressings?: readonly PressingRecord[];
  /** The picture under the drawing, if there is one. */
  readonly tracing?: Tracing;
}

/** What patches are cut from. */
export interface Fabric {
  readonly id: string;
  readonly name: string;
  /** How it is shown: `#rrggbb`, small letters. */
  readonly colour: string;
  /** Usable width, selvedges off, inches; left out where it is the usual one. */
  readonly width?: number;
  /**
   * How pieces lie on it: along the block's upright, either way up (`straight`), or with the print's up at the block's
   * top (`one way`: a directional print). Left out: each piece along its sew line.
   */
  readonly grain?: 'straight' | 'one way';
  /** A photo of it, at a known scale. */
  readonly swatch?: Swatch;
}

/** A photo of a fabric. */
export interface Swatch {
  readonly picture: Picture;
  /** Inches of fabric from its left edge to its right. */
  readonly width: number;
}

/** One choice of fabrics for all patches of the pattern. */
export interface Colourway {
  readonly id: string;
  readonly name: string;
}

/** The whole document. Plain data, never changed in place: every edit makes a new one, so undo is exact. */
export interface Pattern {
  readonly format: 'seamwright-pattern/1';
  readonly title: string;
  /** Which units lengths are shown in. Stored lengths are always inches. */
  readonly unit: LengthUnit;
  /** In the order in which they are offered; left out by patterns that have none. */
  readonly fabrics?: readonly Fabric[];
  /**
   * All of them, at least two; left out by patterns that have one. The first is what `fabric` of the patches says, the
   * others are in their `fabrics`.
   */
  readonly colourways?: readonly Colourway[];
  readonly blocks: readonly Block[];
}
