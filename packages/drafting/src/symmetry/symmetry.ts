import {
  fail,
  ok,
  type Point,
  type Result,
  rotation,
  SAME_COORDINATE,
  type Transform,
} from '@seamwright/geometry';
import { mirrorAcross } from './mirror.ts';

/** How what is drawn is repeated about the block's centre. */
export interface Symmetry {
  /** How often in a full turn; 1: not turned. */
  readonly turns: 1 | 2 | 3 | 4 | 6 | 8;
  /** The angles of mirror axes through the centre, degrees: 0 level, 45 rising to the right, 90 upright. */
  readonly mirrors: readonly number[];
}

export const NO_SYMMETRY: Symmetry = { turns: 1, mirrors: [] };

/** The most turns that turns and axes together may come to; more would be axes that were mistyped. */
const MOST_TURNS = 24;

/** All turns and axes of a symmetry. */
export interface TurnsAndAxes {
  /** How often in a full turn. */
  readonly turns: number;
  /** The angles of all mirror axes, degrees, those that follow from the chosen ones included. */
  readonly axes: readonly number[];
}

/**
 * Two axes at an angle φ turn by 2φ together, so the turns are the multiples of the greatest common measure of all such
 * angles and of the chosen turn; with n of them, axes follow one another at 180° / n.
 *
 * Refused: axes and turns that come to more than 24 turns, or that are no numbers.
 */
export function turnsAndAxes({ turns, mirrors }: Symmetry): Result<TurnsAndAxes> {
  if (!mirrors.every(Number.isFinite)) return fail('An axis has no angle', '', 'Give degrees, such as 45');
  const [axis, ...others] = mirrors;
  const measures = others.map((other) => 2 * Math.abs(other - axis!));
  const measure = measures.reduce(commonMeasure, 360 / turns);
  const count = Math.round(360 / measure);
  if (count > MOST_TURNS)
    return fail('These axes and turns would repeat every line too often', '', 'Choose fewer axes');
  const axes = axis === undefined ? [] : Array.from({ length: count }, (_, k) => axis + (180 * k) / count);
  return ok({ turns: count, axes });
}

/**
 * All transforms under which a drawing of this symmetry is the same, the one that leaves everything where it is first.
 *
 * Refused: what {@link turnsAndAxes} refuses.
 */
export function transformsOf(symmetry: Symmetry, centre: Point): Result<readonly Transform[]> {
  const found = turnsAndAxes(symmetry);
  if (!found.ok) return found;
  const { turns, axes } = found.value;
  return ok([
    ...Array.from({ length: turns }, (_, k) => rotation((360 * k) / turns, centre)),
    ...axes.map((axis) => mirrorAcross(axis, centre)),
  ]);
}

/** Euclid's algorithm, with a remainder that is but a rounding taken for none. */
const commonMeasure = (a: number, b: number): number => (b <= SAME_COORDINATE ? a : commonMeasure(b, a % b));
