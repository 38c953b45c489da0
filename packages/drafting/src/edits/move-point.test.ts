import { describe, expect, it } from 'vitest';
import { must } from '../../test/drawings.ts';
import { pointAt, withLines } from '../../test/exact.ts';
import { expectSound } from '../../test/sound.ts';
import { square } from '../outlines.ts';
import { movePoint } from './move-point.ts';

const block = must(square(8));

describe('moving a point', () => {
  it('moves every line that ends there', () => {
    const drawing = withLines(block, [4, 4, 0, 0], [4, 4, 8, 0], [4, 4, 4, 8]);
    const centre = pointAt(drawing, 4, 4);
    const moved = must(movePoint(drawing, centre, { at: { x: 3, y: 5 } }));
    expect(moved.splits).toEqual(drawing.splits);
    expect(moved.points[centre]).toEqual({ id: centre, x: 3, y: 5 });
    expectSound(moved);
  });

  it('takes what lies on its lines along, at the same share of the way', () => {
    // An end on the first line at a quarter of the way, and one on the edge below.
    const drawing = withLines(block, [0, 4, 8, 4], [2, 4, 2, 8]);
    const moved = must(movePoint(drawing, pointAt(drawing, 8, 4), { at: { x: 8, y: 1 }, on: ['edge:p2'] }));
    expect(moved.points[pointAt(drawing, 2, 4)]).toMatchObject({ x: 2, y: 3.25 });
    expect(moved.points[pointAt(drawing, 2, 8)]).toBe(drawing.points[pointAt(drawing, 2, 8)]);
    expectSound(moved);
  });

  it('takes the end on a crossing to the new crossing', () => {
    const drawing = withLines(block, [0, 4, 8, 4], [4, 0, 4, 8], [4, 4, 8, 8]);
    const crossing = pointAt(drawing, 4, 4);
    expect(drawing.points[crossing]!.on).toHaveLength(2);
    const moved = must(movePoint(drawing, pointAt(drawing, 4, 0), { at: { x: 2, y: 0 } }));
    expect(moved.points[crossing]).toMatchObject({ x: 3, y: 4 });
    expectSound(moved);
  });

  it('keeps the end on the first line when the crossing is gone', () => {
    const drawing = withLines(block, [0, 4, 8, 4], [4, 0, 4, 5], [4, 4, 8, 8]);
    const crossing = pointAt(drawing, 4, 4);
    const [first] = drawing.points[crossing]!.on!;
    const moved = must(movePoint(drawing, pointAt(drawing, 4, 5), { at: { x: 4, y: 3 } }));
    expect(moved.points[crossing]).toMatchObject({ x: 4, y: 4, on: [first] });
    expectSound(moved);
  });

  it('follows through points that hang on points that hang on it', () => {
    const drawing = withLines(block, [0, 4, 8, 4], [4, 4, 4, 8], [4, 6, 8, 6]);
    const moved = must(movePoint(drawing, pointAt(drawing, 0, 4), { at: { x: 0, y: 2 } }));
    expect(moved.points[pointAt(drawing, 4, 4)]).toMatchObject({ x: 4, y: 3 });
    expect(moved.points[pointAt(drawing, 4, 6)]).toMatchObject({ x: 4, y: 5.5 });
    expectSound(moved);
  });

  it('moves what lies on an edge when its corner moves', () => {
    const drawing = withLines(block, [4, 0, 4, 8]);
    const moved = must(movePoint(drawing, 'p1', { at: { x: 0, y: 2 } }));
    expect(moved.points[pointAt(drawing, 4, 0)]).toMatchObject({ x: 4, y: 1 });
    expectSound(moved);
  });

  it('drops the fact, but keeps the place, where a point would hang on itself', () => {
    const drawing = withLines(block, [0, 4, 8, 4], [4, 4, 4, 8]);
    const hanging = drawing.splits[1]!.id;
    const end = pointAt(drawing, 0, 4);
    const moved = must(movePoint(drawing, end, { at: { x: 4, y: 6 }, on: [hanging] }));
    expect(moved.points[end]).toEqual({ id: end, x: 4, y: 6 });
    expectSound(moved);
  });

  it('makes one point of two, and one line of two that then join the same points', () => {
    const drawing = withLines(block, [0, 0, 4, 4], [0, 0, 5, 5], [5, 5, 8, 0]);
    const [first, second] = [pointAt(drawing, 4, 4), pointAt(drawing, 5, 5)];
    const moved = must(movePoint(drawing, first, { at: { x: 5, y: 5 }, point: second }));
    expect(moved.points[first]).toBeUndefined();
    expect(moved.splits).toHaveLength(2);
    expectSound(moved);
  });

  it('lets a corner take over the point that it is put on', () => {
    const drawing = withLines(block, [2, 2, 8, 8]);
    const moved = must(movePoint(drawing, 'p1', { at: { x: 2, y: 2 }, point: pointAt(drawing, 2, 2) }));
    expect(moved.outline).toEqual(drawing.outline);
    expect(moved.points.p1).toEqual({ id: 'p1', x: 2, y: 2 });
    expect(moved.splits[0]!.from).toBe('p1');
    expectSound(moved);
  });

  it.each([
    ['an outline that crosses itself', 'p1', { at: { x: 9, y: 4 } }, /crosses itself/],
    ['two corners on one spot', 'p1', { at: { x: 8, y: 0 }, point: 'p2' }, /one spot/],
    ['a size beyond the largest', 'p1', { at: { x: -120, y: 0 } }, /The width is 128 in/],
    ['a coordinate that is no number', 'p1', { at: { x: NaN, y: 0 } }, /not a number/],
    ['a point that is not there', 'p99', { at: { x: 1, y: 1 } }, /not in the drawing/],
    ['a line without length', 'p5', { at: { x: 4, y: 8 }, point: 'p6' }, /no length/],
  ])('refuses %s', (_, id, target, what) => {
    const drawing = withLines(block, [4, 0, 4, 8]);
    const result = movePoint(drawing, id, target);
    expect(result).toMatchObject({ ok: false, problem: { what: expect.stringMatching(what) } });
  });
});
