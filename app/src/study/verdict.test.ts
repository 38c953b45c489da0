import { NO_WISHES, type SewingWishes } from '@seamwright/pattern';
import { expect, test } from 'vitest';
import { studyOf as quickStudyOf, RING, type Stroke } from '../test/study-of.ts';
import type { Study } from './study.ts';
import { verdictWords } from './verdict.ts';

/** A study after the search for better plans. */
const studyOf = (lines: readonly Stroke[], wishes = NO_WISHES): Study => ({
  ...quickStudyOf(lines, wishes),
  refined: true,
});

test('before the first answer it waits', () => {
  expect(verdictWords(null)).toMatchObject({ sign: 'waiting', short: 'Looking at the drawing…' });
});

test('an undivided block is one foundation, and is told how to go on', () => {
  const words = verdictWords(studyOf([]));
  expect(words.short).toBe('Sews on one foundation: a single patch');
  expect(words.long.join(' ')).toContain('Draw a line');
});

test('one foundation; names count the patches in piecing order', () => {
  const study = studyOf([
    [0, 1, 4, 1],
    [0, 2, 4, 2],
  ]);
  expect(verdictWords(study)).toMatchObject({ sign: 'good', short: 'Sews on one foundation' });
  expect([...study.names].sort()).toEqual(['A1', 'A2', 'A3']);
  expect(study.sectionOf).toEqual([0, 0, 0]);
});

test('a four-patch needs two foundations, and that is said to be proved', () => {
  const words = verdictWords(
    studyOf([
      [2, 0, 2, 4],
      [0, 2, 4, 2],
    ]),
  );
  expect(words).toMatchObject({ sign: 'good', short: 'Sews on 2 foundations' });
  expect(words.long).toContain('No way with fewer foundations exists; that is proved.');
});

test('four oblongs that chase each other cannot be sewn with straight seams', () => {
  const study = studyOf(RING);
  const words = verdictWords(study);
  expect(words.sign).toBe('wrong');
  expect(words.short).toBe('Cannot be sewn with straight seams · 1 error');
  expect(study.names).toContain('?');
});

test('errors and cautions are counted beside the verdict', () => {
  const words = verdictWords(studyOf([[0, 2, 3, 2]]));
  expect(words.sign).toBe('wrong');
  expect(words.short).toMatch(/ · 1 error$/);
});

test('where the least is not proved, the verdict says from where up fewer may do', () => {
  const study = studyOf([
    [2, 0, 2, 4],
    [0, 2, 4, 2],
  ]);
  const unproved: Study = { ...study, plan: { ...study.plan!, provenLeast: false, atLeast: 1 } };
  expect(verdictWords(unproved).short).toBe('Sews on 2 foundations · fewer may do, from 1 up');
  expect(verdictWords({ ...unproved, refined: false }).short).toBe(
    'Sews on 2 foundations · looking for fewer',
  );
});

test('pins that the plan does not heed are counted beside the verdict', () => {
  const wishes: SewingWishes = {
    ...NO_WISHES,
    pins: [
      { kind: 'first', patch: 'patch1' },
      { kind: 'first', patch: 'patch2' },
      { kind: 'together', patches: ['patch1', 'patch2'] },
      { kind: 'first', patch: 'gone' },
    ],
  };
  const study = studyOf([[0, 2, 4, 2]], wishes);
  expect(study.clashing).toHaveLength(3);
  expect(study.lost).toEqual([{ kind: 'first', patch: 'gone' }]);
  expect(verdictWords(study)).toMatchObject({
    sign: 'caution',
    short: 'Sews on one foundation · 3 pins cannot hold together, 1 pin lost',
  });
});

test('pins that it was too much to find a way for are told from those that cannot hold', () => {
  const study = studyOf([[0, 2, 4, 2]]);
  const pin = { kind: 'together', patches: ['one', 'other'] } as const;
  const without = { ...study, undecided: [pin] };
  expect(verdictWords({ ...without, refined: false }).short).toMatch(/ · looking for a way for 1 pin$/);
  expect(verdictWords(without).short).toMatch(/ · no way found for 1 pin$/);
  expect(verdictWords(study).short).toBe('Sews on one foundation');
});
