import { expect, test } from 'vitest';
import { priceWords } from './price-words.ts';

const price = (patches: number, seamLength: number) => ({ patches, seamLength, smallestPatch: 1 });

test.each([
  [price(1, 2.375), 'Adds 1 patch and 2⅜ in of seam.'],
  [price(0, 1), 'Adds 1 in of seam.'],
  [price(2, 0), 'Adds 2 patches.'],
  [price(-1, -3), 'Takes 1 patch and 3 in of seam away.'],
  [price(1, -0.5), 'Adds 1 patch, takes ½ in of seam away.'],
  [price(0, 0.001), 'Adds no patch and no seam.'],
])('%o', (given, words) => expect(priceWords(given, 'in')).toBe(words));

test('lengths are in the maker’s unit', () => {
  expect(priceWords(price(1, 1 / 2.54), 'cm')).toBe('Adds 1 patch and 1 cm of seam.');
});
