import { rotation, translation } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import { must } from '../../test/drawings.ts';
import { lineBetween, pointAt, splitsOf, withLines } from '../../test/exact.ts';
import { expectSound } from '../../test/sound.ts';
import { outlineOf } from '../checks.ts';
import { square } from '../outlines.ts';
import { mirrorAcross } from '../symmetry/mirror.ts';
import { moveLine, moveLines } from './move-lines.ts';
import { copyLines, deleteParts, transformParts } from './parts.ts';

const block = must(square(8));

describe('moving a line parallel to itself', () => {
  it('slides its ends along the lines that they are on, and takes along what is on it', () => {
    const drawing = withLines(block, [0, 4, 8, 6], [3, 0, 3, 8], [3, 2, 8, 2]);
    const moved = must(moveLine(drawing, lineBetween(drawing, 3, 0, 3, 8), 1));
    // Walking down, the right hand is on the left of the screen.
    expect(splitsOf(moved)).toEqual([
      [2, 0, 2, 8],
      [2, 2, 8, 2],
      [0, 4, 8, 6],
    ]);
    expectSound(moved);
  });

  it('leaves the corners of the outline, and slides on their edges', () => {
    const drawing = withLines(block, [0, 0, 8, 8]);
    const moved = must(moveLine(drawing, 's5', Math.SQRT2));
    expect(splitsOf(moved)).toEqual([[0, 2, 6, 8]]);
    expect(outlineOf(moved)).toEqual(outlineOf(drawing));
    expectSound(moved);
  });

  it('takes a free end sideways, with the lines that meet there', () => {
    const drawing = withLines(block, [2, 2, 6, 2], [6, 2, 6, 5]);
    expect(splitsOf(must(moveLine(drawing, lineBetween(drawing, 2, 2, 6, 2), 1)))).toEqual([
      [2, 3, 6, 3],
      [6, 3, 6, 5],
    ]);
  });

  it('moves an edge with its corners along the neighbouring edges', () => {
    const drawing = withLines(block, [4, 0, 4, 8]);
    const moved = must(moveLine(drawing, 'edge:p2', -2));
    expect(outlineOf(moved).map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [10, 0],
      [10, 8],
      [0, 8],
    ]);
    expectSound(moved);
  });

  it('lets lines that meet meet again', () => {
    const drawing = withLines(block, [2, 2, 6, 2], [6, 2, 6, 6], [6, 6, 2, 6], [2, 6, 2, 2]);
    const moved = must(moveLines(drawing, new Map(drawing.splits.map(({ id }) => [id, 1]))));
    expect(splitsOf(moved)).toEqual([
      [3, 3, 5, 3],
      [3, 3, 3, 5],
      [5, 3, 5, 5],
      [3, 5, 5, 5],
    ]);
    expectSound(moved);
  });

  it('refuses to slide off a line, to turn about, and what is no number', () => {
    const drawing = withLines(block, [4, 4, 8, 4], [6, 4, 6, 8]);
    const upright = lineBetween(drawing, 6, 4, 6, 8);
    expect(moveLine(drawing, upright, 1.5).ok).toBe(true);
    expect(moveLine(drawing, upright, 2.5)).toMatchObject({
      problem: { what: expect.stringMatching(/slide off/) },
    });
    expect(moveLine(block, 'edge:p2', 9).ok).toBe(false);
    expect(moveLine(drawing, upright, NaN).ok).toBe(false);
    expect(moveLine(drawing, 's99', 1).ok).toBe(false);
  });
});

describe('several parts at once', () => {
  const drawing = withLines(block, [2, 2, 4, 2], [4, 2, 4, 4], [0, 6, 8, 6]);
  const bent = [lineBetween(drawing, 2, 2, 4, 2), lineBetween(drawing, 4, 2, 4, 4)];
  const middle = { x: 4, y: 4 };

  it('are moved, turned and mirrored', () => {
    const parts = { points: [], lines: bent };
    expect(splitsOf(must(transformParts(drawing, parts, translation(1, -0.5))))).toEqual([
      [3, 1.5, 5, 1.5],
      [5, 1.5, 5, 3.5],
      [0, 6, 8, 6],
    ]);
    expect(splitsOf(must(transformParts(drawing, parts, rotation(90, middle))))).toEqual([
      [6, 2, 6, 4],
      [4, 4, 6, 4],
      [0, 6, 8, 6],
    ]);
    expect(splitsOf(must(transformParts(drawing, parts, mirrorAcross(45, middle))))).toEqual([
      [4, 4, 6, 4],
      [6, 4, 6, 6],
      [0, 6, 8, 6],
    ]);
  });

  it('are on the lines that they come to lie on', () => {
    const moved = must(
      transformParts(drawing, { points: [pointAt(drawing, 4, 4)], lines: [] }, translation(0, 2)),
    );
    expect(moved.points[pointAt(moved, 4, 6)]!.on).toEqual([lineBetween(drawing, 0, 6, 8, 6)]);
    expectSound(moved);
  });

  it('become one with the points that they come to lie on', () => {
    const moved = must(
      transformParts(drawing, { points: [pointAt(drawing, 2, 2)], lines: [] }, translation(2, 2)),
    );
    expect(Object.keys(moved.points)).toHaveLength(Object.keys(drawing.points).length - 1);
    expectSound(moved);
  });

  it('leave the corners of the outline where they are, unless these or their edges are chosen', () => {
    const cross = withLines(block, [0, 0, 8, 8]);
    const moved = must(transformParts(cross, { points: [], lines: ['s5'] }, translation(1, 0)));
    expect(splitsOf(moved)).toEqual([[1, 0, 9, 8]]);
    expect(outlineOf(moved)).toEqual(outlineOf(cross));
    expect(moved.points[pointAt(moved, 1, 0)]!.on).toEqual(['edge:p1']);
    const wide = must(transformParts(cross, { points: [], lines: ['s5', 'edge:p2'] }, translation(1, 0)));
    expect(splitsOf(wide)).toEqual([[1, 0, 9, 8]]);
    expect(outlineOf(wide).map(({ x }) => x)).toEqual([0, 9, 9, 0]);
    expectSound(moved);
    expectSound(wide);
  });

  it('turn the whole block', () => {
    const all = { points: Object.keys(drawing.points), lines: [] };
    const turned = must(transformParts(drawing, all, rotation(45, middle)));
    expectSound(turned);
    const back = must(transformParts(turned, all, rotation(-45, middle)));
    for (const { id, x, y } of Object.values(drawing.points)) {
      expect(back.points[id]!.x).toBeCloseTo(x, 9);
      expect(back.points[id]!.y).toBeCloseTo(y, 9);
    }
  });

  it('are copied, cut off at the edge', () => {
    const copied = must(copyLines(drawing, bent, rotation(180, middle)));
    expect(splitsOf(copied)).toEqual([
      [2, 2, 4, 2],
      [4, 2, 4, 4],
      [4, 4, 4, 6],
      [0, 6, 8, 6],
    ]);
    expect(splitsOf(must(copyLines(drawing, bent.slice(0, 1), translation(5, 1))))).toContainEqual([
      7, 3, 8, 3,
    ]);
    expect(copyLines(drawing, bent.slice(0, 1), translation(20, 0)).ok).toBe(false);
  });

  it('are deleted', () => {
    const left = must(deleteParts(drawing, { points: [pointAt(drawing, 0, 6)], lines: bent }));
    expect(left.splits).toEqual([]);
    expectSound(left);
    expect(splitsOf(must(deleteParts(drawing, { points: ['p1'], lines: bent })))).toEqual([[0, 6, 8, 6]]);
    expect(deleteParts(drawing, { points: [], lines: ['edge:p1'] }).ok).toBe(false);
    expect(deleteParts(drawing, { points: ['p99'], lines: [] })).toMatchObject({
      problem: { what: 'Nothing is chosen' },
    });
  });
});
