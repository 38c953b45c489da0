import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MAKERS, shapes } from '../../bench/shapes.ts';
import { expectPacked } from '../../test/packed.ts';
import { PAPERS } from '../sheet/paper.ts';
import { regionsOf } from '../sheet/sheet-frame.ts';
import { CellGrid } from './cell-grid.ts';
import { grownRoom } from './least-sheets.ts';
import { nest } from './nest.ts';
import { refine } from './refine.ts';

const GAP = 18;

/** Some shapes that were put on sheets in a hurry, and what refines them. */
function hurried(seed: number, count: number, paper: 'letter' | 'a4') {
  const regions = regionsOf(PAPERS[paper]);
  const list = shapes(Object.values(MAKERS), count, [1.5, 7.4], seed, GAP);
  const options = { grid: new CellGrid(regions, GAP), room: grownRoom(regions, GAP / 2), tries: 1 };
  const sheets = nest(list, { ...options, budget: { left: 1e6 } })!;
  const refined = (looks: number, enough = 1, spent?: (share: number) => void) =>
    refine(sheets, { ...options, enough, budget: { left: looks }, ...(spent && { spent }) });
  return { list, regions, sheets, refined };
}

/** What stands where; its cells may be noted at another place each time. */
const places = (sheets: ReturnType<ReturnType<typeof hurried>['refined']>) =>
  sheets.map((placements) => placements.map(({ item, way, x, y }) => ({ item, way, x, y })));

test('fewer sheets where there are such, each shape once, a gap from the others; the same each time', () => {
  let saved = 0;
  fc.assert(
    fc.property(
      fc.nat(),
      fc.integer({ min: 40, max: 70 }),
      fc.constantFrom('letter', 'a4'),
      (seed, count, paper) => {
        const { list, regions, sheets, refined } = hurried(seed, count, paper);
        const fewer = refined(20_000);
        expectPacked(fewer, list, regions, GAP);
        expect(fewer.length).toBeLessThanOrEqual(sheets.length);
        expect(places(refined(20_000))).toEqual(places(fewer));
        saved += sheets.length - fewer.length;
      },
    ),
    { numRuns: 10, seed: 3 },
  );
  expect(saved).toBeGreaterThan(3);
});

test('ends where there are few enough, and as it came where there is no time', () => {
  const { sheets, refined } = hurried(5, 60, 'letter');
  expect(sheets.length).toBeGreaterThan(2);
  expect(refined(20_000, sheets.length)).toBe(sheets);
  expect(refined(0)).toBe(sheets);
});

test('tells how far it is, and ends when whoever is told wants it', () => {
  const { refined } = hurried(6, 30, 'letter');
  const shares: number[] = [];
  refined(30_000, 1, (share) => shares.push(share));
  expect(shares.length).toBeGreaterThan(20);
  expect(shares).toEqual([...shares].sort((p, q) => p - q));
  expect(shares.at(-1)).toBeLessThanOrEqual(1);
  expect(() =>
    refined(30_000, 1, () => {
      throw new Error('stopped');
    }),
  ).toThrow('stopped');
});
