import { expect, it } from 'vitest';
import { lightness } from './lightness.ts';

it('is L* of CIELAB', () => {
  expect(lightness('#000000')).toBe(0);
  expect(lightness('#ffffff')).toBeCloseTo(1, 9);
  // Published values of the sRGB primaries under D65 (Lindbloom, RGB to Lab): 53.24, 87.73, 32.30; our weights have four digits.
  expect(lightness('#ff0000')).toBeCloseTo(0.5324, 3);
  expect(lightness('#00ff00')).toBeCloseTo(0.8773, 3);
  expect(lightness('#0000ff')).toBeCloseTo(0.323, 4);
  // WCAG's grey of contrast 4.54 with white: luminance 0.1812, so 116 × 0.1812^(1/3) − 16 = 49.6.
  expect(lightness('#767676')).toBeCloseTo(0.496, 3);
});
