import type { Point, Polygon, Segment } from '@seamwright/geometry';
import type { Drawing, LineId, PointId } from './drawing.ts';
import type { Message } from './message.ts';

/** Where a line runs on the block: splits and outline edges that lie on one straight line are one of these. */
export interface Line {
  /** Its place in {@link Arrangement.lines}. */
  readonly index: number;
  /** The splits and outline edges that lie on it. */
  readonly members: readonly LineId[];
  /** The two ends of its farthest stretch, inches. */
  readonly a: Point;
  readonly b: Point;
}

/** A point where lines meet. It remembers them, so collinearity is read off, never computed again. */
export interface Vertex {
  readonly index: number;
  readonly at: Point;
  /** Indices of the lines through it, ascending. */
  readonly lines: readonly number[];
  /** The maker's points that lie here. */
  readonly points: readonly PointId[];
}

/** A stretch of one line between two neighbouring vertices. */
export interface Edge {
  readonly index: number;
  readonly from: number;
  readonly to: number;
  readonly line: number;
  /** The splits and outline edges that were drawn along it. */
  readonly drawn: readonly LineId[];
  /** The patch on the left and on the right when walking from `from` to `to` as seen on the screen; -1: outside the block. */
  readonly left: number;
  readonly right: number;
}

/** One shape of the block, later one piece of fabric. */
export interface Patch {
  readonly index: number;
  /** Corner vertices (including straight-through ones where a seam of a neighbour ends), clockwise on the screen. */
  readonly ring: readonly number[];
  /** The edges of the ring, in the same order: `edges[i]` runs between `ring[i]` and `ring[i + 1]`. */
  readonly edges: readonly number[];
  /** Rings of shapes wholly inside this patch (islands); anticlockwise. Usually none. */
  readonly holes: readonly (readonly number[])[];
  /** All edges that the patch lies on, those of its holes too. */
  readonly border: readonly number[];
  /**
   * The corners of the ring: vertices where the boundary turns, be it by an imprecision that counts as straight.
   * Neighbouring patches fit without gap or overlap. Clockwise on the screen, inches.
   */
  readonly polygon: Polygon;
  /** Square inches, holes taken off. */
  readonly area: number;
  /** The point deepest inside, for the label, and its distance from the boundary, inches. */
  readonly heart: Point;
  readonly depth: number;
  /**
   * The lines round the patch in order, from a start that does not depend on where the walk began. It stays the
   * same while lines move without changing who meets whom; {@link carryPatches} builds on it.
   */
  readonly signature: string;
}

export type Severity = 'error' | 'caution';

/** One thing that the maker should know, with a place on the drawing. */
export interface Finding {
  /** Stable, for programs: e.g. `loose-end`. */
  readonly kind: string;
  readonly severity: Severity;
  /** One or two plain sentences: what, where, what to do. */
  readonly message: Message;
  /** The places, inches on the block. */
  readonly at: readonly Point[];
  /** The lines of the drawing that it is about. */
  readonly lines: readonly LineId[];
  /** The patches that it is about, by index. */
  readonly patches?: readonly number[];
  /** Of seams in each other's way: each one from where it begins to where it ends on the next, in order. */
  readonly ring?: readonly Segment[];
  /** Changes that would remove it, best first. */
  readonly repairs: readonly Repair[];
}

/** A change to the drawing that removes a finding. */
export interface Repair {
  readonly message: Message;
  /** The lines to add; none where the change is of another kind, and `drawing` says all. */
  readonly splits: readonly (readonly [Point, Point])[];
  readonly price?: RepairPrice;
  /** The drawing after the repair, ready to take the other's place. */
  readonly drawing?: Drawing;
}

/**
 * What a repair costs. Of repairs that keep all that was drawn the best one adds the fewest patches, then the least seam, then
 * leaves the largest smallest patch.
 */
export interface RepairPrice {
  /** Patches that the block gains; less than 0 where it loses some. */
  readonly patches: number;
  /** Inches of seam that the block gains; less than 0 where it loses some. */
  readonly seamLength: number;
  /** Square inches: the smallest patch of the block after it. */
  readonly smallestPatch: number;
}

/** The block's plane structure: who lies where, who touches whom along which line. Plain data. */
export interface Arrangement {
  readonly vertices: readonly Vertex[];
  readonly lines: readonly Line[];
  readonly edges: readonly Edge[];
  readonly patches: readonly Patch[];
  /** The outline's corners, clockwise on the screen. */
  readonly outline: Polygon;
  readonly findings: readonly Finding[];
}
