import { arrange, drawingFromSegments } from '@seamwright/arrangement';
import { describe, expect, it } from 'vitest';
import { planSewing, replay, sewingReport, type Verdict } from '../src/index.ts';
import { floorplans, gridDissections, type Room, wallsOf } from './floorplans.ts';

/** How a dissection is sewn; its answer is re-played by the independent checker. */
function verdictOf(
  rooms: readonly Room[],
  width: number,
  height: number,
  walls = wallsOf(rooms, 1),
): Verdict {
  const outline = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  const result = arrange(drawingFromSegments(outline, walls));
  if (!result.ok) throw new Error(result.problem.what);
  expect(result.value.patches).toHaveLength(rooms.length);
  const plan = planSewing(result.value);
  if (plan.verdict !== 'not sewable') expect(replay(sewingReport(result.value, plan))).toEqual([]);
  return plan.verdict;
}

function count(verdicts: readonly Verdict[]): { all: number; straight: number; one: number } {
  return {
    all: verdicts.length,
    straight: verdicts.filter((v) => v === 'one foundation' || v === 'several foundations').length,
    one: verdicts.filter((v) => v === 'one foundation').length,
  };
}

describe('mosaic floorplans of n rooms', () => {
  // All: OEIS A001181 (Baxter numbers). Straight seams: OEIS A006318 (large Schröder numbers, slicing floorplans). On one
  // foundation: OEIS A006012, which follows from f(n) = 1 + Σ f(m)(n − m + 1), m = 2 … n − 1, either way of the first cut.
  const all = [1, 2, 6, 22, 92, 422];
  const straight = [1, 2, 6, 22, 90, 394];
  const one = [1, 2, 6, 20, 68, 232];
  for (let n = 1; n <= 6; n += 1) {
    it(`n = ${n}: ${all[n - 1]} in all, ${straight[n - 1]} with straight seams, ${one[n - 1]} on one foundation`, () => {
      const size = 2 ** n;
      const verdicts = floorplans(n).map((rooms) => verdictOf(rooms, size, size, wallsOf(rooms, size)));
      expect(count(verdicts)).toEqual({ all: all[n - 1], straight: straight[n - 1], one: one[n - 1] });
    });
  }
});

describe('a grid cut into rectangles with whole sides', () => {
  // All: OEIS A116694. Straight seams: OEIS A222659. On one foundation: counted by brute force elsewhere.
  const cases = [
    [2, 2, 8, 8, 7],
    [2, 3, 34, 34, 22],
    [2, 4, 148, 148, 64],
    [3, 3, 322, 320, 93],
  ] as const;
  for (const [columns, rows, all, straight, one] of cases) {
    it(`${columns} × ${rows}: ${all}, ${straight}, ${one}`, () => {
      const verdicts = gridDissections(columns, rows).map((rooms) => {
        const walls = rooms.flatMap(({ left, top, right, bottom }) => {
          const sides = [];
          if (right < columns) sides.push({ a: { x: right, y: top }, b: { x: right, y: bottom } });
          if (bottom < rows) sides.push({ a: { x: left, y: bottom }, b: { x: right, y: bottom } });
          return sides;
        });
        return verdictOf(rooms, columns, rows, walls);
      });
      expect(count(verdicts)).toEqual({ all, straight, one });
    });
  }
});
