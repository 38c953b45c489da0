import { distance } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import { must } from '../../test/drawings.ts';
import { lineBetween, pointAt, splitsOf, withLines } from '../../test/exact.ts';
import { expectSound } from '../../test/sound.ts';
import { equilateralTriangle, square } from '../outlines.ts';
import { addLines } from './add-lines.ts';
import { addSplit } from './add-split.ts';
import { parallelCopy } from './parallel-copy.ts';
import { splitByMeasure, splitSquareTo, splitThrough } from './split-through.ts';

const block = must(square(8));
/** An upright line at 3 and a level one from it to the right edge at 4. */
const tee = withLines(block, [3, 0, 3, 8], [3, 4, 8, 4]);

describe('ends that run', () => {
  const free = (x: number, y: number) => ({ at: { x, y } });

  it('go on to the nearest line or the edge, and know it', () => {
    const drawing = must(addSplit(tee, free(5, 2), free(6, 3), 'run'));
    expect(splitsOf(drawing)).toContainEqual([3, 0, 7, 4]);
    // The upper end runs into the point where the upright line begins.
    expect(drawing.splits.at(-1)!.from).toBe(pointAt(tee, 3, 0));
    expect(drawing.points[drawing.splits.at(-1)!.to]!.on).toEqual([lineBetween(tee, 3, 4, 8, 4)]);
    expectSound(drawing);
  });

  it('run back to the edge from outside', () => {
    const drawing = must(addSplit(tee, free(-1, 2), free(9, 2), 'run'));
    expect(splitsOf(drawing)).toContainEqual([0, 2, 8, 2]);
  });

  it('stay where something was caught', () => {
    const end = { at: { x: 3, y: 2 }, on: [lineBetween(tee, 3, 0, 3, 8)] };
    const drawing = must(addSplit(tee, free(2, 2), end, 'run'));
    expect(splitsOf(drawing)).toContainEqual([0, 2, 3, 2]);
  });

  it('stay where they were put unless told to run', () => {
    expect(splitsOf(must(addSplit(tee, free(5, 2), free(6, 3))))).toContainEqual([5, 2, 6, 3]);
  });

  it('are refused outside the block', () => {
    expect(addSplit(tee, free(-3, 0), free(-1, 2), 'run')).toMatchObject({
      problem: { what: expect.stringMatching(/outside/) },
    });
  });
});

describe('a split through a place at an angle', () => {
  it('runs both ways to the next lines, angles growing anticlockwise from level', () => {
    expect(splitsOf(must(splitThrough(tee, { at: { x: 5, y: 2 } }, 0)))).toContainEqual([3, 2, 8, 2]);
    expect(splitsOf(must(splitThrough(tee, { at: { x: 4, y: 2 } }, 45)))).toContainEqual([6, 0, 3, 3]);
  });

  it('or through all of them to the edge', () => {
    expect(splitsOf(must(splitThrough(tee, { at: { x: 5, y: 2 } }, 0, 'edge')))).toContainEqual([0, 2, 8, 2]);
  });

  it('or only ahead, from the place itself', () => {
    const ahead = (angle: number) => splitThrough(tee, { at: { x: 5, y: 2 } }, angle, 'line', 'ahead');
    expect(splitsOf(must(ahead(0)))).toContainEqual([5, 2, 8, 2]);
    expect(splitsOf(must(ahead(180)))).toContainEqual([3, 2, 5, 2]);
    const away = splitThrough(tee, { at: { x: 0, y: 2 } }, 180, 'line', 'ahead');
    expect(away).toMatchObject({ ok: false });
  });

  it('begins at a place of the edge, and takes a point that is there on itself', () => {
    const place = { at: { x: 0, y: 6 }, on: ['edge:p4'] };
    expect(splitsOf(must(splitThrough(tee, place, 0)))).toContainEqual([0, 6, 3, 6]);
    const loose = must(addSplit(block, { at: { x: 4, y: 4 } }, { at: { x: 8, y: 6 }, on: ['edge:p2'] }));
    const end = pointAt(loose, 4, 4);
    const drawing = must(splitThrough(loose, { at: { x: 4, y: 4 }, point: end }, 90));
    expect(drawing.points[end]!.on).toEqual([lineBetween(drawing, 4, 0, 4, 8)]);
    expectSound(drawing);
  });

  it('is refused where it would lead out of the block, and along a line', () => {
    expect(splitThrough(tee, { at: { x: 0, y: 0 }, point: 'p1' }, 45).ok).toBe(false);
    const along = splitThrough(tee, { at: { x: 3, y: 2 }, on: [lineBetween(tee, 3, 0, 3, 8)] }, 90);
    expect(along.ok).toBe(false);
    expect(splitThrough(tee, { at: { x: 5, y: 2 } }, NaN).ok).toBe(false);
  });
});

describe('a split by its length and angle', () => {
  it('is that long, in that direction', () => {
    const drawing = must(splitByMeasure(block, { at: { x: 0, y: 8 }, point: 'p4' }, 5, 30));
    const { from, to } = drawing.splits[0]!;
    const [a, b] = [drawing.points[from]!, drawing.points[to]!];
    expect(distance(a, b)).toBeCloseTo(5, 12);
    // sin 30° = 1/2: half as far up as it is long.
    expect(a.y - b.y).toBeCloseTo(2.5, 12);
    expect(b.x - a.x).toBeCloseTo(2.5 * Math.sqrt(3), 12);
  });

  it('knows the line that it ends on', () => {
    const drawing = must(splitByMeasure(tee, { at: { x: 0, y: 2 }, on: ['edge:p4'] }, 3, 0));
    expect(drawing.points[drawing.splits.at(-1)!.to]!.on).toEqual([lineBetween(tee, 3, 0, 3, 8)]);
  });

  it.each([0, -2, NaN])('of length %d is refused', (length) => {
    expect(splitByMeasure(block, { at: { x: 1, y: 1 } }, length, 0).ok).toBe(false);
  });
});

describe('a split square to a line', () => {
  const slope = withLines(block, [0, 2, 8, 6]);

  it('ends at the foot', () => {
    const drawing = must(
      splitSquareTo(slope, { at: { x: 3, y: 8 }, on: ['edge:p3'] }, lineBetween(slope, 0, 2, 8, 6)),
    );
    // The foot of 3, 8 on y = 2 + x / 2.
    expect(splitsOf(drawing)).toContainEqual([4.8, 4.4, 3, 8]);
    expectSound(drawing);
  });

  it('from a place on the line runs to the next one', () => {
    const drawing = must(
      splitSquareTo(
        tee,
        { at: { x: 5, y: 4 }, on: [lineBetween(tee, 3, 4, 8, 4)] },
        lineBetween(tee, 3, 4, 8, 4),
      ),
    );
    // Both ways: the line is crossed.
    expect(splitsOf(drawing)).toContainEqual([5, 0, 5, 8]);
  });

  it('is refused beyond the end of the line', () => {
    const result = splitSquareTo(tee, { at: { x: 1, y: 6 } }, lineBetween(tee, 3, 4, 8, 4));
    expect(result).toMatchObject({ problem: { what: expect.stringMatching(/beyond its end/) } });
    expect(splitSquareTo(tee, { at: { x: 1, y: 6 } }, 's99').ok).toBe(false);
  });
});

describe('a parallel copy', () => {
  it('ends on the lines that the original ends on', () => {
    const drawing = must(parallelCopy(tee, lineBetween(tee, 3, 4, 8, 4), 1.5));
    expect(splitsOf(drawing)).toContainEqual([3, 5.5, 8, 5.5]);
    expect(splitsOf(must(parallelCopy(tee, lineBetween(tee, 3, 4, 8, 4), -1.5)))).toContainEqual([
      3, 2.5, 8, 2.5,
    ]);
    expectSound(drawing);
  });

  it('crosses what the original crosses, and may be of an edge', () => {
    const crossed = withLines(tee, [0, 6, 8, 6]);
    expect(splitsOf(must(parallelCopy(crossed, lineBetween(crossed, 0, 6, 8, 6), 1)))).toContainEqual([
      0, 7, 8, 7,
    ]);
    expect(splitsOf(must(parallelCopy(block, 'edge:p1', 1)))).toEqual([[0, 1, 8, 1]]);
  });

  it('is shorter between slanted edges, and as long as the original when held', () => {
    const triangle = must(equilateralTriangle(8));
    const [copy] = splitsOf(must(parallelCopy(triangle, 'edge:p2', Math.sqrt(3))));
    expect(copy![2] - copy![0]).toBeCloseTo(6, 5);
    const held = must(parallelCopy(tee, lineBetween(tee, 3, 4, 8, 4), 1, 'held'));
    expect(splitsOf(held)).toContainEqual([3, 5, 8, 5]);
    const loose = must(addSplit(block, { at: { x: 2, y: 2 } }, { at: { x: 5, y: 2 } }));
    expect(splitsOf(must(parallelCopy(loose, 's7', 1, 'held')))).toContainEqual([2, 3, 5, 3]);
    expect(splitsOf(must(parallelCopy(loose, 's7', 1)))).toContainEqual([0, 3, 8, 3]);
  });

  it('is refused on the line itself and outside the block', () => {
    expect(parallelCopy(tee, lineBetween(tee, 3, 4, 8, 4), 0).ok).toBe(false);
    expect(parallelCopy(block, 'edge:p1', -1).ok).toBe(false);
    expect(parallelCopy(tee, 's99', 1).ok).toBe(false);
  });
});

describe('lines that were worked out together', () => {
  const line = (x1: number, y1: number, x2: number, y2: number) => ({
    a: { x: x1, y: y1 },
    b: { x: x2, y: y2 },
  });

  it('are cut off at the edge, drawn once, and left out where a line is', () => {
    const drawing = must(
      addLines(tee, [line(-2, 2, 5, 2), line(4, 2, 10, 2), line(3, -1, 3, 12), line(1, 6, 3, 6)]),
    );
    expect(splitsOf(drawing)).toEqual([
      [3, 0, 3, 8],
      [0, 2, 8, 2],
      [3, 4, 8, 4],
      [1, 6, 3, 6],
    ]);
    expectSound(drawing);
  });

  it('know each other', () => {
    const drawing = must(addLines(block, [line(4, 2, 8, 2), line(4, 0, 4, 8)]));
    expect(drawing.points[pointAt(drawing, 4, 2)]!.on).toEqual([lineBetween(drawing, 4, 0, 4, 8)]);
  });

  it('are refused where nothing is left of them', () => {
    expect(addLines(tee, [line(3, 1, 3, 5), line(9, 9, 10, 10)])).toMatchObject({
      problem: { what: 'Nothing would be divided' },
    });
  });
});
