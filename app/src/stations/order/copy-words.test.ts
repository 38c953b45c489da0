import { rotation, type Transform, translation } from '@seamwright/geometry';
import { alikeSections } from '@seamwright/pages';
import type { Section } from '@seamwright/sewing';
import { expect, test } from 'vitest';
import { studyOf } from '../../test/study-of.ts';
import { copiedFrom, copies, type Likeness } from './copy-words.ts';

const section = (letter: string, copyOf?: Section['copyOf']): Section => ({
  ...{ letter, order: [0], sewLines: [], outline: [], ring: [] },
  ...(copyOf && { copyOf }),
});

const copy = (letter: string, mirrored: boolean, transform: Transform): Section['copyOf'] => ({
  ...{ letter, mirrored, transform },
});

const MIRROR: Transform = { a: -1, b: 0, c: 0, d: 1, e: 0, f: 0 };
/** The same, turned half round: the mirror the other way. */
const OTHER_MIRROR: Transform = { a: 1, b: 0, c: 0, d: -1, e: 0, f: 0 };

const said = (likeness: Likeness) =>
  likeness.sections.map((one) => [
    one.letter,
    [copiedFrom(one, likeness), copies(one, likeness)].filter((words) => words !== null).join(' '),
  ]);

const saidOf = (sections: readonly Section[]) =>
  said({ sections, alike: alikeSections({ ...studyOf([]).plan!, sections, joins: [] }) });

test('a mirror image is not to be sewn on prints of the other: those have one face', () => {
  expect(saidOf([section('A'), section('B', copy('A', true, MIRROR))])).toEqual([
    ['A', ''],
    ['B', 'The mirror image of A, with a print of its own.'],
  ]);
});

test('turned and moved copies are made from the first one’s prints, mirror images from each other’s', () => {
  expect(
    saidOf([
      section('A'),
      section('B', copy('A', true, MIRROR)),
      section('C', copy('A', false, rotation(90))),
      section('D', copy('A', true, OTHER_MIRROR)),
      section('E', copy('A', false, translation(2, 0))),
      section('F', copy('A', true, { ...MIRROR, e: 4 })),
    ]),
  ).toEqual([
    ['A', 'Make 3: C and E are the same.'],
    ['B', 'The mirror image of A, with a print of its own. Make 3: D and F are the same.'],
    ['C', 'The same as A, turned.'],
    ['D', 'The same as B, turned.'],
    ['E', 'The same as A, moved.'],
    ['F', 'The same as B, moved.'],
  ]);
});

test('what a partial seam is sewn to has a print of its own', () => {
  const sections = [section('A'), section('B', copy('A', false, rotation(180)))];
  expect(said({ sections, alike: [] })).toEqual([
    ['A', ''],
    ['B', 'Like A, with a print of its own for the partial seam.'],
  ]);
});
