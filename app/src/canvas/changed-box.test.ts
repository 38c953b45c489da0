import { expect, test } from 'vitest';
import { type Stroke, studyOf } from '../test/study-of.ts';
import { changedBox } from './changed-box.ts';

const CROSS: readonly Stroke[] = [
  [1, 0, 1, 4],
  [3, 0, 3, 4],
];

test('nothing has changed where the same is shown', () => {
  expect(changedBox(studyOf(CROSS), studyOf(CROSS))).toBeNull();
});

test('a line that has moved changes the patches beside it, whatever their order', () => {
  const study = studyOf(CROSS);
  const moved = studyOf([CROSS[0]!, [3.25, 0, 3, 4]]);
  // The patch at the left is another one by its place in the list.
  const leftmost = ({ arrangement }: typeof study) =>
    arrangement!.patches.findIndex(({ heart }) => heart.x < 1);
  expect(leftmost(moved)).not.toBe(leftmost(study));
  const nameless = (one: typeof study) => ({
    ...one,
    names: one.names.map(() => ''),
    records: one.arrangement!.patches.map(({ heart, index }) => ({
      ...one.records[index]!,
      id: heart.x < 1 ? 'left' : heart.x < 3 ? 'middle' : 'right',
    })),
  });
  expect(changedBox(nameless(study), nameless(moved))).toEqual({ minX: 1, minY: 0, maxX: 4, maxY: 4 });
});

test('another name changes its patch alone', () => {
  const study = studyOf(CROSS);
  const last = study.arrangement!.patches.findIndex(({ heart }) => heart.x > 3);
  const names = study.names.map((name, i) => (i === last ? 'B7' : name));
  expect(changedBox(study, { ...study, names })).toEqual({ minX: 3, minY: 0, maxX: 4, maxY: 4 });
});

test('patches that are gone or new have changed', () => {
  expect(changedBox(studyOf(CROSS), studyOf(CROSS.slice(1)))).toEqual({ minX: 0, minY: 0, maxX: 4, maxY: 4 });
});
