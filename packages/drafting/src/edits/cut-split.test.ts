import { arrange } from '@seamwright/arrangement';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawings, must } from '../../test/drawings.ts';
import { lineBetween, pointAt, splitsOf, withLines } from '../../test/exact.ts';
import { expectSound } from '../../test/sound.ts';
import { square } from '../outlines.ts';
import { cutSplit, extendSplit, trimSplit } from './cut-split.ts';
import { joinableWith, joinSplits } from './join-splits.ts';

const block = must(square(8));
/** One level line crossed at 2 and 6; a short line ends on it at 4. */
const rail = withLines(block, [0, 4, 8, 4], [2, 0, 2, 8], [6, 0, 6, 8], [4, 4, 4, 6]);
const level = lineBetween(rail, 0, 4, 8, 4);

describe('trimming', () => {
  it('takes an end away up to the line that meets it first', () => {
    const drawing = must(trimSplit(rail, level, { x: 7, y: 4.2 }));
    expect(splitsOf(drawing)).toContainEqual([0, 4, 6, 4]);
    expect(drawing.points[pointAt(drawing, 6, 4)]!.on).toEqual([lineBetween(rail, 6, 0, 6, 8)]);
    // What lies on what is left still knows it.
    expect(drawing.points[pointAt(drawing, 4, 4)]!.on).toEqual([level]);
    expectSound(drawing);
  });

  it('makes two of a line that is trimmed in the middle', () => {
    const drawing = must(trimSplit(rail, level, { x: 3, y: 4 }));
    expect(splitsOf(drawing)).toEqual(
      expect.arrayContaining([
        [0, 4, 2, 4],
        [4, 4, 8, 4],
      ]),
    );
    expect(pointAt(drawing, 4, 4)).toBe(pointAt(rail, 4, 4));
    expectSound(drawing);
  });

  it('needs a line that meets it', () => {
    const alone = withLines(block, [0, 4, 8, 4]);
    expect(trimSplit(alone, 's7', { x: 1, y: 4 })).toMatchObject({
      problem: { remedy: expect.stringMatching(/Delete/) },
    });
    expect(trimSplit(rail, 'edge:p1', { x: 1, y: 4 }).ok).toBe(false);
    expect(trimSplit(rail, 's99', { x: 1, y: 4 }).ok).toBe(false);
  });
});

describe('cutting', () => {
  it('makes two of one, hands over what is on each', () => {
    const drawing = must(cutSplit(rail, level, { x: 2.2, y: 4 }));
    expect(splitsOf(drawing)).toEqual(
      expect.arrayContaining([
        [0, 4, 2, 4],
        [2, 4, 8, 4],
      ]),
    );
    expect(drawing.points[pointAt(drawing, 4, 4)]!.on).toEqual([lineBetween(drawing, 2, 4, 8, 4)]);
    expect(drawing.points[pointAt(drawing, 2, 4)]!.on).toEqual([lineBetween(rail, 2, 0, 2, 8)]);
    expectSound(drawing);
  });

  it('never changes the patches, and joining gives the line back', () => {
    let cuts = 0;
    fc.assert(
      fc.property(drawings, fc.nat(), (drawing, index) => {
        const split = drawing.splits[index % Math.max(1, drawing.splits.length)];
        fc.pre(split !== undefined);
        const [from, to] = [drawing.points[split.from]!, drawing.points[split.to]!];
        const cut = cutSplit(drawing, split.id, { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });
        fc.pre(cut.ok);
        const [before, after] = [arrange(drawing), arrange(cut.value)];
        // Where lines are as close as ends that snap, what is one place depends on what ends there.
        if (before.ok && after.ok && before.value.findings.length === 0)
          expect(after.value.patches.length).toBe(before.value.patches.length);
        const added = cut.value.splits.find(({ id }) => !drawing.splits.some((old) => old.id === id));
        // A piece that runs between the ends of another line is that line.
        if (added === undefined || cut.value.splits.every(({ id }) => id !== split.id)) return;
        cuts += 1;
        const joined = must(joinSplits(cut.value, split.id, added.id));
        expect(splitsOf(joined)).toEqual(splitsOf(drawing));
        expectSound(joined);
      }),
      { seed: 141, numRuns: 100 },
    );
    expect(cuts).toBeGreaterThan(30);
  });
});

describe('extending', () => {
  const short = withLines(block, [2, 0, 2, 8], [6, 0, 6, 8], [3, 4, 5, 4], [5, 4, 5, 8]);
  const dash = lineBetween(short, 3, 4, 5, 4);

  it('runs to the next line, or through to the edge', () => {
    expect(splitsOf(must(extendSplit(short, dash, 'to')))).toContainEqual([3, 4, 6, 4]);
    expect(splitsOf(must(extendSplit(short, dash, 'from')))).toContainEqual([2, 4, 5, 4]);
    expect(splitsOf(must(extendSplit(short, dash, 'from', 'edge')))).toContainEqual([0, 4, 5, 4]);
  });

  it('leaves other lines where they end, on itself', () => {
    const drawing = must(extendSplit(short, dash, 'to'));
    expect(drawing.points[pointAt(drawing, 5, 4)]!.on).toEqual([dash]);
    expect(splitsOf(drawing)).toContainEqual([5, 4, 5, 8]);
    expectSound(drawing);
  });

  it('needs something to run to', () => {
    expect(extendSplit(short, lineBetween(short, 2, 0, 2, 8), 'to').ok).toBe(false);
  });
});

describe('joining', () => {
  const two = withLines(block, [0, 4, 4, 4], [4, 4, 8, 4], [4, 4, 4, 8]);

  it('makes one line; what ended between is on it', () => {
    const drawing = must(joinSplits(two, lineBetween(two, 0, 4, 4, 4), lineBetween(two, 4, 4, 8, 4)));
    expect(splitsOf(drawing)).toEqual([
      [0, 4, 8, 4],
      [4, 4, 4, 8],
    ]);
    expect(drawing.points[pointAt(drawing, 4, 4)]!.on).toEqual([lineBetween(drawing, 0, 4, 8, 4)]);
    expectSound(drawing);
  });

  it('straightens what is not quite straight', () => {
    const bent = withLines(block, [0, 4, 4, 4.005], [4, 4.005, 8, 4], [4, 4.005, 4, 8]);
    const [one, other] = bent.splits;
    const drawing = must(joinSplits(bent, one!.id, other!.id));
    expect(splitsOf(drawing)).toEqual([
      [0, 4, 8, 4],
      [4, 4, 4, 8],
    ]);
    expectSound(drawing);
  });

  it('is offered for the lines with which it goes', () => {
    const [one, other, down] = [
      lineBetween(two, 0, 4, 4, 4),
      lineBetween(two, 4, 4, 8, 4),
      lineBetween(two, 4, 4, 4, 8),
    ];
    expect(joinableWith(two, one)).toEqual([other]);
    expect(joinableWith(two, other)).toEqual([one]);
    expect(joinableWith(two, down)).toEqual([]);
    expect(joinableWith(two, 'edge:p1')).toEqual([]);
  });

  it('refuses lines that are bent, apart or the same', () => {
    const bent = withLines(block, [0, 4, 4, 4.5], [4, 4.5, 8, 4]);
    expect(joinSplits(bent, bent.splits[0]!.id, bent.splits[1]!.id)).toMatchObject({
      problem: { what: expect.stringMatching(/straight/) },
    });
    const apart = withLines(block, [0, 4, 3, 4], [5, 4, 8, 4]);
    expect(joinSplits(apart, apart.splits[0]!.id, apart.splits[1]!.id)).toMatchObject({
      problem: { what: expect.stringMatching(/reach/) },
    });
    expect(joinSplits(two, 's7', 's7').ok).toBe(false);
    expect(joinSplits(two, 's7', 'edge:p1').ok).toBe(false);
  });
});
