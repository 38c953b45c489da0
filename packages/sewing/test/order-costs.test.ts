import { describe, expect, it } from 'vitest';
import { touching } from '../src/contact.ts';
import { chooseOrder, orderCosts } from '../src/order/choose.ts';
import { blockOf, grid, l, patchAt } from './grid-block.ts';
import { arranged, corners } from './order-sections.ts';

const FREE = { showThrough: 0, uncleanFolds: 0, jumps: 0 };

describe('what an order costs, by hand', () => {
  const strips = blockOf(
    5,
    2,
    [1, 2, 3, 4].map((x) => l(x, 0, x, 2)),
  );
  const strip = (k: number) => patchAt(strips, k + 0.5, 1);
  const costs = (order: readonly number[], shade?: (patch: number) => number | undefined) =>
    orderCosts(strips, touching(strips), order.map(strip), shade);

  it('jumps: a strip next but one to the one before is near, the one after that is not', () => {
    expect(costs([0, 1, 2, 3, 4])).toEqual(FREE);
    expect(costs([2, 1, 3, 0, 4])).toEqual({ ...FREE, jumps: 2 });
    expect(costs([2, 1, 0, 3, 4])).toEqual({ ...FREE, jumps: 1 });
    expect(costs([1, 0, 2, 3, 4])).toEqual(FREE);
  });

  it('what shows through: a lighter patch sewn on to a darker one, not the other way round, nor where unknown', () => {
    const dark = (k: number) => (p: number) => (p === strip(k) ? 0 : 1);
    expect(costs([0, 1, 2, 3, 4], dark(0)).showThrough).toBe(1);
    expect(costs([4, 3, 2, 1, 0], dark(0)).showThrough).toBe(0);
    expect(costs([0, 1, 2, 3, 4], dark(2)).showThrough).toBe(1);
    expect(costs([2, 1, 3, 0, 4], dark(2)).showThrough).toBe(2);
    expect(costs([2, 1, 3, 0, 4], (p) => (p === strip(2) ? 0 : undefined)).showThrough).toBe(0);
    const chosen = chooseOrder(strips, touching(strips), [0, 1, 2, 3, 4], { shade: dark(2) });
    expect(chosen!.costs.showThrough).toBe(1);
  });

  // A U of a base and two arms, the right arm in two. Lines at heights 1 and 2 run through both arms.
  const letterU = () =>
    arranged(corners([0, 0], [1, 0], [1, 2], [3, 2], [3, 0], [4, 0], [4, 3], [0, 3]), [
      l(0, 2, 1, 2),
      l(3, 2, 4, 2),
      l(3, 1, 4, 1),
    ]);

  it('folds that are not clean: lines through an arm that is sewn already', () => {
    const block = letterU();
    const [left, upper, lower, base] = [
      patchAt(block, 0.5, 1),
      patchAt(block, 3.5, 0.5),
      patchAt(block, 3.5, 1.5),
      patchAt(block, 2, 2.5),
    ];
    const unclean = (...order: number[]) => orderCosts(block, touching(block), order).uncleanFolds;
    // The second arm to be sewn on is always folded along the line on which the first arm stands.
    expect(unclean(base, lower, upper, left)).toBe(1);
    expect(unclean(upper, lower, base, left)).toBe(1);
    // And with the left arm there, so is the upper patch of the right arm.
    expect(unclean(left, base, lower, upper)).toBe(2);
    expect(unclean(base, lower, left, upper)).toBe(2);
    const chosen = chooseOrder(block, touching(block), [0, 1, 2, 3]);
    expect([chosen!.costs.uncleanFolds, chosen!.optimal]).toEqual([1, true]);
  });

  it('a corner beyond the fold by less than a printed line does not make it unclean', () => {
    // Beside a notch the upper patch reaches down a little past the line at height 2 on which the lower one stands.
    const reaching = (step: number) =>
      arranged(corners([0, 0], [4, 0], [4, 2 + step], [3, 1.8], [3, 1.5], [2, 1.5], [2, 4], [0, 4]), [
        l(0, 2, 2, 2),
      ]);
    for (const [step, expected] of [
      [1 / 200, 0],
      [1 / 10, 1],
    ] as const) {
      const block = reaching(step);
      const [above, below] = [patchAt(block, 1, 1), patchAt(block, 1, 3)];
      expect(orderCosts(block, touching(block), [above, below]).uncleanFolds).toBe(expected);
      // The other way round, nothing of the lower patch is above the line.
      expect(orderCosts(block, touching(block), [below, above]).uncleanFolds).toBe(0);
    }
  });
});

describe('bad input', () => {
  const ninePatch = blockOf(3, 3, grid(3));

  it('patches that are not good on one foundation: no order', () => {
    expect(chooseOrder(ninePatch, touching(ninePatch), [0, 1, 3, 4])).toBeNull();
  });

  it('weights that are no weights', () => {
    for (const jumps of [-1, Number.NaN, Number.POSITIVE_INFINITY]) {
      const weights = { showThrough: 1, uncleanFolds: 1, jumps };
      expect(() => chooseOrder(ninePatch, touching(ninePatch), [0, 1, 2], { weights })).toThrow(RangeError);
    }
  });

  it('one patch', () => {
    expect(chooseOrder(ninePatch, touching(ninePatch), [4])).toEqual({
      order: [4],
      costs: FREE,
      optimal: true,
    });
  });
});
