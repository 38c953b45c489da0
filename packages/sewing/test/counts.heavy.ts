import { expect, it } from 'vitest';
import { countVerdicts, gridsCut } from './counting.ts';

// All: OEIS A116694. Straight seams: OEIS A222659. On one foundation: counted by brute force elsewhere.
it('a grid of 4 × 4 cut into rectangles with whole sides: 70878, 68480, 1483', () => {
  expect(countVerdicts(gridsCut(4, 4))).toEqual({ all: 70878, straight: 68480, one: 1483 });
});
