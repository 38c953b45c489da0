import { expect, test } from 'vitest';
import { nextSize, withUsualSizes } from './usual-sizes.ts';

const drawn = [{ copies: 2, scale: 1 }];

test('sizes that are asked for most are whole in the unit of the pattern, and those that are there are not added again', () => {
  const widths = (unit: 'in' | 'cm') =>
    withUsualSizes(drawn, { width: 6 }, unit).map(({ scale }) => scale * 6);
  expect(widths('in')).toEqual([3, 4.5, 6, 9, 12]);
  expect(widths('cm').map((inches) => Number((inches * 2.54).toFixed(9)))).toEqual([
    7.5, 10, 15, 15.24, 20, 30,
  ]);
  expect(withUsualSizes(drawn, { width: 6 }, 'cm').every(({ copies }) => copies === 2)).toBe(true);
});

test('the next size is the next larger one of them, then twice the largest', () => {
  expect(nextSize(drawn, { width: 6 }, 'in').scale * 6).toBe(9);
  expect(nextSize(drawn, { width: 6 }, 'cm').scale * 6 * 2.54).toBeCloseTo(20, 9);
  expect(nextSize(drawn, { width: 20 }, 'cm').scale).toBe(2);
});
