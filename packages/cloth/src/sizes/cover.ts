import { type Polygon, SAME_COORDINATE } from '@seamwright/geometry';
import { type NominalPlace, nominalPlace, type PieceShape } from '../placing/nominal-place.ts';
import type { CutRules, PieceCut } from '../types.ts';
import { reach, turnUntil } from './reach.ts';

/** Radians. */
export const DEGREE = Math.PI / 180;

/** What is asked of a piece beyond lying true: the rules' spare and turn. */
export type Slack = Pick<CutRules, 'spare' | 'turn'>;

/**
 * Whether the piece covers the shape wherever it is laid within the slack: shifted by up to `spare` in any direction
 * and turned about its centre by up to `turn` degrees at the same time. Exact, but for {@link SAME_COORDINATE} in the
 * piece's size.
 *
 * A shift brings the side of outward normal n nearer by at most `spare`, namely when it goes straight against n; and a
 * convex piece covers a shape when none of its sides is crossed. So the condition is, for each side by itself, reach
 * over the turn + spare ≤ distance. (Laid before it is flipped over its sew line, the piece is the mirror image of all
 * this; shifts and turns mirrored are again all shifts and turns within the slack.)
 */
export const coversWithin = (piece: PieceShape, shape: Polygon, slack: Slack): boolean =>
  lackOf(piece, shape, slack) <= 0;

/** How much farther from the piece's centre the worst of its sides would have to be, inches; at most 0 where it covers. */
export function lackOf(piece: PieceShape, shape: Polygon, { spare, turn }: Slack): number {
  const { centre, sides } = nominalPlace(piece, shape);
  const lacks = sides.map(
    ({ normal, distance }) => reach(shape, centre, normal, turn * DEGREE) + spare - distance,
  );
  return Math.max(...lacks) - SAME_COORDINATE / 2;
}

/** How far off true the piece may lie, each alone, and still cover the shape; exact. */
export function tolerances(
  piece: PieceShape,
  shape: Polygon,
): Pick<PieceCut, 'toleranceShift' | 'toleranceAngle'> {
  const place = nominalPlace(piece, shape);
  const { centre, sides } = place;
  return {
    toleranceShift: Math.min(...marginsOver(place, shape)),
    toleranceAngle:
      Math.min(...sides.map(({ normal, distance }) => turnUntil(shape, centre, normal, distance))) / DEGREE,
  };
}

/** How far inside of each side of the placed piece the shape stays; below 0 where it is not covered. */
const marginsOver = ({ centre, sides }: NominalPlace, shape: Polygon): readonly number[] =>
  sides.map(({ normal, distance }) => distance - reach(shape, centre, normal, 0));
