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
import { type Block, block, rectangle, usual } from '../test/blocks.ts';
import { pilings } from '../test/repeated.ts';
import { type Foundation, foundationOf } from './foundation.ts';
import { checkJob } from './job.ts';
import type { Template } from './templates.ts';
import { tickWords } from './tick-letters.ts';
import { wantedFoundations } from './wanted.ts';

function foundations(of: Block, scale = 1, change = (template: Template) => template): readonly Foundation[] {
  const job = checkJob(usual(of, 'Test', { scale, shareTemplates: true }));
  if (!job.ok) throw new Error(job.problem.what);
  return wantedFoundations(job.value).map((wanted) =>
    foundationOf(job.value, { ...wanted, template: change(wanted.template) }),
  );
}

/** From the outline to the cutting line, square to the edge: as long as the allowance is wide. */
function expectAcross({ outline, cuttingLine, matchMarks }: Foundation): void {
  const away = (p: Point<'print'>, ring: Polygon<'print'>) =>
    Math.min(...edgesOf(ring).map((edge) => distanceToSegment(p, edge.a, edge.b)));
  for (const { a, b } of matchMarks) {
    expect(away(a, outline)).toBeLessThan(SAME_COORDINATE);
    expect(away(b, cuttingLine)).toBeLessThan(SAME_COORDINATE);
    expect(distance(a, b)).toBeCloseTo(0.25, 6);
  }
}

test('a row of three: what is matched on the left, on the right, and by whom', () => {
  const [foundation, ...others] = foundations(pilings(3));
  expect(others).toEqual([]);
  // Printed mirrored: the left end of the row is on the right.
  const found = foundation!.matchMarks.map(({ a, letters }) => [a.x, a.y, letters.join('')]);
  expect(found).toHaveLength(2);
  expect(found).toContainEqual([expect.closeTo(0.25, 9), expect.closeTo(0.75, 9), 'AB']);
  expect(found).toContainEqual([expect.closeTo(2.25, 9), expect.closeTo(1.25, 9), 'BC']);
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
    const { matchMarks } = foundation!;
    expectAcross(foundation!);
    // Two of the middle one, and at either of them one of a section at the end.
    expect(matchMarks).toHaveLength(2);
    const middle = row.plan.sections.find(({ outline: own }) => own.every(({ x }) => x > 2 && x < 5))!;
    for (const { letters } of matchMarks) {
      expect(letters).toHaveLength(2);
      expect(letters).toContain(middle.letter);
    }
    // By how much the ends of the lines differ, where the marks may have been found on any of the three.
    const heights = matchMarks.map(({ a }) => (a.y - 0.25) / scale).sort((p, q) => p - q);
    expect(Math.abs(heights[0]! - 0.5)).toBeLessThan(2 * STRAIGHT_WITHIN);
    expect(Math.abs(heights[1]! - 1.5)).toBeLessThan(2 * STRAIGHT_WITHIN);
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
    expect(foundation!.matchMarks.map(({ letters }) => letters.join('')).sort()).toEqual(['AB', 'BC']);
    expectAcross(foundation!);
  }
});

test('letters beside a tick, as few as say it', () => {
  const all = ['A', 'C', 'D', 'E'];
  expect(tickWords(all, all)).toBeNull();
  expect(tickWords(['A', 'C', 'D'], all)).toBe('not E');
  expect(tickWords(['A', 'C'], all)).toBe('A C');
  expect(tickWords(['E'], all)).toBe('E');
  expect(tickWords(['B'], ['A', 'B'])).toBe('B');
  const many = Array.from({ length: 24 }, (_, i) => String.fromCharCode(65 + i));
  expect(tickWords(many.slice(0, 10), many)).toBe('A B C D E F G H …');
  expect(tickWords(many.slice(10), many)).toBe('not A B C D E F G H …');
});
