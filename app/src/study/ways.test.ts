import { NO_WISHES } from '@seamwright/pattern';
import { expect, test } from 'vitest';
import { RING, studyOf } from '../test/study-of.ts';
import { stillToPlan, waysThatStand } from './ways.ts';

const halved = studyOf([[0, 2, 4, 2]]);
const plan = halved.plan!;

test('other pins, or partial seams, make every plan anew', () => {
  const ways = { 'fewest foundations': plan, 'small sections': plan };
  const pinned = { ...NO_WISHES, pins: [{ kind: 'first', patch: 'patch1' }] } as const;
  expect(waysThatStand(ways, NO_WISHES, pinned)).toEqual({});
  expect(waysThatStand(ways, NO_WISHES, { ...NO_WISHES, partialSeams: true })).toEqual({});
});

test('another choice leaves all plans as they are; another limit concerns small sections only', () => {
  const ways = { 'fewest foundations': plan, 'small sections': plan };
  expect(waysThatStand(ways, NO_WISHES, { ...NO_WISHES, choice: 'small sections' })).toBe(ways);
  expect(waysThatStand(ways, NO_WISHES, { ...NO_WISHES, mostPatches: 3 })).toEqual({
    'fewest foundations': plan,
  });
});

test('the chosen way is planned first', () => {
  const study = { ...halved, wishes: { ...NO_WISHES, choice: 'small sections' } } as const;
  expect(stillToPlan(study)).toEqual(['small sections', 'fewest foundations', 'most repetition']);
  expect(stillToPlan({ ...study, ways: { 'small sections': plan } })).toEqual([
    'fewest foundations',
    'most repetition',
  ]);
});

test('where nothing can be sewn, ways are not compared', () => {
  expect(stillToPlan(studyOf(RING))).toEqual(['fewest foundations']);
});
