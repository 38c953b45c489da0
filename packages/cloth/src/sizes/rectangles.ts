import {
  convexHull,
  distance,
  edgesOf,
  type Polygon,
  SAME_COORDINATE,
  type Segment,
} from '@seamwright/geometry';
import { nominalPlace, type PieceShape } from '../placing/nominal-place.ts';
import type { CutRules } from '../types.ts';
import { lineAngle } from './angles.ts';
import { DEGREE, type Slack } from './cover.ts';
import { reach } from './reach.ts';
import { stepsUp } from './round-up.ts';

/**
 * The least width and height, inches, of a rectangle at the angle that covers the shape wherever it is laid within the
 * slack. Exact: half of each is spare + the farther reach over the turn towards its two sides ({@link reach}); see
 * `coversWithin`. Without a turn that is the shape's extent + 2 × spare, so that with a quarter inch of allowance and
 * of spare a rectangular patch wants the finished patch + 1 in each way.
 */
export function leastRectangle(
  shape: Polygon,
  angle: number,
  { spare, turn }: Slack,
): { readonly width: number; readonly height: number } {
  const { centre, sides } = nominalPlace({ shape: 'rectangle', width: 0, height: 0, angle }, shape);
  const [up, right, down, left] = sides.map(({ normal }) => reach(shape, centre, normal, turn * DEGREE));
  return {
    width: 2 * (Math.max(right!, left!) + spare),
    height: 2 * (Math.max(up!, down!) + spare),
  };
}

/** The rectangle that is cut at an angle: the least one, rounded up. */
export function rectangleAt(shape: Polygon, angle: number, rules: CutRules): PieceShape {
  const { width, height } = leastRectangle(shape, angle, rules);
  const step = rules.roundUpTo;
  return {
    shape: 'rectangle',
    width: stepsUp(width, step) * step,
    height: stepsUp(height, step) * step,
    angle,
  };
}

/**
 * The rectangle for a patch that is sewn to nothing, which may lie at any angle: along that edge of the shape's hull
 * along which it is smallest, rounded up. Of equal ones the less long, then one along the grain, then the one along the longest edge.
 *
 * Without turn and rounding none at any angle is smaller. For between two edges' directions the same corners decide, and
 * width and height are w·cos x and h·cos y with x and y growing alike. A least value of their product + c × their sum
 * (c = 2 × spare) inside would need w·h·sin(x + y) + c·(w·sin x + h·sin y) = 0 and −2·w·h·cos(x + y) > c·(width +
 * height), so |x + y| > 90°, so x and y of one sign, so the first sum is not 0. (With c = 0: H. Freeman, R. Shapira,
 * Determining the minimum-area encasing rectangle for an arbitrary closed curve, Communications of the ACM 18(7), 1975.)
 */
export function smallestRectangle(shape: Polygon, rules: CutRules): PieceShape {
  const steps = (length: number) => Math.round(length / rules.roundUpTo);
  const [best] = edgesOf(convexHull(shape))
    .map((edge) => {
      const piece = rectangleAt(shape, lineAngle(edge), rules);
      const [w, h] = [steps(piece.width), steps(piece.height)];
      const rank = [w * h, Math.max(w, h), piece.angle % 90 === 0 ? 0 : 1, -lengthInUnits(edge), piece.angle];
      return { piece, rank };
    })
    .sort((p, q) => firstDifference(p.rank, q.rank));
  return best!.piece;
}

/** Whole, so that edges drawn equal are equal. */
const lengthInUnits = ({ a, b }: Segment): number => Math.round(distance(a, b) / SAME_COORDINATE);

const firstDifference = (p: readonly number[], q: readonly number[]): number =>
  p.map((value, i) => value - q[i]!).find((difference) => difference !== 0) ?? 0;
