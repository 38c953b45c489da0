import { expect, test } from 'vitest';
import { wordsForColours } from './colour-words.ts';

test('colours get the words that people have for them, and no two the same', () => {
  const colours = ['#000080', '#ff0000', '#ffa500', '#008000', '#f4f4f4', '#f0f0f0', '#ffff00', '#ffc0cb'];
  expect(wordsForColours(colours)).toEqual([
    'Deep blue',
    'Middle red',
    'Light orange',
    'Middle green',
    'Pale grey',
    'Pale grey 2',
    'Pale yellow',
    'Pale pink',
  ]);
});
