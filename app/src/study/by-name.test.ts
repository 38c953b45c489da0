import { expect, test } from 'vitest';
import { studyOf } from '../test/study-of.ts';
import { compareNames, patchesByName } from './by-name.ts';

test('names follow each other by section and number', () => {
  const names = ['A1', 'A2', 'A10', 'B1', 'B9', 'Z1', 'AA1', 'AB2', '?'];
  expect([...names].reverse().sort(compareNames)).toEqual(names);
  expect(compareNames('?', '?')).toBe(0);
});

test('patches are listed by their names, whatever their places on the block', () => {
  const study = studyOf([
    [2, 0, 2, 4],
    [0, 1, 2, 1],
    [2, 3, 4, 3],
  ]);
  const listed = patchesByName(study).map(({ index }) => study.names[index]);
  // Sections of fewer than ten patches: their names sort as they are spelt.
  expect(listed).toEqual([...study.names].sort());
  expect(new Set(listed).size).toBe(4);
});
