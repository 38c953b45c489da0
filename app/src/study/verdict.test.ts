import { arrange, drawingFromSegments } from '@seamwright/arrangement';
import type { Point } from '@seamwright/geometry';
import { planSewing } from '@seamwright/sewing';
import { expect, test } from 'vitest';
import { toStudy } from './names.ts';
import type { Study } from './study.ts';
import { verdictWords } from './verdict.ts';

const SQUARE = [
  { x: 0, y: 0 },
  { x: 4, y: 0 },
  { x: 4, y: 4 },
  { x: 0, y: 4 },
];

/** The study of a 4 in square with lines, each x1, y1, x2, y2. */
function studyOf(...lines: readonly (readonly [number, number, number, number])[]): Study {
  const segments = lines.map(([x1, y1, x2, y2]) => ({ a: at(x1, y1), b: at(x2, y2) }));
  const drawing = drawingFromSegments(SQUARE, segments);
  const arrangement = arrange(drawing);
  if (!arrangement.ok) throw new Error(arrangement.problem.what);
  const answer = {
    arrangement: arrangement.value,
    problem: null,
    plan: planSewing(arrangement.value),
    records: [],
  };
  return { ...toStudy(answer), blockId: 'b', drawing, stale: false };
}

const at = (x: number, y: number): Point => ({ x, y });

test('before the first answer it waits', () => {
  expect(verdictWords(null)).toMatchObject({ sign: 'waiting', short: 'Looking at the drawing…' });
});

test('an undivided block is one foundation, and is told how to go on', () => {
  const words = verdictWords(studyOf());
  expect(words.short).toBe('Sews on one foundation: a single patch');
  expect(words.long.join(' ')).toContain('Draw a line');
});

test('one foundation; names count the patches in piecing order', () => {
  const study = studyOf([0, 1, 4, 1], [0, 2, 4, 2]);
  expect(verdictWords(study)).toMatchObject({ sign: 'good', short: 'Sews on one foundation' });
  expect([...study.names].sort()).toEqual(['A1', 'A2', 'A3']);
  expect(study.sectionOf).toEqual([0, 0, 0]);
});

test('a four-patch needs two foundations, and that is said to be proved', () => {
  const words = verdictWords(studyOf([2, 0, 2, 4], [0, 2, 4, 2]));
  expect(words).toMatchObject({ sign: 'good', short: 'Sews on 2 foundations' });
  expect(words.long).toContain('No way with fewer foundations exists; that is proved.');
});

test('four oblongs that chase each other cannot be sewn with straight seams', () => {
  const study = studyOf([1, 0, 1, 3], [0, 3, 3, 3], [3, 1, 3, 4], [1, 1, 4, 1]);
  const words = verdictWords(study);
  expect(words.sign).toBe('wrong');
  expect(words.short).toBe('Cannot be sewn with straight seams · 1 error');
  expect(study.names).toContain('?');
});

test('errors and cautions are counted beside the verdict', () => {
  const words = verdictWords(studyOf([0, 2, 3, 2]));
  expect(words.sign).toBe('wrong');
  expect(words.short).toMatch(/ · 1 error$/);
});
