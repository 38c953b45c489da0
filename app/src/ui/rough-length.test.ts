import { expect, test } from 'vitest';
import { roughLength } from './rough-length.ts';

test('a length on a sixteenth of an inch is said as it is', () => {
  expect(roughLength(2.375, 'in')).toBe('2⅜ in');
  expect(roughLength(2, 'cm')).toBe('about 5.1 cm');
});

test('others are said to the nearest sixteenth, with “about”', () => {
  expect(roughLength(2 * Math.SQRT2, 'in')).toBe('about 2 13/16 in');
  expect(roughLength(2 * Math.SQRT2, 'cm')).toBe('about 7.2 cm');
});
