import {
  compose,
  dot,
  edgesOf,
  identity,
  type Point,
  type Polygon,
  reflectionAcross,
  rotation,
  type Segment,
  subtract,
  transformPoint,
  transformPolygon,
  translation,
} from '@seamwright/geometry';
import { type PatchNeed, pastSewLine } from '../sizes/patch-needs.ts';
import { nominalPlace, type PieceShape } from './nominal-place.ts';
import { outward, partsOutside } from './parts-outside.ts';

/** How a piece lies off true when it is laid down, before it is sewn, seen from the front. */
export interface Slip {
  /** Inches on the block. */
  readonly shift: Point;
  /** Degrees clockwise, about the middle of the piece. */
  readonly turn: number;
}

const TRUE: Slip = { shift: { x: 0, y: 0 }, turn: 0 };

/** A side of the piece after the flip, and how far inside of it what must be covered stays; below 0 where it does not. */
export interface MarginSide extends Segment {
  readonly margin: number;
}

/** One patch's piece, laid, sewn on and flipped; all seen from the front of the block, inches at the size that is sewn. */
export interface SewnPiece {
  /** As laid down: right side down and reaching past the sew line; of a first patch, right side up in its place. */
  readonly laid: Polygon;
  /** The same flipped over the sew line and spread flat; the allowance past the line, in truth folded under, is part of it. */
  readonly flipped: Polygon;
  /** The sides of `flipped`: side i starts at its corner i. */
  readonly sides: readonly MarginSide[];
  /** The least of the sides' margins. */
  readonly margin: number;
  /** How far the piece reaches past its sew line, square to it, where it does so least; null for a first patch. */
  readonly pastSewLine: number | null;
  /** What must be covered and is not, clockwise; none where the piece covers. Parts too narrow to be a shape are left out. */
  readonly uncovered: readonly Polygon[];
}

/**
 * Lays a piece down for its patch, sews it on, flips it over the sew line, and compares what it covers with what it must.
 * For the pieces that were computed, and in the same way for a size that the maker chose.
 *
 * Laid true, it has the same margin on opposite sides (half-rectangles: on all three); a slip is from there.
 *
 * @param piece width and height above 0
 */
export function placeSewFlip(piece: PieceShape, need: PatchNeed, slip: Slip = TRUE): SewnPiece {
  const { sewLine, needed } = need;
  const place = nominalPlace(piece, needed);
  const flip = sewLine === null ? identity() : reflectionAcross(sewLine);
  const centre = transformPoint(flip, place.centre);
  const slipped = compose(rotation(slip.turn, centre), translation(slip.shift.x, slip.shift.y));
  const laid = transformPolygon(slipped, transformPolygon(flip, place.corners));
  const flipped = transformPolygon(flip, laid);
  const sides = edgesOf(flipped).map((side): MarginSide => ({ ...side, margin: marginAt(side, needed) }));
  return {
    laid,
    flipped,
    sides,
    margin: Math.min(...sides.map(({ margin }) => margin)),
    pastSewLine: sewLine === null ? null : reachPast(sewLine, flipped, need),
    uncovered: partsOutside(needed, flipped),
  };
}

function marginAt(side: Segment, needed: Polygon): number {
  const normal = outward(side);
  return Math.min(...needed.map((p) => dot(subtract(side.a, p), normal)));
}

/**
 * From the sew line straight out to the piece's edge. How far that is changes along the line as the edge of a convex
 * shape does, so it is least at an end.
 */
function reachPast(sewLine: Segment, flipped: Polygon, { finished }: PatchNeed): number {
  const out = pastSewLine(sewLine, finished);
  const room = (p: Point) =>
    Math.min(
      ...edgesOf(flipped).map((side) => {
        const n = outward(side);
        const [gap, speed] = [dot(subtract(side.a, p), n), dot(out, n)];
        return gap < 0 ? gap : speed > 0 ? gap / speed : Number.POSITIVE_INFINITY;
      }),
    );
  return Math.min(room(sewLine.a), room(sewLine.b));
}
