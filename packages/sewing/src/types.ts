import type { Finding } from '@seamwright/arrangement';
import type { Polygon, Segment } from '@seamwright/geometry';

export type Verdict = 'one foundation' | 'several foundations' | 'partial seams' | 'not sewable';

/** The stretch along which one patch is sewn to those before it: straight, on one line of the arrangement. */
export interface SewLine extends Segment {
  /** Index of the patch that is sewn on by it. */
  readonly patch: number;
  /** Index of the arrangement's line. */
  readonly line: number;
}

/** The patches that share one foundation, in piecing order. */
export interface Section {
  readonly letter: string;
  /** Patch indices; `order[0]` is the first patch, named letter + 1. */
  readonly order: readonly number[];
  /** `sewLines[k - 1]` sews `order[k]` on. One fewer than patches. */
  readonly sewLines: readonly SewLine[];
  /** The section's finished outline: true corners, clockwise on the screen, inches. */
  readonly outline: Polygon;
  /** Vertices along the outline (indices), clockwise, straight-through ones too: where match points are looked for. */
  readonly ring: readonly number[];
}

/** Sewing two finished units together along one straight seam. */
export interface Join {
  /** Letters, or the `makes` of earlier joins. */
  readonly units: readonly [string, string];
  readonly makes: string;
  readonly seam: Segment;
  readonly line: number;
  readonly partial: boolean;
}

/** How a block is sewn. */
export interface SewingPlan {
  readonly verdict: Verdict;
  /** True when no plan with fewer foundations exists, proved. */
  readonly provenLeast: boolean;
  /** No plan has fewer foundations than this. */
  readonly atLeast: number;
  readonly sections: readonly Section[];
  /** In working order. */
  readonly joins: readonly Join[];
  /** Patches that no foundation holds (only where the verdict is `not sewable`). */
  readonly unheld: readonly number[];
  /** What stands in the way; the arrangement's own findings are not repeated here. */
  readonly findings: readonly Finding[];
}
