import { fail, type LengthUnit, MM_PER_INCH, ok, type Result, SAME_COORDINATE } from '@seamwright/geometry';

/** How much is bought for what is needed. */
export interface BuyingRules {
  /** The part of its length that the fabric loses in the wash, from 0 to below 1. */
  readonly shrinkage: number;
  /** The part of the need that is added, for straightening the ends and for slips; 0 adds nothing. */
  readonly safety: number;
  /** Yards are rounded up to whole parts of this many; 8 for eighths, as shops sell them, 4 for a generous house. */
  readonly partsOfYard: number;
  /** Metres are rounded up to whole parts of this many; 10 for 10 cm. */
  readonly partsOfMetre: number;
  /** Buy 1/8 yd (10 cm) more where the need is exactly what is bought, with nothing over. */
  readonly moreOnTheLine: boolean;
}

/** Nothing added, and rounded up to what shops sell: 1/8 yd and 10 cm are common practice. */
export const PLAIN_BUYING: BuyingRules = {
  shrinkage: 0,
  safety: 0,
  partsOfYard: 8,
  partsOfMetre: 10,
  moreOnTheLine: false,
};

const INCHES_PER_YARD = 36;
const INCHES_PER_METRE = 1000 / MM_PER_INCH;

/** What shops sell less of than of anything: the step that {@link BuyingRules.moreOnTheLine} adds. */
const SHOP_YARD = 1 / 8;
const SHOP_METRE = 1 / 10;

/** What is bought of a fabric. */
export interface Purchase {
  /** With shrinkage and the safety part, not rounded, inches. */
  readonly needInches: number;
  /** What the strips take before the wash: with shrinkage, without the safety part, inches. */
  readonly takeInches: number;
  readonly buyYards: number;
  readonly buyMetres: number;
}

/**
 * Need, with the safety part, ÷ (1 − shrinkage), rounded up. Exact: fabric that loses the part `s` of its length keeps
 * 1 − s of it.
 *
 * Problems: a part outside its range, parts of a yard or a metre that are no whole number above 0.
 *
 * @param lengthInches what the strips take
 */
export function toBuy(lengthInches: number, rules: BuyingRules): Result<Purchase> {
  const { shrinkage, safety, partsOfYard, partsOfMetre, moreOnTheLine } = rules;
  if (!(shrinkage >= 0 && shrinkage < 1))
    return fail('The shrinkage is no part from 0 % to below 100 %', '', 'Give it, such as 5 %');
  if (!(safety >= 0 && safety <= MOST_SAFETY))
    return fail(`The safety part is not from 0 % to ${100 * MOST_SAFETY} %`, '', 'Give it, such as 10 %');
  const parts = [partsOfYard, partsOfMetre];
  if (!parts.every((count) => Number.isInteger(count) && count > 0))
    return fail(
      'Fabric is not rounded up to whole parts of a yard or a metre',
      '',
      'Give how many, such as 8',
    );
  const takeInches = lengthInches / (1 - shrinkage);
  const needInches = takeInches * (1 + safety);
  const upTo = (unit: number, count: number, more: number): number => {
    const needed = (needInches * count) / unit;
    const slack = (SAME_COORDINATE * count) / unit;
    const bought = Math.ceil(needed - slack);
    const isOnTheLine = bought > 0 && bought - needed <= slack;
    return bought / count + (moreOnTheLine && isOnTheLine ? more : 0);
  };
  return ok({
    needInches,
    takeInches,
    buyYards: upTo(INCHES_PER_YARD, partsOfYard, SHOP_YARD),
    buyMetres: Number(upTo(INCHES_PER_METRE, partsOfMetre, SHOP_METRE).toFixed(3)),
  });
}

/**
 * Inches, by the unit that it is bought in: an inch, or 25 mm. Fabric is seldom cut square in the shop, and an end loses about as much when it is straightened (common practice). Where
 * less is left over, it is said. Larger would say it of most purchases; smaller would let makers run short.
 */
export const STRAIGHTENING: Readonly<Record<LengthUnit, number>> = { in: 1, cm: 25 / MM_PER_INCH };

/** Inches that are left of what is bought, by the unit in which that is asked for. */
export const leftOver = ({ takeInches, buyYards, buyMetres }: Purchase, unit: LengthUnit): number =>
  (unit === 'in' ? buyYards * INCHES_PER_YARD : buyMetres * INCHES_PER_METRE) - takeInches;

/** Ten times what is needed: more was meant as per cent. */
const MOST_SAFETY = 10;
