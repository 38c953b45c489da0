import { fail, LARGEST_ALLOWANCE, type LengthUnit, MM_PER_INCH, ok, type Result } from '@seamwright/geometry';
import type { CutRules } from '../types.ts';

/**
 * Inches: what sizes are rounded up to where the maker does not say, by the unit in which the pattern's lengths are written.
 * Quarters of an inch are what makers cut by; the marks of a metric ruler between its centimetres are at 5 mm (common practice).
 */
export const USUAL_STEP: Readonly<Record<LengthUnit, number>> = { in: 1 / 4, cm: 5 / MM_PER_INCH };

/**
 * A finished patch and an inch more each way, half of it allowance: the general rule of Quilting on the Square, Basics of
 * paper piecing.
 */
export const USUAL_CUTS: CutRules = { allowance: 1 / 4, spare: 1 / 4, turn: 0, roundUpTo: USUAL_STEP.in };

/** Degrees. Nobody lays a piece farther off true than this; beyond it sides would change places. */
const LARGEST_TURN = 45;

/** Inches. The coarsest step that sizes are rounded up to. */
const LARGEST_STEP = 1;

/** The rules, if pieces can be cut by them. */
export function checkCutRules(rules: CutRules): Result<CutRules> {
  const { allowance, spare, turn, roundUpTo } = rules;
  const within = (value: number, most: number) => value >= 0 && value <= most;
  if (!within(allowance, LARGEST_ALLOWANCE))
    return fail(`The seam allowance cannot be ${allowance} in`, '', `Give 0 to ${LARGEST_ALLOWANCE} in`);
  if (!within(spare, LARGEST_ALLOWANCE))
    return fail(`The spare cannot be ${spare} in`, '', `Give 0 to ${LARGEST_ALLOWANCE} in`);
  if (!within(turn, LARGEST_TURN))
    return fail(`A piece cannot be turned by ${turn}° and still cover`, '', `Give 0 to ${LARGEST_TURN}°`);
  // The finest ruler is marked in 64ths, or in half millimetres.
  if (!(roundUpTo >= 1 / 64 && roundUpTo <= LARGEST_STEP))
    return fail(`Sizes cannot be rounded up to ${roundUpTo} in`, '', `Give 1/64 to ${LARGEST_STEP} in`);
  return ok(rules);
}
