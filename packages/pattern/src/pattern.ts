import type { Drawing, PatchRecord } from '@seamwright/arrangement';
import type { LengthUnit } from '@seamwright/geometry';

/** One block of the pattern: its drawing at finished size, and what the maker gave its patches. */
export interface Block {
  readonly id: string;
  readonly name: string;
  readonly drawing: Drawing;
  /** Spacing of the drawing grid, inches. */
  readonly grid: number;
  /** What the maker gave the patches (a note, …), kept with each patch while lines elsewhere move. */
  readonly patches: readonly PatchRecord[];
}

/** The whole document. Plain data, never changed in place: every edit makes a new one, so undo is exact. */
export interface Pattern {
  readonly format: 'seamwright-pattern/1';
  readonly title: string;
  /** Which units lengths are shown in. Stored lengths are always inches. */
  readonly unit: LengthUnit;
  readonly blocks: readonly Block[];
}
