import {
  area,
  convexHull,
  edgesOf,
  type Point,
  type Polygon,
  perimeter,
  type Segment,
  scale,
  turn,
} from '@seamwright/geometry';
import { axesOf, extent, type PieceShape } from '../placing/nominal-place.ts';
import type { CutRules } from '../types.ts';
import { directionAngle, roundTheCircle } from './angles.ts';
import { lackOf } from './cover.ts';
import { stepsUp } from './round-up.ts';

/**
 * A way to lay half-rectangles of any size: the width at an angle, so that both legs are along given directions; or the
 * long side along a direction, the rest clockwise of it.
 */
export type Lay =
  | { readonly along: 'leg'; readonly angle: number }
  | { readonly along: 'long side'; readonly angle: number };

/** With the legs along the grain: the right angle in any of the four corners. */
export const ALONG_GRAIN: readonly Lay[] = [0, 90, 180, 270].map((angle) => ({ along: 'leg', angle }));

/** With a leg along the sew line, the right angle at either end, or with the long side along it; all on the patch's side. */
export function laysAlong({ a, b }: Segment, patchSide: Point): readonly Lay[] {
  // The patch lies clockwise of this direction.
  const angle = directionAngle(turn(a, b, patchSide) > 0 ? { a, b } : { a: b, b: a });
  return [
    { along: 'leg', angle },
    { along: 'leg', angle: roundTheCircle(angle + 90) },
    { along: 'long side', angle },
  ];
}

/**
 * A half-rectangle whose whole rectangle has less area than `below` (square inches), sides whole multiples of
 * `roundUpTo`, that covers the shape within the rules' slack when it is laid in one of the ways; null when there is none.
 *
 * It is the one of the least area: all sizes are looked at but those that are ruled out by the area or the extent of the shape,
 * or by what a smaller one lacks.
 * Only where a square takes no more than a strip of one step's width along the longer side in addition, it is that
 * square: its halves fit patches and their mirror images, and nobody takes one side for the other.
 */
export function leastHalfRectangle(
  shape: Polygon,
  lays: readonly Lay[],
  rules: CutRules,
  below: number,
): PieceShape | null {
  const hull = convexHull(shape);
  const step = rules.roundUpTo;
  const best = leastOf(hull, lays, rules, below / step ** 2, false);
  if (best === null) return null;
  const longer = Math.max(best.width, best.height);
  const little = best.width * best.height + step * longer;
  // Half a square step: up to and including that much.
  return leastOf(hull, lays, rules, Math.min(little, below) / step ** 2 + 0.5, true) ?? best;
}

/** The least half-rectangle of fewer square steps than `bound`. */
function leastOf(
  hull: Polygon,
  lays: readonly Lay[],
  rules: CutRules,
  bound: number,
  onlySquares: boolean,
): PieceShape | null {
  const { roundUpTo: step, spare } = rules;
  // The triangle holds the hull with a strip of the spare round it.
  const leastArea = (2 * (area(hull) + perimeter(hull) * spare)) / step ** 2;
  const diameter = perimeter(hull) / 2;
  const leastSide = stepsUp(leastWidthOf(hull) + 2 * spare, step);
  let best: PieceShape | null = null;
  let found = { w: 0, h: bound };
  let most = bound;
  for (const lay of lays) {
    const { mayCover, leastWidth, leastHeight } = sieve(hull, lay, rules);
    const lowest = Math.max(leastSide, Math.floor(leastHeight / step));
    for (let w = Math.max(leastSide, Math.floor(leastWidth / step)); w * lowest <= most; w++) {
      let h = onlySquares ? w : Math.max(lowest, Math.ceil(leastArea / w));
      while (w * h <= most) {
        const piece = pieceIn(lay, w * step, h * step);
        const lack = lackOf(piece, hull, rules);
        const isBetter = w * h < most || (best !== null && isHandier({ w, h }, found));
        if (lack <= 0 && isBetter && mayCover(piece)) {
          best = piece;
          found = { w, h };
          most = w * h;
        }
        if (onlySquares) break;
        h += Math.max(1, Math.floor(lack / gainOf(piece, diameter) / step));
      }
    }
  }
  return best;
}

/**
 * The most by which less is lacking ({@link lackOf}) for each inch of height that a half-rectangle of this width and at
 * least this height gains; so heights within what it lacks, divided by this, need not be tried.
 *
 * Derivation. With the height the normals turn at most by ω = width ÷ longSide² (radians for an inch; some stay), and the
 * radius r grows by r′ = (1 − height ÷ longSide) ÷ 2. Let v be a corner of the shape and c the centre, so that
 * (v − c)·n ≤ ϱ for each outward normal n, with equality at some corner: ϱ is the radius of the triangle that just encloses
 * the shape, the mean of the shape's reaches from v weighted by the triangle's sides, none of which is above the shape's
 * diameter d. So the reaches from v differ from ϱ by at most d in two directions square to each other, |v − c| ≤ √2·d, and as
 * (v − c)·n changes with n alone by at most √2·d·ω, so does ϱ, and c moves by at most 2·√2 times that. Together a side's
 * lack falls by at most r′ + (1 + 2·√2)·√2·d·ω. Both r′ and ω fall as the height grows.
 *
 * @param diameter of the shape, or more
 */
function gainOf({ width, height }: PieceShape, diameter: number): number {
  const longSide = Math.hypot(width, height);
  const growth = (1 - height / longSide) / 2;
  return growth + ((4 + Math.SQRT2) * diameter * width) / longSide ** 2;
}

interface Steps {
  readonly w: number;
  readonly h: number;
}

/** Of sizes with one area: the less long one; of mirror images, always the same, so that patches that take either share it. */
const isHandier = (p: Steps, q: Steps): boolean =>
  Math.max(p.w, p.h) < Math.max(q.w, q.h) || (p.w === q.h && p.h === q.w && p.w > q.w);

const pieceIn = ({ along, angle }: Lay, width: number, height: number): PieceShape => ({
  shape: 'half-rectangle',
  width,
  height,
  // The outward normal of the long side is ψ = atan(width ÷ height) on from the width, and a quarter turn back from its angle.
  angle: along === 'leg' ? angle : roundTheCircle(angle - 90 - (Math.atan2(width, height) * 180) / Math.PI),
});

/**
 * Whether a size has room for the shape and the spare between each side and the corner opposite, and below which width and
 * height (inches) none has: quick, but not enough.
 */
function sieve(hull: Polygon, { along, angle }: Lay, { spare }: CutRules) {
  const [lengthwise, crosswise] = axesOf(angle).map((axis) => spread(hull, axis) + 2 * spare);
  const mayCover = ({ width, height }: PieceShape): boolean => {
    if (along === 'leg') return width >= lengthwise! && height >= crosswise!;
    const longSide = Math.hypot(width, height);
    return longSide >= lengthwise! && width * height >= crosswise! * longSide;
  };
  // The long side is longer than either leg, so each leg is longer than the height above it.
  return { mayCover, leastWidth: along === 'leg' ? lengthwise! : crosswise!, leastHeight: crosswise! };
}

const spread = (hull: Polygon, axis: Point): number => extent(hull, axis) + extent(hull, scale(axis, -1));

/** The least distance of parallel lines with a convex polygon between them: one is along an edge (from memory). */
const leastWidthOf = (hull: Polygon): number =>
  Math.min(...edgesOf(hull).map((edge) => spread(hull, axesOf(directionAngle(edge))[1])));
