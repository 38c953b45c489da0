import { expect, test } from 'vitest';
import { inches, inWords, placeOn, plainWords, say, thePatches } from './message.ts';

const SQUARE = [
  { x: 1, y: 1 },
  { x: 4, y: 1 },
  { x: 4, y: 4 },
  { x: 1, y: 4 },
];

test('places are told from the block’s top left, lengths in the unit that is asked for', () => {
  const message = say`A line ends at ${placeOn({ x: 3, y: 1.5 }, SQUARE)}, ${inches(1 / 3)} short.`;
  expect(plainWords(message)).toBe('A line ends at (2, ½), 0.333 in short.');
  // ½ in and ⅓ in are 1.27 and 0.847 cm, 1 in being 2.54 cm.
  expect(plainWords(message, 'cm')).toBe('A line ends at (5.08, 1.27), 0.85 cm short.');
});

test('messages and plain words within a message become part of it', () => {
  const how = say`miss by ${inches(0.25)}`;
  expect(plainWords(say`${2} lines ${how}${''}.`)).toBe('2 lines miss by ¼ in.');
  expect(plainWords(say`${how} here`)).toBe('Miss by ¼ in here');
});

test('patches have the names that whoever shows the message knows', () => {
  const message = say`${thePatches([4])} touches ${thePatches([0, 2])}.`;
  expect(plainWords(message)).toBe('A patch touches 2 patches.');
  const named = { length: String, place: String, patches: (patches: readonly number[]) => patches.join('+') };
  expect(inWords(message, named)).toBe('4 touches 0+2.');
});
