import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { touching } from '../src/contact.ts';
import { chooseOrder } from '../src/order/choose.ts';
import { DEFAULT_WEIGHTS, weigh } from '../src/order/costs.ts';
import { peelNearby } from '../src/peel.ts';
import { NO_WILL, willOf } from '../src/will.ts';
import { cutCorners, oneFoundation, type SomePatches, strips } from './order-sections.ts';
import { OrdersByDefinition, type Shade } from './orders-by-definition.ts';

/** As spread as can be: no two patches are alike. */
const shade: Shade = (patch) => (patch * 0.618) % 1;

function choose(
  { arrangement, region }: SomePatches,
  options: Omit<NonNullable<Parameters<typeof chooseOrder>[3]>, 'shade'>,
  shade: Shade,
) {
  const chosen = chooseOrder(arrangement, touching(arrangement), region, { ...options, shade });
  if (chosen === null) throw new Error('no order');
  const byDefinition = new OrdersByDefinition(arrangement, region);
  expect(byDefinition.isGood(chosen.order)).toBe(true);
  expect(weigh(chosen.costs, DEFAULT_WEIGHTS)).toBeCloseTo(
    weigh(byDefinition.costs(chosen.order, shade), DEFAULT_WEIGHTS),
    5,
  );
  return { ...chosen, cost: weigh(chosen.costs, DEFAULT_WEIGHTS) };
}

describe('beyond what the exact search may look at', () => {
  it('never worse than going from one patch to the next beside it; and sometimes better', () => {
    let better = 0;
    fc.assert(
      fc.property(oneFoundation(21, 40), (some) => {
        const { arrangement, region } = some;
        const { x, y } = arrangement.patches[region[0]!]!.heart;
        const nearby = peelNearby(touching(arrangement), region, (p) => {
          const { heart } = arrangement.patches[p]!;
          return Math.hypot(heart.x - x, heart.y - y);
        });
        const order = [nearby.core[0]!, ...nearby.taken.toReversed()];
        const { cost } = choose(some, { effort: 0 }, shade);
        const byDefinition = new OrdersByDefinition(arrangement, region);
        const compared = weigh(byDefinition.costs(order, shade), DEFAULT_WEIGHTS);
        if (cost < compared) better += 1;
      }),
      { seed: 41, numRuns: 60, endOnFailure: true },
    );
    expect(better).toBeGreaterThan(10);
  });

  it('what is called the best is the best, however little was looked at', () => {
    const seen = { proved: 0, unproved: 0 };
    fc.assert(
      fc.property(oneFoundation(8, 16), fc.nat(200), (some, effort) => {
        const best = choose(some, {}, shade);
        const quick = choose(some, { effort }, shade);
        expect(best.optimal).toBe(true);
        expect(quick.cost).toBeGreaterThanOrEqual(best.cost);
        if (quick.optimal) expect(quick.cost).toBe(best.cost);
        seen[quick.optimal ? 'proved' : 'unproved'] += 1;
      }),
      { seed: 42, numRuns: 150, endOnFailure: true },
    );
    expect(Math.min(seen.proved, seen.unproved)).toBeGreaterThan(20);
  });

  it('a hundred strips: nothing to be gained is proved, at 600 and beyond too', () => {
    for (const count of [100, 600, 700]) {
      const { costs, optimal } = choose(strips(count), {}, () => undefined);
      expect(costs).toEqual({ showThrough: 0, uncleanFolds: 0, jumps: 0 });
      expect(optimal).toBe(true);
    }
  });

  it('a pinned first patch in the middle of many strips costs one jump, which is not proved', () => {
    const some = strips(100);
    const first = some.region[50]!;
    const { order, costs, optimal } = choose(
      some,
      { will: willOf([{ kind: 'first', patch: first }]) },
      () => undefined,
    );
    expect(order[0]).toBe(first);
    expect(costs.jumps).toBe(1);
    expect(optimal).toBe(false);
  });

  it('the same order every time', () => {
    const some = cutCorners(40, 50);
    const orders = [1, 2].map(() => choose(some, { will: NO_WILL }, shade).order);
    expect(orders[0]).toEqual(orders[1]);
  });
});
