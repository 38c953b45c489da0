import { describe, expect, it } from 'vitest';
import { must } from '../../test/drawings.ts';
import { expectSound } from '../../test/sound.ts';
import { square } from '../outlines.ts';
import { addSplit } from './add-split.ts';
import { deletePoint } from './delete-point.ts';
import { deleteSplit } from './delete-split.ts';
import { movePoint } from './move-point.ts';
import { addCorner, removeCorner } from './outline-corners.ts';
import { replaceOutline } from './replace-outline.ts';
import { resizeDrawing } from './resize-drawing.ts';

const block = must(square(8));
const upright = must(
  addSplit(block, { at: { x: 4, y: 0 }, on: ['edge:p1'] }, { at: { x: 4, y: 8 }, on: ['edge:p3'] }),
);
const across = must(
  addSplit(upright, { at: { x: 4, y: 4 }, on: ['s7'] }, { at: { x: 8, y: 4 }, on: ['edge:p2'] }),
);

describe('addSplit', () => {
  it('makes new points with their facts, and numbers on', () => {
    expect(across.splits).toEqual([
      { id: 's7', from: 'p5', to: 'p6' },
      { id: 's10', from: 'p8', to: 'p9' },
    ]);
    expect(across.points.p8).toEqual({ id: 'p8', x: 4, y: 4, on: ['s7'] });
  });

  it('shares a point that was caught, or that is in the very place', () => {
    const caught = must(addSplit(across, { at: { x: 4, y: 4 }, point: 'p8' }, { at: { x: 0, y: 4 } }));
    const same = must(addSplit(across, { at: { x: 4, y: 4 } }, { at: { x: 0, y: 4 } }));
    expect(caught.splits.at(-1)).toMatchObject({ from: 'p8' });
    expect(same).toEqual(caught);
  });

  it('does not take over facts that the place contradicts, or of lines that are not there', () => {
    const drawing = must(
      addSplit(block, { at: { x: 4, y: 2 }, on: ['edge:p1', 's99'] }, { at: { x: 4, y: 6 } }),
    );
    expect(drawing.points.p5).toEqual({ id: 'p5', x: 4, y: 2 });
  });

  it.each([
    ['in one place', { at: { x: 4, y: 4 } }, { at: { x: 4.001, y: 4 } }, /one place/],
    [
      'on one edge',
      { at: { x: 1, y: 0 }, on: ['edge:p1'] },
      { at: { x: 0, y: 0 }, point: 'p1' },
      /same line/,
    ],
    [
      'the ends of a line',
      { at: { x: 4, y: 0 }, point: 'p5' },
      { at: { x: 4, y: 8 }, point: 'p6' },
      /same line/,
    ],
    ['not numbers', { at: { x: NaN, y: 4 } }, { at: { x: 4, y: 4 } }, /not a number/],
    ['far away', { at: { x: 1e9, y: 4 } }, { at: { x: 4, y: 4 } }, /too far/],
  ])('refuses ends that are %s', (_, start, end, what) => {
    const result = addSplit(upright, start, end);
    expect(result).toMatchObject({ ok: false, problem: { what: expect.stringMatching(what) } });
  });
});

describe('deleting', () => {
  it('a split takes its orphans along; what was on it keeps its place and loses the fact', () => {
    const drawing = must(deleteSplit(across, 's7'));
    expect(Object.keys(drawing.points)).toEqual(['p1', 'p2', 'p3', 'p4', 'p8', 'p9']);
    expect(drawing.points.p8).toEqual({ id: 'p8', x: 4, y: 4 });
    expectSound(drawing);
  });

  it('a point takes its splits along', () => {
    const drawing = must(deletePoint(across, 'p5'));
    expect(drawing.splits.map(({ id }) => id)).toEqual(['s10']);
    expectSound(drawing);
  });

  it('says so when there is nothing to delete', () => {
    expect(deleteSplit(across, 's99').ok).toBe(false);
    expect(deleteSplit(across, 'edge:p1').ok).toBe(false);
    expect(deletePoint(across, 'p99').ok).toBe(false);
  });
});

describe('corners', () => {
  it('a new one divides its edge; what was on the edge is on its half', () => {
    const drawing = must(addCorner(across, 'edge:p1', { x: 2, y: -0.3 }));
    expect(drawing.outline).toEqual(['p1', 'p11', 'p2', 'p3', 'p4']);
    expect(drawing.points.p11).toEqual({ id: 'p11', x: 2, y: 0 });
    expect(drawing.points.p5!.on).toEqual(['edge:p11']);
    expectSound(drawing);
  });

  it('a split that ends there lends its end', () => {
    const drawing = must(addCorner(across, 'edge:p1', { x: 4, y: 0 }));
    expect(drawing.outline).toEqual(['p1', 'p5', 'p2', 'p3', 'p4']);
    expect(drawing.points.p5!.on).toBeUndefined();
    expectSound(drawing);
  });

  it('taken out again, it leaves the drawing as it was', () => {
    const there = must(addCorner(across, 'edge:p1', { x: 2, y: 0 }));
    expect(must(removeCorner(there, 'p11'))).toEqual(across);
  });

  it('taken out, it stays as an end where splits need it', () => {
    const diagonal = must(
      addSplit(across, { at: { x: 0, y: 0 }, point: 'p1' }, { at: { x: 4, y: 4 }, point: 'p8' }),
    );
    const drawing = must(deletePoint(diagonal, 'p1'));
    expect(drawing.outline).toEqual(['p2', 'p3', 'p4']);
    expect(drawing.points.p1).toEqual({ id: 'p1', x: 0, y: 0 });
    expect(drawing.points.p5).toEqual({ id: 'p5', x: 4, y: 0 });
    expectSound(drawing);
  });

  it('are never fewer than three, nor taken from where they are not', () => {
    const three = must(removeCorner(block, 'p1'));
    expect(removeCorner(three, 'p2')).toMatchObject({
      problem: { what: expect.stringMatching(/three corners/) },
    });
    expect(removeCorner(across, 'p5').ok).toBe(false);
    expect(addCorner(block, 'edge:p1', { x: -3, y: 0 })).toMatchObject({ ok: false });
    expect(addCorner(block, 's7', { x: 3, y: 0 }).ok).toBe(false);
    expect(addCorner(block, 'edge:p1', { x: NaN, y: 0 }).ok).toBe(false);
  });
});

describe('replaceOutline', () => {
  const tall = [
    { x: 0, y: 0 },
    { x: 8, y: 0 },
    { x: 8, y: 12 },
    { x: 0, y: 12 },
  ];

  it('keeps the splits, and finds the edges again on which they end', () => {
    const drawing = must(replaceOutline(across, tall));
    expect(drawing.splits).toEqual(across.splits);
    expect(drawing.points.p5).toMatchObject({ x: 4, y: 0, on: [`edge:${drawing.outline[0]}`] });
    expect(drawing.points.p6).toEqual({ id: 'p6', x: 4, y: 8 });
    expect(drawing.points.p8).toEqual(across.points.p8);
    expectSound(drawing);
  });

  it('makes a corner of an end that lies there', () => {
    const drawing = must(
      replaceOutline(across, [
        { x: 4, y: 0 },
        { x: 8, y: 4 },
        { x: 4, y: 8 },
        { x: 0, y: 4 },
      ]),
    );
    expect(drawing.outline.slice(0, 3)).toEqual(['p5', 'p9', 'p6']);
    expectSound(drawing);
  });

  it('refuses an outline that is none', () => {
    expect(replaceOutline(across, tall.slice(0, 2)).ok).toBe(false);
  });
});

describe('a drawing from a file', () => {
  // A line shorter than what counts as one point, and a point that belongs to no line.
  const careless = {
    ...across,
    points: {
      ...across.points,
      a: { id: 'a', x: 1, y: 1 },
      b: { id: 'b', x: 1.001, y: 1 },
      c: { id: 'c', x: 2, y: 2 },
    },
    splits: [...across.splits, { id: 'l', from: 'a', to: 'b' }],
  };

  it('is open to every edit, whatever it holds', () => {
    const edits = [
      addSplit(careless, { at: { x: 0, y: 2 } }, { at: { x: 3, y: 3 } }),
      movePoint(careless, 'p5', { at: { x: 5, y: 0 }, on: ['edge:p1'] }),
      movePoint(careless, 'p1', { at: { x: 1, y: -1 } }),
      movePoint(careless, 'a', { at: { x: 3, y: 1 } }),
      deleteSplit(careless, 'l'),
      addCorner(careless, 'edge:p1', { x: 2, y: 0 }),
      removeCorner(careless, 'p1'),
      resizeDrawing(careless, { width: 16 }),
    ];
    expect(edits.filter(({ ok }) => !ok)).toEqual([]);
    expect(movePoint(careless, 'a', { at: { x: 1.0005, y: 1 } }).ok).toBe(false);
  });
});
