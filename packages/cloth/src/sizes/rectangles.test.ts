import { expect, test } from 'vitest';
import { USUAL } from '../../test/blocks.ts';
import { leastRectangle, smallestRectangle } from './rectangles.ts';

const shape = (...corners: readonly (readonly [number, number])[]) => corners.map(([x, y]) => ({ x, y }));

/** A finished 2 × 4 with a quarter inch all round. */
const STRIP = shape([-0.25, -0.25], [2.25, -0.25], [2.25, 4.25], [-0.25, 4.25]);

test('the least rectangle over a 2 × 4: 3 × 5, and more when it may be turned', () => {
  const still = leastRectangle(STRIP, 0, { spare: 0.25, turn: 0 });
  expect(still).toEqual({ width: 3, height: 5 });
  // Its corner is 1 1/4 across and 2 1/4 along from the middle; turned by t it reaches 1 1/4 cos t + 2 1/4 sin t across.
  const [cos, sin] = [Math.cos(Math.PI / 36), Math.sin(Math.PI / 36)];
  const turned = leastRectangle(STRIP, 0, { spare: 0.25, turn: 5 });
  expect(turned.width).toBeCloseTo(2 * (1.25 * cos + 2.25 * sin + 0.25), 12);
  expect(turned.height).toBeCloseTo(2 * (2.25 * cos + 1.25 * sin + 0.25), 12);
  // 2 1/4 ÷ 1 1/4 is tan 60.9°: turned by 45° the corner does not yet point across, but points along by 29.1°.
  const far = leastRectangle(STRIP, 0, { spare: 0, turn: 45 });
  expect(far.width).toBeCloseTo(2 * (1.25 + 2.25) * Math.SQRT1_2, 12);
  expect(far.height).toBeCloseTo(2 * Math.hypot(1.25, 2.25), 12);
});

test('a first patch is laid where its rectangle is smallest: a diamond along its edge, a square along the grain', () => {
  const diamond = shape([0, -2], [2, 0], [0, 2], [-2, 0]);
  expect(smallestRectangle(diamond, { ...USUAL, spare: 0, roundUpTo: 0.125 })).toEqual({
    shape: 'rectangle',
    // 2√2 = 2.828, rounded up.
    width: 2.875,
    height: 2.875,
    angle: 45,
  });
  expect(smallestRectangle(STRIP, USUAL)).toMatchObject({ angle: 90, width: 5, height: 3 });
});
