import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anywhere, drawings, must } from '../../test/drawings.ts';
import { lineBetween, splitsOf, withLines } from '../../test/exact.ts';
import { at, Hand } from '../../test/gestures.ts';
import { expectSound } from '../../test/sound.ts';
import { addSplit } from '../edits/index.ts';
import { square } from '../outlines.ts';
import { NO_SYMMETRY, type Symmetry } from '../symmetry/index.ts';
import { adjustTool, chosenIn, partsIn } from './adjust-tool.ts';
import type { ToolEvent } from './tool.ts';

const block = must(
  addSplit(must(square(8)), { at: { x: 4, y: 0 }, on: ['edge:p1'] }, { at: { x: 4, y: 8 }, on: ['edge:p3'] }),
);
const hand = () => new Hand(adjustTool, block);

describe('the adjust tool', () => {
  it('chooses points before lines, and nothing beside them', () => {
    expect(chosenIn(hand().click(4.1, 0.1).state)).toEqual({ kind: 'point', id: 'p5' });
    expect(chosenIn(hand().click(4.1, 3).state)).toEqual({ kind: 'line', id: 's7' });
    expect(chosenIn(hand().click(0.1, 3).state)).toEqual({ kind: 'line', id: 'edge:p4' });
    expect(chosenIn(hand().click(4, 3).click(2, 3).state)).toBeUndefined();
  });

  it('says what a press would choose', () => {
    expect(hand().move(4.1, 0.1).last.preview?.over).toEqual({ kind: 'point', id: 'p5' });
    expect(hand().move(2, 2).last.preview).toBeUndefined();
  });

  it('drags an end along the edge that it is caught by', () => {
    const h = hand().move(4, 0).down(4, 0).move(5, 0.1);
    expect(h.last.preview).toMatchObject({
      snap: { kind: 'edge' },
      drawing: { points: { p5: { x: 5, y: 0 } } },
    });
    expect(h.drawing).toBe(block);
    h.up(6, 0.1);
    expect(h.edits).toEqual(['Move a point']);
    expect(h.drawing.points.p5).toEqual({ id: 'p5', x: 6, y: 0, on: ['edge:p1'] });
    expect(chosenIn(h.state)).toEqual({ kind: 'point', id: 'p5' });
  });

  it('drags a corner, with what lies on its edges', () => {
    const h = hand().drag(0, 0, 0, -2);
    expect(h.edits).toEqual(['Move a corner']);
    expect(h.drawing.points.p5).toMatchObject({ x: 4, y: -1 });
    expectSound(h.drawing);
  });

  it('chooses the other point when one was made of two', () => {
    const h = hand().drag(4, 0, 8, 0);
    expect(chosenIn(h.state)).toEqual({ kind: 'point', id: 'p2' });
    expect(h.drawing.splits).toEqual([{ id: 's7', from: 'p2', to: 'p6' }]);
  });

  it('says why when a corner cannot be put there, and leaves it where it was', () => {
    const h = hand().move(0, 0).down(0, 0).move(9, 4).up(9, 4);
    expect(h.problems.at(-1)!.what).toMatch(/crosses itself/);
    expect(h.edits).toEqual([]);
    expect(h.state).toMatchObject({ kind: 'idle' });
  });

  const dragging = [at('move', 4, 0), at('down', 4, 0), at('move', 5, 1), at('move', 6, 2), at('up', 6, 2)];
  const carrying = [at('press', 4, 0), at('move', 5, 1), at('down', 6, 2), at('move', 6, 2), at('up', 6, 2)];

  it.each([
    ['dragging', dragging],
    ['carrying', carrying],
  ])('moves the point by %s; called off or taken back at any step, it is where it was', (_, events) => {
    const whole = hand();
    for (const event of events) whole.send(event);
    expect(whole.edits).toEqual(['Move a point']);
    expect(whole.drawing.points.p5).toEqual({ id: 'p5', x: 6, y: 2 });

    for (const ending of ['cancel', 'back'] as const) {
      for (let steps = 0; steps < events.length; steps++) {
        const h = hand();
        for (const event of events.slice(0, steps)) h.send(event);
        h.send({ type: ending });
        expect(['idle', 'carrying']).toContain(h.state.kind);
        if (ending === 'back') expect(h.state.kind).toBe('idle');
        expect(h.edits).toEqual([]);
        expect(h.drawing).toBe(block);
        if (h.state.kind === 'idle') expect(h.last.preview?.drawing).toBeUndefined();
      }
    }
  });

  it('takes the chosen point in hand', () => {
    const h = hand().click(4, 8).send({ type: 'take' }).move(2, 8);
    expect(h.state.kind).toBe('carrying');
    h.click(2, 8.1);
    expect(h.drawing.points.p6).toMatchObject({ x: 2, y: 8, on: ['edge:p3'] });
  });

  it('lets go when the drawing is changed from elsewhere', () => {
    const h = hand().move(4, 0).down(4, 0).move(5, 1);
    h.drawing = must(square(8));
    h.move(6, 1);
    expect(h.state.kind).toBe('idle');
    expect(h.up(6, 1).edits).toEqual([]);
  });

  it('deletes what is chosen', () => {
    expect(hand().click(4, 3).send({ type: 'delete' }).drawing.splits).toEqual([]);
    expect(hand().click(4, 0).send({ type: 'delete' }).edits).toEqual(['Delete a point']);
    expect(hand().click(0, 0).send({ type: 'delete' }).drawing.outline).toEqual(['p2', 'p3', 'p4']);
    expect(hand().send({ type: 'delete' }).edits).toEqual([]);
    const edge = hand().click(0, 3).send({ type: 'delete' });
    expect(edge.problems[0]!.what).toMatch(/edge of the outline cannot be deleted/);
    expect(chosenIn(edge.state)).toEqual({ kind: 'line', id: 'edge:p4' });
  });

  it('drags a line parallel to itself, through what catches it', () => {
    const h = hand().move(4, 3).down(4, 3).move(5, 3);
    expect(h.last.preview).toMatchObject({ drawing: { points: { p5: { x: 5, y: 0 } } } });
    h.up(5.3, 2);
    expect(h.edits).toEqual(['Move a line']);
    expect(splitsOf(h.drawing)).toEqual([[5.3, 0, 5.3, 8]]);
    expect(chosenIn(h.state)).toEqual({ kind: 'line', id: 's7' });
    const onGrid = new Hand(adjustTool, block, { grid: 1 }).drag(4, 3, 5.3, 2.2);
    expect(splitsOf(onGrid.drawing)).toEqual([[5, 0, 5, 8]]);
    expect(hand().drag(8, 3, 10, 3).edits).toEqual(['Move an edge']);
    expect(hand().down(4, 3).move(20, 3).up(20, 3).problems).not.toEqual([]);
  });

  it('takes a chosen line in hand', () => {
    const h = hand().click(4, 3).send({ type: 'take' }).move(3, 4).click(3, 4);
    expect(splitsOf(h.drawing)).toEqual([[3, 0, 3, 8]]);
  });

  const tri = withLines(block, [1, 2, 3, 2], [1, 2, 1, 4], [4, 6, 8, 6]);
  const framing = () => new Hand(adjustTool, tri, { grid: 0, frames: true });

  it('chooses several with a frame, and one by one', () => {
    const h = framing().move(0.5, 1).down(0.5, 1).move(2, 3);
    expect(h.last.preview?.frame).toEqual({ minX: 0.5, minY: 1, maxX: 2, maxY: 3 });
    h.up(3.5, 5);
    const two = [lineBetween(tri, 1, 2, 3, 2), lineBetween(tri, 1, 2, 1, 4)];
    expect(partsIn(h.state)).toEqual({ points: [], lines: two });
    expect(chosenIn(h.state)).toBeUndefined();
    const add = (x: number, y: number) => {
      for (const type of ['down', 'up'] as const) h.send({ ...at(type, x, y), adds: true } as ToolEvent);
    };
    add(6, 6);
    expect(partsIn(h.state).lines).toHaveLength(3);
    add(2, 2);
    add(6, 6);
    expect(chosenIn(h.state)).toEqual({ kind: 'line', id: two[1] });
    h.click(7, 7);
    expect(partsIn(h.state)).toEqual({ points: [], lines: [] });
  });

  it('moves several together, by a drag or by so much, and deletes them', () => {
    const chosen = () => framing().drag(0.5, 1, 3.5, 5);
    const moved = chosen().drag(2, 2, 2.5, 2.3);
    expect(moved.edits).toEqual(['Move several parts']);
    expect(splitsOf(moved.drawing)).toEqual(
      [
        [1.5, 2.3, 3.5, 2.3],
        [1.5, 2.3, 1.5, 4.3],
        [4, 0, 4, 8],
        [4, 6, 8, 6],
      ].sort((p, q) => p[1]! - q[1]! || p[0]! - q[0]!),
    );
    expectSound(moved.drawing);
    const nudged = chosen().send({ type: 'nudge', by: { x: 0, y: 1 / 32 } });
    expect(splitsOf(nudged.drawing)).toContainEqual([1, 2.03125, 3, 2.03125]);
    expect(chosen().send({ type: 'delete' }).drawing.splits).toHaveLength(2);
    expect(chosen().send({ type: 'take' }).state.kind).toBe('carrying');
  });

  it('nudges a line parallel to itself, its ends on what they are on', () => {
    const slanted = () => new Hand(adjustTool, withLines(block, [0, 4, 4, 8]), { grid: 0 }).click(1, 5);
    const right = slanted().send({ type: 'nudge', by: { x: -1, y: 0 } });
    expect(right.edits).toEqual(['Move a line']);
    expect(splitsOf(right.drawing)).toContainEqual([0, 5, 3, 8]);
    expectSound(right.drawing);
    const along = slanted().send({ type: 'nudge', by: { x: 1, y: 1 } });
    expect(along.edits).toEqual([]);
    expect(along.problems[0]!.what).toBe('The line would only slide along itself');
  });

  it('frames nothing where the screen cannot show it', () => {
    const h = new Hand(adjustTool, tri).click(6, 6).drag(0.5, 1, 3.5, 5);
    expect(chosenIn(h.state)).toEqual({ kind: 'line', id: lineBetween(tri, 4, 6, 8, 6) });
  });

  it('calls a frame off, or takes it back, with what was chosen before', () => {
    for (const ending of ['cancel', 'back'] as const) {
      const h = framing().click(6, 6).down(0.5, 1).move(3, 3).send({ type: ending });
      expect(h.state.kind).toBe('idle');
      expect(chosenIn(h.state)).toEqual({ kind: 'line', id: lineBetween(tri, 4, 6, 8, 6) });
    }
  });

  it('moves and deletes the images, too, where things are repeated', () => {
    const pair = withLines(must(square(8)), [2, 0, 2, 8], [6, 0, 6, 8]);
    const mirrored = () => new Hand(adjustTool, pair, { grid: 0, symmetry: { turns: 1, mirrors: [90] } });
    expect(splitsOf(mirrored().drag(2, 3, 1, 3).drawing)).toEqual([
      [1, 0, 1, 8],
      [7, 0, 7, 8],
    ]);
    expect(splitsOf(mirrored().drag(2, 0, 1, 0).drawing)).toEqual([
      [1, 0, 2, 8],
      [7, 0, 6, 8],
    ]);
    expect(mirrored().click(2, 3).send({ type: 'delete' }).drawing.splits).toEqual([]);
  });

  it('keeps the drawing sound whatever is done with it', () => {
    const event: fc.Arbitrary<ToolEvent> = fc.oneof(
      {
        weight: 8,
        arbitrary: fc
          .tuple(
            fc.constantFrom('down' as const, 'move' as const, 'up' as const, 'press' as const),
            anywhere,
            fc.boolean(),
          )

          .map(([type, { x, y }, adds]) => ({ ...at(type, x, y), reach: 1, adds })),
      },
      fc.constantFrom<ToolEvent>(
        { type: 'cancel' },
        { type: 'back' },
        { type: 'take' },
        { type: 'delete' },
        { type: 'nudge', by: { x: 0.25, y: 0 } },
      ),
    );
    const symmetry = fc.constantFrom<Symmetry>(
      NO_SYMMETRY,
      { turns: 2, mirrors: [] },
      { turns: 1, mirrors: [90] },
    );
    let edits = 0;
    fc.assert(
      fc.property(
        drawings,
        fc.array(event, { maxLength: 40, size: 'max' }),
        symmetry,
        (drawing, events, how) => {
          const h = new Hand(adjustTool, drawing, { grid: 0, frames: true, symmetry: how });
          for (const e of events) h.send(e);
          expectSound(h.drawing);
          edits += h.edits.length;
        },
      ),
      { seed: 131, numRuns: 150 },
    );
    expect(edits).toBeGreaterThan(100);
  });
});
