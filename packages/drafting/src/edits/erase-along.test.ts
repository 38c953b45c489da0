import { arrange } from '@seamwright/arrangement';
import { describe, expect, it } from 'vitest';
import { must } from '../../test/drawings.ts';
import { lineBetween, pointAt, splitsOf, withLines } from '../../test/exact.ts';
import { expectSound } from '../../test/sound.ts';
import { differenceOf } from '../difference.ts';
import { drawnLines } from '../lines.ts';
import { square } from '../outlines.ts';
import { eraseAlong } from './erase-along.ts';
import { meetingsOn } from './meetings.ts';

const block = must(square(8));
/** Nine squares of unequal size: two lines each way. */
const nine = withLines(block, [2, 0, 2, 8], [6, 0, 6, 8], [0, 3, 8, 3], [0, 5, 8, 5]);
const seg = (x1: number, y1: number, x2: number, y2: number) => ({
  a: { x: x1, y: y1 },
  b: { x: x2, y: y2 },
});

describe('erasing', () => {
  it('makes one patch of two, and leaves the rest of the line in two pieces', () => {
    const drawing = must(eraseAlong(nine, [seg(2, 3, 6, 3)]));
    expect(splitsOf(drawing)).toEqual(
      expect.arrayContaining([
        [0, 3, 2, 3],
        [6, 3, 8, 3],
      ]),
    );
    expect(must(arrange(drawing)).patches).toHaveLength(8);
    expect(drawing.points[pointAt(drawing, 2, 3)]!.on).toEqual([lineBetween(nine, 2, 0, 2, 8)]);
    expectSound(drawing);
  });

  it('takes a whole line, several stretches of one, and stretches of several', () => {
    expect(splitsOf(must(eraseAlong(nine, [seg(0, 3, 8, 3)])))).toHaveLength(3);
    expect(splitsOf(must(eraseAlong(nine, [seg(0, 3, 2, 3), seg(8, 3, 6, 3)])))).toContainEqual([2, 3, 6, 3]);
    const cross = must(eraseAlong(nine, [seg(2, 3, 6, 3), seg(2, 3, 2, 5)]));
    expect(must(arrange(cross)).patches).toHaveLength(7);
    expectSound(cross);
  });

  it('needs a split that runs there', () => {
    for (const nowhere of [seg(2, 4, 6, 4), seg(0, 0, 8, 0), seg(3, 0, 3, 8)])
      expect(eraseAlong(nine, [nowhere])).toMatchObject({ ok: false });
    expect(eraseAlong(nine, [])).toMatchObject({ ok: false });
  });
});

describe('what meets a line', () => {
  it('is told in order, with the lines that do', () => {
    const tee = withLines(nine, [4, 3, 4, 5]);
    const line = drawnLines(tee).get(lineBetween(tee, 0, 3, 8, 3))!;
    expect(meetingsOn(tee, line).map(({ at, lines }) => [at.x, at.y, ...lines])).toEqual([
      [2, 3, lineBetween(tee, 2, 0, 2, 8)],
      [4, 3, lineBetween(tee, 4, 3, 4, 5)],
      [6, 3, lineBetween(tee, 6, 0, 6, 8)],
    ]);
  });
});

describe('the difference of two drawings', () => {
  it('is what was drawn and what was taken away, stretch by stretch', () => {
    const after = withLines(must(eraseAlong(nine, [seg(2, 3, 6, 3)])), [2, 4, 6, 4]);
    expect(differenceOf(nine, after)).toEqual({
      added: [expect.objectContaining({ a: expect.objectContaining({ x: 2, y: 4 }) })],
      removed: [expect.objectContaining({ a: { x: 2, y: 3 }, b: { x: 6, y: 3 } })],
    });
    expect(differenceOf(nine, nine)).toEqual({ added: [], removed: [] });
  });
});
