import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { load } from '../../../test/solver.ts';
import { bruteForce, expectSound, stocks } from '../../../test/stocks.ts';
import { type LoadSolver, leastStrips } from './least.ts';
import { lengthOf } from './stock.ts';

describe('the least fabric for a set of pieces', () => {
  it('is what trying everything finds, and is proved, on small sets', async () => {
    let asked = 0;
    const counting: LoadSolver = () => {
      asked += 1;
      return load();
    };
    await fc.assert(
      fc.asyncProperty(stocks({ size: 9, kinds: 3, count: 2 }), async (stock) => {
        const { strips, atLeast } = await leastStrips(stock, counting);
        expectSound(stock, strips);
        expect(lengthOf(strips)).toBe(stock.items.length === 0 ? 0 : bruteForce(stock));
        expect(atLeast).toBe(lengthOf(strips));
      }),
      { seed: 15, numRuns: 300 },
    );
    // Neither the solver alone nor first fit alone was on trial.
    expect(asked).toBeGreaterThan(10);
    expect(asked).toBeLessThan(290);
  });

  it('lies between the bound and first fit, and yields every piece, on larger sets', async () => {
    await fc.assert(
      fc.asyncProperty(stocks({ size: 12, kinds: 14, count: 30 }), async (stock) => {
        const quick = await leastStrips(stock);
        const { strips, atLeast } = await leastStrips(stock, load);
        expectSound(stock, quick.strips);
        expectSound(stock, strips);
        expect(lengthOf(strips)).toBeLessThanOrEqual(lengthOf(quick.strips));
        expect(lengthOf(strips)).toBeGreaterThanOrEqual(atLeast);
        expect(atLeast).toBeGreaterThanOrEqual(quick.atLeast);
      }),
      { seed: 16, numRuns: 40 },
    );
  });

  it('never shrinks when a piece is added, where it is proved', async () => {
    await fc.assert(
      fc.asyncProperty(stocks({ size: 9, kinds: 5, count: 5 }), async (stock) => {
        fc.pre(stock.items.length > 0);
        const [first, ...others] = stock.items;
        const less = await leastStrips(stock, load);
        const more = await leastStrips(
          { ...stock, items: [{ ...first!, count: first!.count + 1 }, ...others] },
          load,
        );
        // What is proved least is at most what more pieces take; what is not proved has its bound.
        expect(less.atLeast).toBeLessThanOrEqual(lengthOf(more.strips));
        const isProved = less.atLeast === lengthOf(less.strips);
        if (isProved) expect(lengthOf(less.strips)).toBeLessThanOrEqual(lengthOf(more.strips));
      }),
      { seed: 17, numRuns: 60 },
    );
  });

  it('is the same each time', async () => {
    const [stock] = fc.sample(stocks({ size: 12, kinds: 14, count: 30 }), { seed: 18, numRuns: 1 });
    expect(await leastStrips(stock!, load)).toEqual(await leastStrips(stock!, load));
  });
});
