import { inches, placeOn, say, thePatches } from '@seamwright/arrangement';
import { expect, test } from 'vitest';
import { findingWords } from './finding-words.ts';

const SQUARE = [
  { x: 0, y: 0 },
  { x: 4, y: 0 },
  { x: 4, y: 4 },
];

/** With the spaces that keep words together as plain ones. */
const words = (...given: Parameters<typeof findingWords>) => findingWords(...given).replaceAll('\u00a0', ' ');

test('lengths and places are in the pattern’s unit, as they are written elsewhere', () => {
  const message = say`Run on for ${inches(4 / 3)}, to ${placeOn({ x: 2, y: 2 / 3 }, SQUARE)}`;
  // 4/3 in is 21.3 sixteenths, 2/3 in 21.3 of 32; 4/3 in is 3.387 cm, (2, 2/3) in is (5.08, 1.693) cm.
  expect(words(message, 'in')).toBe('Run on for about 1 5/16 in, to (2, about 21/32 in)');
  expect(words(message, 'cm')).toBe('Run on for about 3.4 cm, to (5.08, 1.69 cm)');
});

test.each([
  [0.25, '¼ in', '0.64 cm'],
  [0.069, 'about 1/16 in', '0.18 cm'],
  [0.24, 'about 15/64 in', '0.61 cm'],
  [1 / 64, '1/64 in', '0.04 cm'],
  [0.001, 'less than 1/64 in', 'less than 0.01 cm'],
])('what is as short as %d in is told as finely as rulers are marked', (length, inInches, inCentimetres) => {
  expect(words(say`${inches(length)}`, 'in').toLowerCase()).toBe(inInches);
  expect(words(say`${inches(length)}`, 'cm').toLowerCase()).toBe(inCentimetres);
});

test('patches are called by their names, where all have one and they are few', () => {
  const names = ['A1', 'A2', 'B1', '?', 'B2', 'B3'];
  const told = (...patches: number[]) => words(say`${thePatches(patches)} …`, 'in', names);
  expect(told(1)).toBe('Patch A2 …');
  expect(told(0, 1, 2)).toBe('Patches A1, A2 and B1 …');
  expect(told(3)).toBe('A patch …');
  expect(told(0, 3)).toBe('2 patches …');
  expect(told(0, 1, 2, 4, 5)).toBe('5 patches …');
});
