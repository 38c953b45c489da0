import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MAKERS, type Shape, shapes } from '../../bench/shapes.ts';
import { expectPacked } from '../../test/packed.ts';
import { PAPERS } from '../sheet/paper.ts';
import { regionsOf } from '../sheet/sheet-frame.ts';
import { leastSheets } from './least-sheets.ts';
import { packRuns, type RunSheet, type Wish } from './print-runs.ts';

const GAP = 18;
const free = regionsOf(PAPERS.letter);

const run = (wishes: readonly Wish<Shape>[], fill = true) =>
  packRuns(wishes, { regions: free, gap: GAP, atLeast: 1, fill });

const paperOf = (sheets: readonly RunSheet<Shape>[]) => sheets.reduce((sum, { times }) => sum + times, 0);

/** How many prints of it there are when all sheets are printed as often as they say. */
const printsOf = (sheets: readonly RunSheet<Shape>[], shape: Shape) =>
  sheets.reduce(
    (sum, { places, times }) => sum + times * places.filter(({ item }) => item.of === shape).length,
    0,
  );

/** Up to six shapes of 1 to 4 inches, and up to sixty prints of each. */
const wishLists = fc
  .record({
    seed: fc.nat(),
    counts: fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 6 }),
  })
  .map(({ seed, counts }) =>
    shapes(Object.values(MAKERS), counts.length, [1, 4], seed, GAP).map((item, i) => ({
      item,
      count: counts[i]!,
    })),
  );

test('enough are printed of each, a gap apart, on less paper or as much as one of each to a file takes', () => {
  let saved = 0;
  fc.assert(
    fc.property(wishLists, (wishes) => {
      const [filled, once] = [run(wishes), run(wishes, false)];
      for (const { item, count } of wishes) {
        expect(printsOf(filled, item)).toBeGreaterThanOrEqual(count);
        expect(printsOf(once, item)).toBeGreaterThanOrEqual(count);
      }
      expect(paperOf(filled)).toBeLessThanOrEqual(paperOf(once));
      if (paperOf(filled) < paperOf(once)) saved++;
      const counted = wishes.map(({ item: { outline }, count }) => ({ outline, count }));
      const { atLeast } = leastSheets({ whole: counted, cutUp: [] }, free, GAP / 2);
      expect(paperOf(filled)).toBeGreaterThanOrEqual(atLeast);
      // Each copy by a name of its own.
      const all = filled.flatMap(({ places }) => places.map(({ item }) => item));
      const named = new Map(all.map((copy, name) => [copy, { ...copy.of, name }]));
      const placed = filled.map(({ places }) =>
        places.map((place) => ({ ...place, item: named.get(place.item)! })),
      );
      expectPacked(placed, [...named.values()], free, GAP);
    }),
    { numRuns: 12, seed: 11 },
  );
  expect(saved).toBeGreaterThan(6);
});

test('no sheet could be printed less often', () => {
  fc.assert(
    fc.property(wishLists, (wishes) => {
      const sheets = run(wishes);
      for (const sheet of sheets) {
        const fewer = sheets.map((one) => (one === sheet ? { ...one, times: one.times - 1 } : one));
        expect(wishes.some(({ item, count }) => printsOf(fewer, item) < count)).toBe(true);
      }
    }),
    { numRuns: 8, seed: 12 },
  );
});

test('squares all alike take as much paper as there are sheets full of them, and two sheets of a file at most', () => {
  // Letter has 576 × 591 points above the check squares: squares of 180 points, 18 apart, stand there in two rows of three at least.
  const [square] = shapes([MAKERS.squares], 1, [2.5, 2.5], 1, GAP);
  const fits = run([{ item: square!, count: 1000 }]).reduce(
    (most, { places }) => Math.max(most, places.length),
    0,
  );
  expect(fits).toBeGreaterThanOrEqual(6);
  for (const count of [fits - 1, fits, 8 * fits, 8 * fits + 2]) {
    const sheets = run([{ item: square!, count }]);
    expect(paperOf(sheets)).toBe(Math.ceil(count / fits));
    expect(sheets.length).toBeLessThanOrEqual(2);
  }
});

test('one of which few are wanted does not go with every print of the others', () => {
  const [many, few] = shapes([MAKERS.squares], 2, [3, 3], 1, GAP);
  const sheets = run([
    { item: many!, count: 400 },
    { item: few!, count: 1 },
  ]);
  // Four of 3 in to a sheet.
  expect(paperOf(sheets)).toBeLessThanOrEqual(101);
});
