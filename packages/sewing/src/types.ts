import type { Finding, PinOn } from '@seamwright/arrangement';
import type { Polygon, Segment, Transform } from '@seamwright/geometry';

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
  /** What the order costs; see `costsOf` in order/costs.ts. */
  readonly costs?: OrderCosts;
  /** No good order that heeds the maker's will costs less, proved; absent where the order was given, not chosen. */
  readonly optimal?: boolean;
  /** Set where the section is a turned or mirrored copy of an earlier one: same patches, same order. */
  readonly copyOf?: {
    readonly letter: string;
    readonly mirrored: boolean;
    /** Carries the earlier section on to this one, inches on the block. */
    readonly transform: Transform;
  };
}

/** Sewing two finished units together along one straight seam. */
export interface Join {
  /** Letters, or the `makes` of earlier joins. */
  readonly units: readonly [string, string];
  readonly makes: string;
  readonly seam: Segment;
  readonly line: number;
  /** True when only a part of the seam is sewn now: from `seam`'s first point; it is closed by a later join. */
  readonly partial: boolean;
  /** Of a partial join: the stretch left open, and the number (in {@link SewingPlan.joins}) of the join after which it is closed. */
  readonly open?: { readonly seam: Segment; readonly closedAfter: number };
}

/** Something that the maker wants of the plan, with patches by index. */
export type Pin = PinOn<number>;

/** What an order costs, one figure for each thing that makes orders differ; all 0 or more. */
export interface OrderCosts {
  /** Patches under which a darker patch's allowance lies (only where shades are known). */
  readonly showThrough: number;
  /** Sew lines that cannot be folded along their whole length without crossing patches already sewn. */
  readonly uncleanFolds: number;
  /** Steps to a patch that neither touches the one sewn before it nor a neighbour of that. */
  readonly jumps: number;
}

/** How much each cost counts. */
export type OrderWeights = { readonly [K in keyof OrderCosts]: number };

/** The figures by which plans are compared. */
export interface Figures {
  readonly foundations: number;
  /** Points that must meet when sections are joined: vertices inside the joins. */
  readonly matchPoints: number;
  /**
   * Different foundations, mirror images counted once: they are pieced alike, though prints have one face, so that each of
   * the two is sewn on prints of its own.
   */
  readonly templates: number;
  /** Inches of seam between sections. */
  readonly joinLength: number;
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
  readonly figures: Figures;
  /** Pins that cannot hold together: the smallest such set that was found. The plan leaves them out. */
  readonly conflict: readonly Pin[];
  /** Pins that the plan leaves out because no way was found to heed them, though it is not proved that there is none. */
  readonly undecided: readonly Pin[];
  /** What stands in the way; the arrangement's own findings are not repeated here. */
  readonly findings: readonly Finding[];
}
