import fc from 'fast-check';
import { expect, it } from 'vitest';
import { load } from '../../../test/solver.ts';
import { bruteForce, stocks } from '../../../test/stocks.ts';
import { generateColumns } from './columns.ts';
import { firstFit } from './first-fit.ts';
import { commonStep } from './grid.ts';
import { Master } from './master.ts';
import { heightsOf } from './stock.ts';

it('the bound of column generation is never above what trying everything finds', async () => {
  const highs = await load();
  let tight = 0;
  fc.assert(
    fc.property(stocks({ size: 9, kinds: 3, count: 2 }), (stock) => {
      fc.pre(stock.items.length > 0);
      const heightStep = commonStep(heightsOf(stock));
      const master = new Master(highs, stock, heightStep);
      for (const { pattern } of firstFit(stock)) master.add(pattern);
      const { bound } = generateColumns(master, stock, {
        step: 1,
        heightStep,
        enough: Number.POSITIVE_INFINITY,
      });
      master.dispose();
      const least = bruteForce(stock);
      expect(bound).toBeLessThanOrEqual(least);
      if (bound === least) tight += 1;
    }),
    { seed: 19, numRuns: 150 },
  );
  expect(tight).toBeGreaterThan(75);
});
