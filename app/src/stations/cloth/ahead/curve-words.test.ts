import { expect, it } from 'vitest';
import { cliffsOf, cliffWords, widthsAround } from './curve-words.ts';

const need = (size: number, buyYards: number, isPastCliff: boolean) => ({
  size,
  lengthInches: 36 * buyYards,
  buyYards,
  buyMetres: buyYards,
  isPastCliff,
});

it('a cliff is told with how much more is bought than for the size before', () => {
  const needs = [need(8.5, 2, false), need(8.75, 2, true), need(9, 2.25, true), need(9.25, 2.5, false)];
  const cliffs = cliffsOf(needs, 'in');
  expect(cliffs.map(({ past }) => past.size)).toEqual([9]);
  expect(cliffWords(cliffs[0]!, 'in')).toBe('9 in needs ¼ yd more than 8¾ in.');
  expect(cliffWords(cliffs[0]!, 'cm')).toBe('22.86 cm needs 0.25 m more than 22.23 cm.');
});

it('sizes lie on both sides of the present one, which is among them, rising and above 0', () => {
  expect(widthsAround(8, 0.25)).toHaveLength(17);
  expect(widthsAround(8.1, 0.25)).toContain(8.1);
  const small = widthsAround(1, 0.25);
  expect(small[0]).toBe(0.25);
  expect(small).toEqual([...small].sort((p, q) => p - q));
});
