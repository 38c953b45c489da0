import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anywhere, drawings, must } from '../../test/drawings.ts';
import { at, Hand } from '../../test/gestures.ts';
import { expectSound } from '../../test/sound.ts';
import { addSplit } from '../edits/index.ts';
import { square } from '../outlines.ts';
import { adjustTool, chosenIn } from './adjust-tool.ts';
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

  it('keeps the drawing sound whatever is done with it', () => {
    const event: fc.Arbitrary<ToolEvent> = fc.oneof(
      {
        weight: 8,
        arbitrary: fc
          .tuple(fc.constantFrom('down' as const, 'move' as const, 'up' as const, 'press' as const), anywhere)
          .map(([type, { x, y }]) => ({ ...at(type, x, y), reach: 1 })),
      },
      fc.constantFrom<ToolEvent>({ type: 'cancel' }, { type: 'back' }, { type: 'take' }, { type: 'delete' }),
    );
    let edits = 0;
    fc.assert(
      fc.property(drawings, fc.array(event, { maxLength: 40, size: 'max' }), (drawing, events) => {
        const h = new Hand(adjustTool, drawing);
        for (const e of events) h.send(e);
        expectSound(h.drawing);
        edits += h.edits.length;
      }),
      { seed: 131, numRuns: 150 },
    );
    expect(edits).toBeGreaterThan(100);
  });
});
