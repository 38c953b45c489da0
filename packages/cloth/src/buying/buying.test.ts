import { sentence } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BuyingRules, leftOver, PLAIN_BUYING, type Purchase, toBuy } from './buying.ts';

function bought(inches: number, rules: Partial<BuyingRules> = {}): Purchase {
  const purchase = toBuy(inches, { ...PLAIN_BUYING, ...rules });
  if (!purchase.ok) throw new Error(sentence(purchase.problem));
  return purchase.value;
}

describe('what is bought', () => {
  // quiltingboard.com, post 6228687: 152 in = 4.222 yd. To the next eighth: exact.
  it('is rounded up to eighths of a yard', () => {
    expect(152 / 36).toBeCloseTo(4.222, 3);
    expect(bought(152).buyYards).toBe(4.25);
  });

  // Generations, calculating yardage for quilt back: two panels of 86 in are 172 in, 4.78 yd → 4 7/8.
  // quiltingboard.com, t189575: binding of 96 × 110 and 12 in is 424 in, 11 strips of 40 × 2 1/2, 27 1/2 in → 7/8 yd.
  it.each([
    [2 * 86, 4.875],
    [Math.ceil((2 * (96 + 110) + 12) / 40) * 2.5, 0.875],
  ])('of %f in is the published yardage, %f yd', (inches, yards) => {
    expect(bought(inches).buyYards).toBe(yards);
  });

  // Exact: need ÷ (1 − rate); 3 yd at 5 % → 3.158 yd → 3 1/4.
  it('is more by what the wash takes', () => {
    const { needInches, buyYards } = bought(108, { shrinkage: 0.05 });
    expect(needInches / 36).toBeCloseTo(3.158, 3);
    expect(buyYards).toBe(3.25);
  });

  // Exact: an inch is 25.4 mm, so 7 in are 17.78 cm, and 10 cm are 3.937 in.
  it('is rounded up to 10 cm', () => {
    expect(bought(7).buyMetres).toBe(0.2);
    expect(bought(100 / 25.4).buyMetres).toBe(0.1);
    expect(bought(300 / 25.4).buyMetres).toBe(0.3);
    expect(bought(3.94).buyMetres).toBe(0.2);
  });

  it('follows the rules of the house', () => {
    expect(bought(37, { partsOfYard: 4 }).buyYards).toBe(1.25);
    expect([bought(36).buyYards, bought(36, { moreOnTheLine: true }).buyYards]).toEqual([1, 1.125]);
    expect(bought(36, { partsOfYard: 4, moreOnTheLine: true }).buyYards).toBe(1.125);
    expect(bought(35.9, { moreOnTheLine: true }).buyYards).toBe(1);
    expect(bought(100 / 2.54, { moreOnTheLine: true }).buyMetres).toBe(1.1);
    expect(bought(36, { safety: 0.1 })).toMatchObject({ buyYards: 1.125 });
    expect(bought(0, { safety: 0.1, moreOnTheLine: true })).toEqual({
      needInches: 0,
      takeInches: 0,
      buyYards: 0,
      buyMetres: 0,
    });
  });

  // Exact: 1 yd is 36 in, 1 m is 39.37 in; of fabric that loses a tenth, 36 in leave 32.4 in.
  it('leaves over what the strips do not take of it before the wash', () => {
    expect(leftOver(bought(35), 'in')).toBeCloseTo(1, 9);
    expect(leftOver(bought(36, { safety: 0.05 }), 'in')).toBeCloseTo(4.5, 9);
    expect(leftOver(bought(32.4, { shrinkage: 0.1 }), 'in')).toBeCloseTo(0, 9);
    expect(leftOver(bought(39), 'cm')).toBeCloseTo(1000 / 25.4 - 39, 9);
  });

  it('is never less than what is needed, nor a whole step more', () => {
    const part = fc.integer({ min: 0, max: 40 }).map((n) => n / 100);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4000 }), part, part, (eighths, shrinkage, safety) => {
        const { needInches, buyYards, buyMetres } = bought(eighths / 8, { shrinkage, safety });
        for (const [over, step] of [
          [buyYards * 36 - needInches, 36 / 8],
          [(buyMetres * 1000) / 25.4 - needInches, 100 / 25.4],
        ] as const) {
          expect(over).toBeGreaterThan(-0.001);
          expect(over).toBeLessThan(step);
        }
        expect(needInches * (1 - shrinkage)).toBeCloseTo((eighths / 8) * (1 + safety), 9);
      }),
      { seed: 21 },
    );
  });

  it.each([
    [{ shrinkage: -0.1 }, 'The shrinkage is no part from 0 % to below 100 %. Give it, such as 5 %.'],
    [{ shrinkage: 1 }, 'The shrinkage is no part from 0 % to below 100 %. Give it, such as 5 %.'],
    [{ shrinkage: Number.NaN }, 'The shrinkage is no part from 0 % to below 100 %. Give it, such as 5 %.'],
    [{ safety: -1 }, 'The safety part is not from 0 % to 1000 %. Give it, such as 10 %.'],
    [{ safety: Number.NaN }, 'The safety part is not from 0 % to 1000 %. Give it, such as 10 %.'],
    [
      { partsOfYard: 0 },
      'Fabric is not rounded up to whole parts of a yard or a metre. Give how many, such as 8.',
    ],
  ])('refuses %j with a sentence', (rules, expected) => {
    const purchase = toBuy(36, { ...PLAIN_BUYING, ...rules });
    expect(purchase.ok ? '' : sentence(purchase.problem)).toBe(expected);
  });
});
