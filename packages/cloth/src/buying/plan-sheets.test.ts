import { sentence } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { load } from '../../test/solver.ts';
import {
  FAT_EIGHTH,
  FAT_QUARTER,
  METRIC_FAT_QUARTER,
  planSheets,
  type Sheet,
  type SheetPlan,
} from './plan-sheets.ts';
import type { Rectangles } from './plan-strips.ts';

async function planned(
  rectangles: readonly Rectangles[],
  sheet: Sheet,
  rules: Parameters<typeof planSheets>[2] = {},
): Promise<SheetPlan> {
  const plan = await planSheets(rectangles, sheet, rules, load);
  if (!plan.ok) throw new Error(sentence(plan.problem));
  return plan.value;
}

const squares = (size: number, count: number): Rectangles => ({ width: size, height: size, count });

describe('fat quarters', () => {
  // docsbay.net, Number of squares from a fat quarter; Quilter's Cache, math charts: 18 × 22.
  const TABLE: readonly (readonly [number, number])[] = [
    [2, 99],
    [2.5, 56],
    [3, 42],
    [3.5, 30],
    [4, 20],
    [4.5, 16],
    [5, 12],
    [6, 9],
    [6.5, 6],
  ];
  it.each(TABLE)('yield of squares of %f what the published table says: %i', async (size, count) => {
    const all = await planned([squares(size, count)], FAT_QUARTER);
    const oneMore = await planned([squares(size, count + 1)], FAT_QUARTER);
    expect([all.sheets.length, all.provenLeast]).toEqual([1, true]);
    expect([oneMore.sheets.length, oneMore.provenLeast]).toEqual([2, true]);
  });

  it('of 50 × 55 cm yield 110 squares of 5 cm: exact', async () => {
    const cm = 1 / 2.54;
    expect((await planned([squares(5 * cm, 110)], METRIC_FAT_QUARTER)).sheets).toHaveLength(1);
    expect((await planned([squares(5 * cm, 111)], METRIC_FAT_QUARTER)).sheets).toHaveLength(2);
  });

  it('are cut along where that takes fewer, but not against a print', async () => {
    // Exact: 9 × 11 lies twice along each side of 18 × 22; turned, only once in 18.
    const four = [{ width: 11, height: 9, count: 4 }];
    expect(await planned(four, FAT_QUARTER, { upright: true })).toMatchObject({
      atLeast: 1,
      provenLeast: true,
    });
    const turned = [{ width: 9, height: 11, count: 4 }];
    expect((await planned(turned, FAT_QUARTER)).sheets).toHaveLength(1);
    expect((await planned(turned, FAT_QUARTER, { upright: true })).sheets).toHaveLength(2);
    // Exact: a strip of 11 along holds 9 + 8; across, the two would take a strip of 9 and one of 8.
    const mixed = [
      { width: 11, height: 9, count: 2 },
      { width: 11, height: 8, count: 2 },
    ];
    const plan = await planned(mixed, FAT_QUARTER, { upright: true });
    expect(plan.sheets).toHaveLength(1);
  });

  it('do not hold everything: what is too large is named, the rest is planned', async () => {
    const large = { width: 20, height: 10, count: 1 };
    const plan = await planned([large, squares(4, 10)], FAT_EIGHTH);
    expect(plan.tooLarge).toEqual([large]);
    expect([plan.sheets.length, plan.provenLeast]).toEqual([1, true]);
  });

  it('yield every piece that they hold, within their sides, and are never fewer than the bound', async () => {
    const quarters = (most: number) => fc.integer({ min: 2, max: most }).map((n) => n / 4);
    const rectangle = fc.record({
      width: quarters(80),
      height: quarters(80),
      count: fc.integer({ min: 0, max: 9 }),
    });
    await fc.assert(
      fc.asyncProperty(
        fc.array(rectangle, { maxLength: 5 }),
        fc.boolean(),
        fc.boolean(),
        async (pieces, upright, trim) => {
          const plan = await planned(pieces, FAT_QUARTER, { upright, trim });
          const key = (across: number, along: number) =>
            (upright ? [across, along] : [across, along].sort((a, b) => a - b)).join(' × ');
          const wanted = pieces
            .filter((each) => !plan.tooLarge.includes(each))
            .flatMap(({ width, height, count }) => Array.from({ length: count }, () => key(width, height)));
          const had: string[] = [];
          for (const { run, strips } of plan.sheets) {
            const [long, wide] = run === 'across' ? [22, 18] : [18, 22];
            expect(strips.reduce((sum, { height, count }) => sum + height * count, 0)).toBeLessThanOrEqual(
              wide,
            );
            for (const { height, count, cuts } of strips) {
              expect(cuts.reduce((sum, cut) => sum + cut.width * cut.count, 0)).toBeLessThanOrEqual(long);
              for (const cut of cuts)
                for (let i = 0; i < count * cut.count; i += 1) {
                  const [a, b] = [cut.width, cut.height ?? height];
                  had.push(run === 'across' ? key(a, b) : key(b, a));
                }
            }
          }
          expect(had.sort()).toEqual(wanted.sort());
          expect(plan.sheets.length).toBeGreaterThanOrEqual(plan.atLeast);
          for (const { width, height } of plan.tooLarge)
            expect([width <= 22 && height <= 18, !upright && height <= 22 && width <= 18]).toEqual([
              false,
              false,
            ]);
        },
      ),
      { seed: 22, numRuns: 25 },
    );
  });
});
