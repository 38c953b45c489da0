import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cover, OVERLAP } from './tile-grid.ts';

const room = fc.double({ min: 300, max: 700, noNaN: true });
const size = fc.double({ min: 10, max: 8700, noNaN: true });
const lines = fc.array(fc.double({ min: 0, max: 8700, noNaN: true }), { maxLength: 12 });

test('tiles cover the length, overlap by half an inch, and fit in the room', () => {
  fc.assert(
    fc.property(size, room, lines, (length, most, avoid) => {
      const { starts, size: each, joins } = cover(length, most, avoid);
      expect(each).toBeLessThanOrEqual(most);
      expect(starts[0]!).toBeLessThanOrEqual(0);
      expect(starts.at(-1)! + each).toBeGreaterThanOrEqual(length - 1e-9);
      expect(joins).toHaveLength(starts.length - 1);
      joins.forEach((join, i) => {
        // 1/2 in: 36 points.
        expect(starts[i]! + each - starts[i + 1]!).toBeCloseTo(36, 9);
        expect(starts[i]! + each - join).toBeCloseTo(OVERLAP / 2, 9);
        expect(join - starts[i + 1]!).toBeCloseTo(OVERLAP / 2, 9);
      });
    }),
    { seed: 11 },
  );
});

test('there are no more tiles than the room needs', () => {
  fc.assert(
    fc.property(size, room, lines, (length, most, avoid) => {
      const { starts } = cover(length, most, avoid);
      const fewer = starts.length - 1;
      // One tile fewer would not reach.
      if (fewer > 0) expect(fewer * most - (fewer - 1) * OVERLAP).toBeLessThan(length);
    }),
    { seed: 12 },
  );
});

test('a join moves off a seam that runs through the middle', () => {
  const { joins } = cover(756, 576, [378]);
  expect(joins).toHaveLength(1);
  expect(Math.abs(joins[0]! - 378)).toBeGreaterThanOrEqual(18);
});
