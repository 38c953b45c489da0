import { describe, expect, it } from 'vitest';
import { must } from '../../test/drawings.ts';
import { lineBetween, pointAt, splitsOf, withLines } from '../../test/exact.ts';
import { expectSound } from '../../test/sound.ts';
import { square } from '../outlines.ts';
import { measuredEnd, putLineEnd } from './put-line-end.ts';

const block = must(square(8));
const roof = withLines(block, [0, 0, 4, 3], [4, 3, 8, 0]);
const left = lineBetween(roof, 0, 0, 4, 3);

describe('a line’s end', () => {
  it('goes to a place, with all lines that meet there, and is on the lines that run there', () => {
    const drawing = must(putLineEnd(roof, left, 'to', { x: 4, y: 8 }));
    expect(splitsOf(drawing)).toEqual([
      [0, 0, 4, 8],
      [8, 0, 4, 8],
    ]);
    expect(drawing.points[pointAt(drawing, 4, 8)]!.on).toEqual(['edge:p3']);
    expectSound(drawing);
  });

  it('leaves a corner of the outline, and the corner stays', () => {
    const drawing = must(putLineEnd(roof, left, 'from', { x: 0, y: 3 }));
    expect(splitsOf(drawing)).toContainEqual([0, 3, 4, 3]);
    expect(drawing.outline.map((id) => drawing.points[id]!.x)).toEqual([0, 8, 8, 0]);
    expect(drawing.points.p1).toMatchObject({ x: 0, y: 0 });
    expectSound(drawing);
  });

  it('takes a corner along when the line is an edge', () => {
    const drawing = must(putLineEnd(roof, 'edge:p1', 'to', { x: 9, y: 0 }));
    expect(drawing.points.p2).toMatchObject({ x: 9, y: 0 });
    expectSound(drawing);
  });

  it('is found by length and angle from the other end, angles growing anticlockwise', () => {
    expect(measuredEnd(roof, left, 'to', 5, 0)).toEqual({ ok: true, value: { x: 5, y: 0 } });
    expect(measuredEnd(roof, left, 'from', 2, 90)).toEqual({ ok: true, value: { x: 4, y: 1 } });
  });

  it('is not put where it cannot be', () => {
    expect(putLineEnd(roof, 's99', 'to', { x: 1, y: 1 }).ok).toBe(false);
    expect(putLineEnd(roof, left, 'to', { x: 0.001, y: 0 }).ok).toBe(false);
    expect(putLineEnd(roof, left, 'to', { x: Number.NaN, y: 0 }).ok).toBe(false);
    expect(putLineEnd(roof, 'edge:p1', 'to', { x: 4, y: 9 })).toMatchObject({ ok: false });
    expect(measuredEnd(roof, left, 'to', 0, 0).ok).toBe(false);
    expect(measuredEnd(roof, left, 'to', 3, Number.NaN).ok).toBe(false);
    expect(measuredEnd(roof, 's99', 'to', 3, 0).ok).toBe(false);
  });
});
