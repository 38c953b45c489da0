import { sentence } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { load } from '../../test/solver.ts';
import { planStrips, type Rectangles, type StripPlan, type StripRules } from './plan-strips.ts';

const planned = async (rectangles: readonly Rectangles[], rules: StripRules): Promise<StripPlan> => {
  const plan = await planStrips(rectangles, rules, load);
  if (!plan.ok) throw new Error(sentence(plan.problem));
  return plan.value;
};

const squares = (size: number, count: number): Rectangles => ({ width: size, height: size, count });

describe('strips across the fabric', () => {
  // quiltingboard.com, post 6228687: 63 squares of 9 1/2 at 40 in: 4 a strip, 16 strips, 152 in.
  it('are as many as the published example says', async () => {
    const plan = await planned([squares(9.5, 63)], { usableWidth: 40 });
    expect(plan).toMatchObject({ lengthInches: 152, provenLeast: true, tooLarge: [], alongLength: [] });
    expect(plan.strips.reduce((sum, { count }) => sum + count, 0)).toBe(16);
    expect(plan.strips[0]).toEqual({ height: 9.5, count: 15, cuts: [{ width: 9.5, count: 4 }], leftover: 2 });
    expect(plan.strips[1]).toMatchObject({ height: 9.5, count: 1, cuts: [{ width: 9.5, count: 3 }] });
  });

  // Quilter's Cache, math charts: squares from a yard, 36 × 44.
  const YARD: readonly (readonly [number, number])[] = [
    [2.5, 238],
    [3, 168],
    [3.5, 120],
    [4, 99],
    [5, 56],
    [6, 42],
    [6.5, 30],
    [10, 12],
    [12, 9],
  ];
  it.each(YARD)(
    'yield of squares of %f from a yard what the published table says: %i',
    async (size, count) => {
      const all = await planned([squares(size, count)], { usableWidth: 44 });
      const oneMore = await planned([squares(size, count + 1)], { usableWidth: 44 });
      expect(all.lengthInches).toBeLessThanOrEqual(36);
      expect([oneMore.lengthInches > 36, oneMore.provenLeast]).toEqual([true, true]);
    },
  );

  // The same table says 35 squares of 7: there are 6 in 44 in and 5 in 36 in, so 30. Exact, plane geometry.
  it('yield 30 squares of 7 from a yard, where the table says 35', async () => {
    expect((await planned([squares(7, 30)], { usableWidth: 44 })).lengthInches).toBe(35);
    expect((await planned([squares(7, 31)], { usableWidth: 44 })).lengthInches).toBe(42);
    expect((await planned([squares(7, 35)], { usableWidth: 44 })).lengthInches).toBeGreaterThan(36);
  });

  it('turn pieces where that saves fabric, and never those of a directional print', async () => {
    const pieces = [{ width: 3, height: 13, count: 13 }];
    // Exact: 13 in a strip 13 high; turned, 3 in each of 5 strips 3 high. Turned by one each way there is nothing between.
    expect((await planned(pieces, { usableWidth: 40 })).lengthInches).toBe(13);
    expect((await planned(pieces, { usableWidth: 39, upright: true })).lengthInches).toBe(13);
    const turned = [{ width: 13, height: 3, count: 13 }];
    expect((await planned(turned, { usableWidth: 40 })).lengthInches).toBe(13);
    expect((await planned(turned, { usableWidth: 40, upright: true })).lengthInches).toBe(15);
  });

  it('may be trimmed when the maker allows it: one strip for all', async () => {
    const pieces = [squares(5, 1), squares(4, 1), squares(3, 1)];
    expect((await planned(pieces, { usableWidth: 40 })).lengthInches).toBe(12);
    const plan = await planned(pieces, { usableWidth: 40, trim: true });
    expect(plan.strips).toEqual([
      {
        height: 5,
        count: 1,
        cuts: [
          { width: 5, count: 1 },
          { width: 4, count: 1, height: 4 },
          { width: 3, count: 1, height: 3 },
        ],
        leftover: 28,
      },
    ]);
  });

  // Exact: 7 squares of 5 leave 5 in of their strip, room for one of 4; nine of 4 take 36 in of a strip of their own all the same.
  it('are trimmed only where that saves fabric', async () => {
    const plan = await planned([squares(5, 7), squares(4, 9)], { usableWidth: 40, trim: true });
    expect(plan).toMatchObject({ trim: true, lengthInches: 9, provenLeast: true });
    expect(plan.strips.flatMap(({ cuts }) => cuts)).toEqual([
      { width: 5, count: 7 },
      { width: 4, count: 9 },
    ]);
  });

  it('never take more where pieces may be trimmed, however many sizes there are', async () => {
    const sizes = (most: number) =>
      fc.array(
        fc.record({
          width: fc.integer({ min: 6, max: 32 }),
          height: fc.integer({ min: 6, max: 32 }),
          count: fc.integer({ min: 1, max: 3 }),
        }),
        { minLength: 1, maxLength: most },
      );
    await fc.assert(
      fc.asyncProperty(fc.oneof(sizes(5), sizes(40)), async (quarters) => {
        const pieces = quarters.map(({ width, height, count }) => ({
          width: width / 4,
          height: height / 4,
          count,
        }));
        const [plain, trimmed] = [
          await planned(pieces, { usableWidth: 40 }),
          await planned(pieces, { usableWidth: 40, trim: true }),
        ];
        expect(trimmed.lengthInches).toBeLessThanOrEqual(plain.lengthInches);
        expect(trimmed.atLeast).toBeLessThanOrEqual(trimmed.lengthInches);
      }),
      { seed: 22, numRuns: 8 },
    );
  });

  it('run along the fabric where a piece is longer than it is wide, and say so', async () => {
    const long = { width: 45, height: 3, count: 2 };
    for (const upright of [false, true]) {
      const plan = await planned([long], { usableWidth: 40, upright });
      expect(plan).toMatchObject({ lengthInches: 45, alongLength: [long], tooLarge: [] });
      expect(plan.strips).toMatchObject([{ height: 45, count: 1, cuts: [{ width: 3, count: 2 }] }]);
    }
    // A print that runs up a long piece lies along the length as it is.
    const upright = await planned([{ width: 3, height: 45, count: 2 }], {
      usableWidth: 40,
      upright: true,
    });
    expect(upright).toMatchObject({ lengthInches: 45, alongLength: [] });
  });

  it('leave out what is too large both ways, and plan the rest', async () => {
    const large = { width: 45, height: 41, count: 1 };
    const plan = await planned([large, squares(5, 8)], { usableWidth: 40 });
    expect(plan).toMatchObject({ lengthInches: 5, tooLarge: [large] });
  });

  it('hold whole millimetres as exactly as fractions of an inch', async () => {
    const cm = 1 / 2.54;
    const plan = await planned([squares(5 * cm, 20)], { usableWidth: 100 * cm });
    expect(plan.strips).toHaveLength(1);
    expect(plan.lengthInches).toBeCloseTo(5 * cm, 12);
  });

  it('yield every piece within the width, whatever is asked for', async () => {
    const eighths = (most: number) => fc.integer({ min: 4, max: most }).map((n) => n / 8);
    const rectangle = fc.record({
      width: eighths(120),
      height: eighths(120),
      count: fc.integer({ min: 0, max: 12 }),
    });
    await fc.assert(
      fc.asyncProperty(
        fc.array(rectangle, { maxLength: 6 }),
        fc.boolean(),
        fc.boolean(),
        async (pieces, upright, trim) => {
          const plan = await planned(pieces, { usableWidth: 40, upright, trim });
          const wanted = pieces.flatMap(({ width, height, count }) =>
            Array.from({ length: count }, () =>
              upright ? [width, height] : [width, height].sort((a, b) => a - b),
            ),
          );
          const had = plan.strips.flatMap(({ height, count, cuts }) =>
            cuts.flatMap((cut) =>
              Array.from({ length: cut.count * count }, () => {
                const size = [cut.width, cut.height ?? height];
                return upright ? size : size.sort((a, b) => a - b);
              }),
            ),
          );
          expect(had.map(String).sort()).toEqual(wanted.map(String).sort());
          for (const { cuts, leftover } of plan.strips) {
            const used = cuts.reduce((sum, { width, count }) => sum + width * count, 0);
            expect(used).toBeLessThanOrEqual(40);
            expect(leftover).toBe(40 - used);
          }
          expect(plan.lengthInches).toBe(
            plan.strips.reduce((sum, { height, count }) => sum + height * count, 0),
          );
          expect(plan.atLeast).toBeLessThanOrEqual(plan.lengthInches);
          const area = pieces.reduce((sum, { width, height, count }) => sum + width * height * count, 0);
          expect(plan.atLeast * 40).toBeGreaterThanOrEqual(area * 0.999);
        },
      ),
      { seed: 20, numRuns: 30 },
    );
  });

  it.each([0, -3, Number.NaN, Number.POSITIVE_INFINITY])(
    'refuse a usable width of %f',
    async (usableWidth) => {
      const plan = await planStrips([squares(3, 1)], { usableWidth });
      expect(plan.ok ? '' : sentence(plan.problem)).toBe(
        'The usable width of the fabric is no length above 0. Give it, such as 40.',
      );
    },
  );

  it.each([squares(0, 1), squares(Number.NaN, 1), squares(3, 1.5), squares(3, -1)])(
    'refuse %j',
    async (piece) => {
      const plan = await planStrips([piece], { usableWidth: 40 });
      expect(plan.ok ? '' : plan.problem.what).toBe('A piece has no size above 0, or no whole count');
    },
  );
});
