import { describe, expect, it } from 'vitest';
import { countVerdicts, gridsCut } from './counting.ts';
import { floorplans, wallsOf } from './floorplans.ts';

describe('mosaic floorplans of n rooms', () => {
  // All: OEIS A001181 (Baxter numbers). Straight seams: OEIS A006318 (large Schröder numbers, slicing floorplans). On one
  // foundation: OEIS A006012, which follows from f(n) = 1 + Σ f(m)(n − m + 1), m = 2 … n − 1, either way of the first cut.
  const all = [1, 2, 6, 22, 92, 422, 2074];
  const straight = [1, 2, 6, 22, 90, 394, 1806];
  const one = [1, 2, 6, 20, 68, 232, 792];
  for (let n = 1; n <= 7; n += 1) {
    it(`n = ${n}: ${all[n - 1]} in all, ${straight[n - 1]} with straight seams, ${one[n - 1]} on one foundation`, () => {
      // Each room that is put in halves others; the smallest stay two inches wide.
      const size = 2 ** n;
      const dissections = floorplans(n).map((rooms) => ({
        rooms: rooms.length,
        width: size,
        height: size,
        walls: wallsOf(rooms, size),
      }));
      expect(countVerdicts(dissections)).toEqual({
        all: all[n - 1],
        straight: straight[n - 1],
        one: one[n - 1],
      });
    });
  }
});

describe('a grid cut into rectangles with whole sides', () => {
  // All: OEIS A116694. Straight seams: OEIS A222659. On one foundation: counted by brute force elsewhere. 4 × 4 takes
  // minutes: see counts.heavy.ts.
  const cases = [
    [2, 2, 8, 8, 7],
    [2, 3, 34, 34, 22],
    [2, 4, 148, 148, 64],
    [3, 3, 322, 320, 93],
    [3, 4, 3164, 3118, 340],
  ] as const;
  for (const [columns, rows, all, straight, one] of cases) {
    it(`${columns} × ${rows}: ${all}, ${straight}, ${one}`, () => {
      expect(countVerdicts(gridsCut(columns, rows))).toEqual({ all, straight, one });
    });
  }
});
