import type { Polygon } from '@seamwright/geometry';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MAKERS, type Shape, shapeOf, shapes } from '../../bench/shapes.ts';
import { expectPacked, outlineAt } from '../../test/packed.ts';
import { PAPERS } from '../sheet/paper.ts';
import { type Regions, regionsOf } from '../sheet/sheet-frame.ts';
import { leastSheets, once } from './least-sheets.ts';
import { packSheets } from './pack.ts';

const GAP = 18;

/** Up to `most` shapes of 1 to 5 inches, of all kinds. */
const sets = (most: number, largest = 5) =>
  fc
    .record({ seed: fc.nat(), count: fc.integer({ min: 1, max: most }) })
    .map(({ seed, count }) => shapes(Object.values(MAKERS), count, [1, largest], seed, GAP));

const regions = fc.constantFrom(PAPERS.letter, PAPERS.a4).map((paper) => regionsOf(paper));

const pack = (list: readonly Shape[], free: Regions, atLeast = 1) =>
  packSheets(list, { regions: free, gap: GAP, atLeast });

test('every shape stands once, inside one of the regions, its outline a gap from the others', () => {
  let interlocked = 0;
  fc.assert(
    fc.property(sets(24), regions, (list, free) => {
      interlocked += expectPacked(pack(list, free), list, free, GAP);
    }),
    { numRuns: 40, seed: 7 },
  );
  // Else the true shapes would never have been tried.
  expect(interlocked).toBeGreaterThan(10);
});

test('a shape keeps its form, turned by quarters', () => {
  fc.assert(
    fc.property(sets(12), regions, (list, free) => {
      for (const placement of pack(list, free).flat()) {
        const sides = (outline: Polygon<'page'>) =>
          outline.map((a, i) => {
            const b = outline[(i + 1) % outline.length]!;
            return Math.hypot(b.x - a.x, b.y - a.y);
          });
        const [drawn, placed] = [sides(placement.item.outline), sides(outlineAt(placement))];
        placed.forEach((side, i) => {
          expect(side).toBeCloseTo(drawn[i]!, 9);
        });
      }
    }),
    { numRuns: 20, seed: 8 },
  );
});

test('never fewer sheets than the bound, and the same sheets for the same shapes', () => {
  fc.assert(
    fc.property(sets(24), regions, (list, free) => {
      const whole = list.map(({ outline }) => once(outline));
      const { atLeast, byArea } = leastSheets({ whole, cutUp: [] }, free, GAP / 2);
      const sheets = pack(list, free, atLeast);
      expect(sheets.length).toBeGreaterThanOrEqual(atLeast);
      expect(atLeast).toBeGreaterThanOrEqual(byArea);
      expect(pack(list, free, atLeast)).toEqual(sheets);
    }),
    { numRuns: 30, seed: 9 },
  );
});

test('the order of the items is kept where it costs no sheet', () => {
  fc.assert(
    fc.property(sets(5, 1.5), (list) => {
      // All fit on one sheet in any order.
      const sheets = pack(list, regionsOf(PAPERS.letter));
      expect(sheets.map((sheet) => sheet.map(({ item }) => item.name))).toEqual([
        list.map(({ name }) => name),
      ]);
      for (const { way } of sheets.flat()) expect(way.upright).toBe(true);
    }),
    { seed: 9 },
  );
});

test('two triangles that fit on a sheet only with their long sides together share one', () => {
  // The wide region of Letter is 576 × 591 points; two boxes of 500 × 500 do not stand in it.
  const triangle: Polygon<'page'> = [
    { x: 0, y: 0 },
    { x: 500, y: 0 },
    { x: 0, y: 500 },
  ];
  const list = [0, 1].map((name) => shapeOf(triangle, name, GAP));
  expect(pack(list, regionsOf(PAPERS.letter))).toHaveLength(1);
});

test('what is not to be turned is not turned', () => {
  const list = shapes(Object.values(MAKERS), 60, [0.5, 5], 3, GAP).map((shape) => ({
    ...shape,
    ways: shape.ways.slice(0, 1),
  }));
  for (const { way } of pack(list, regionsOf(PAPERS.letter)).flat()) expect(way.upright).toBe(true);
});

test('who waits is told how many have a place, and may stop it', () => {
  const list = shapes(Object.values(MAKERS), 60, [0.5, 5], 3, GAP);
  const free = regionsOf(PAPERS.letter);
  const told: number[] = [];
  packSheets(list, { regions: free, gap: GAP, atLeast: 1, placed: (count) => told.push(count) });
  expect(told.length).toBeGreaterThan(2);
  expect(told.at(-1)).toBe(60);
  const stop = () => {
    throw new Error('stopped');
  };
  expect(() => packSheets(list, { regions: free, gap: GAP, atLeast: 1, placed: stop })).toThrow('stopped');
});

test('an item that fits on no sheet is a bug of the caller', () => {
  const [large] = shapes([MAKERS.squares], 1, [20, 20], 1, GAP);
  expect(() => pack([large!], regionsOf(PAPERS.a4))).toThrow(RangeError);
});
