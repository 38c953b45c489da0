import {
  compose,
  distance,
  distanceToSegment,
  edgesOf,
  type Point,
  type Polygon,
  SAME_COORDINATE,
  STRAIGHT_WITHIN,
  translation,
} from '@seamwright/geometry';
import { expect, test } from 'vitest';
import { type Block, block, rectangle, usual } from '../../test/blocks.ts';
import { pilings } from '../../test/repeated.ts';
import { checkJob } from '../job.ts';
import { matchLegend, matchWords } from '../words/match-words.ts';
import { type Foundation, foundationsOf } from './foundation.ts';
import type { Template } from './templates.ts';
import { wantedFoundations } from './wanted.ts';

function foundations(of: Block, scale = 1, change = (template: Template) => template): readonly Foundation[] {
  const job = checkJob(usual(of, 'Test', { scale, shareTemplates: true }));
  if (!job.ok) throw new Error(job.problem.what);
  return wantedFoundations(job.value).map((wanted) =>
    foundationsOf(job.value)({ ...wanted, template: change(wanted.template) }),
  );
}

/** From the outline to the cutting line, square to the edge: as long as the allowance is wide. */
function expectAcross({ outline, cuttingLine, matchMarks }: Foundation): void {
  const away = (p: Point<'print'>, ring: Polygon<'print'>) =>
    Math.min(...edgesOf(ring).map((edge) => distanceToSegment(p, edge.a, edge.b)));
  for (const { a, b } of matchMarks.ticks) {
    expect(away(a, outline)).toBeLessThan(SAME_COORDINATE);
    expect(away(b, cuttingLine)).toBeLessThan(SAME_COORDINATE);
    expect(distance(a, b)).toBeCloseTo(0.25, 6);
  }
}

test('a row of three: what is matched on the left, on the right, and by whom', () => {
  const [foundation, ...others] = foundations(pilings(3));
  expect(others).toEqual([]);
  // Printed mirrored: the left end of the row is on the right.
  const found = foundation!.matchMarks.ticks.map(({ a, letters }) => [a.x, a.y, letters.join('')]);
  // Each unit's seam falls from 1/2 in on its left to 1 in on its right: at a join there are two ends, on both sides of it.
  expect(found).toHaveLength(4);
  for (const y of [0.75, 1.25]) {
    expect(found).toContainEqual([expect.closeTo(0.25, 9), expect.closeTo(y, 9), 'AB']);
    expect(found).toContainEqual([expect.closeTo(2.25, 9), expect.closeTo(y, 9), 'BC']);
  }
});

test('copies drawn a little apart: their marks stand on the outline and reach the cutting line', () => {
  // Cells of 2.004, 1.998 and 1.998 in; alike for the sewer, whose seam is straight within 1/128 in.
  const row = block(
    rectangle(6, 2),
    [
      [2.004, 0, 2.004, 2],
      [4.002, 0, 4.002, 2],
      [0, 0.5, 2.004, 1.503],
      [2.004, 0.502, 4.002, 1.5],
      [4.002, 0.503, 6, 1.5],
    ],
    { largestSection: 2 },
  );
  for (const scale of [1, 3]) {
    const [foundation, ...others] = foundations(row, scale);
    expect(others).toEqual([]);
    expect(foundation!.letters).toEqual(['A', 'B', 'C']);
    const { ticks } = foundation!.matchMarks;
    expectAcross(foundation!);
    // Four of the middle one, and at each of them one of a section at the end.
    expect(ticks).toHaveLength(4);
    const middle = row.plan.sections.find(({ outline: own }) => own.every(({ x }) => x > 2 && x < 5))!;
    for (const { letters } of ticks) {
      expect(letters).toHaveLength(2);
      expect(letters).toContain(middle.letter);
    }
    // By how much the ends of the lines differ, where the marks may have been found on any of the three.
    const heights = ticks.map(({ a }) => (a.y - 0.25) / scale).sort((p, q) => p - q);
    for (const [i, height] of [0.5, 0.5, 1.5, 1.5].entries())
      expect(Math.abs(heights[i]! - height)).toBeLessThan(2 * STRAIGHT_WITHIN);
  }
});

test('copies that are carried back a little beside the outline: their marks are put on it', () => {
  for (const [dx, dy] of [
    [0.007, 0],
    [-0.007, 0],
    [0, 0.007],
  ] as const) {
    const off = translation(dx, dy);
    const [foundation] = foundations(pilings(3), 1, ({ copies, ...template }) => ({
      ...template,
      copies: copies.map((copy) => ({ ...copy, toTemplate: compose(copy.toTemplate, off) })),
    }));
    expect(foundation!.matchMarks.ticks.map(({ letters }) => letters.join('')).sort()).toEqual([
      'AB',
      'AB',
      'BC',
      'BC',
    ]);
    expectAcross(foundation!);
  }
});

test('the number where it is the same for all, else a name, and what it stands for', () => {
  const mark = (letters: string, ...numbers: readonly number[]) => ({
    a: { x: 0, y: 0 },
    b: { x: 0, y: 1 },
    letters: [...letters],
    numbers,
  });
  expect(matchWords([mark('A', 12), mark('A', 3)], ['A'])).toEqual(['12', '3']);
  expect(matchLegend([mark('A', 12), mark('A', 3)], ['A'])).toBeNull();
  const shared = [mark('AC', 1, 1), mark('AC', 2, 5), mark('A', 3), mark('C', 4)];
  expect(matchWords(shared, ['A', 'C'])).toEqual(['1', 'i', 'ii', 'iii']);
  expect(matchLegend(shared, ['A', 'C'])).toBe(
    'match numbers on A: i = 2, ii = 3, no iii; on C: i = 5, iii = 4, no ii',
  );
  const many = Array.from({ length: 49 }, () => mark('A', 1));
  expect(matchWords(many, ['A', 'B']).slice(-10)).toEqual([
    'xl',
    'xli',
    'xlii',
    'xliii',
    'xliv',
    'xlv',
    'xlvi',
    'xlvii',
    'xlviii',
    'xlix',
  ]);
});
