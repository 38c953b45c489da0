import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anywhere, drawings, must } from '../../test/drawings.ts';
import { at, Hand } from '../../test/gestures.ts';
import { expectSound } from '../../test/sound.ts';
import { square } from '../outlines.ts';
import { splitTool } from './split-tool.ts';
import type { ToolEvent } from './tool.ts';

const block = must(square(8));
const hand = () => new Hand(splitTool, block);

/** The two ways to draw the same line, step by step. */
const twoClicks = [
  at('move', 4, 0.1),
  at('down', 4, 0.1),
  at('up', 4, 0.1),
  at('move', 4, 5),
  at('down', 4, 7.9),
  at('up', 4, 7.9),
];
const oneDrag = [
  at('move', 4, 0.1),
  at('down', 4, 0.1),
  at('move', 4, 3),
  at('move', 4, 7.9),
  at('up', 4, 7.9),
];

describe('the split tool', () => {
  it.each([
    ['two clicks', twoClicks],
    ['press, drag, release', oneDrag],
    ['two presses of a key', [at('press', 4, 0), at('move', 4, 4), at('press', 4, 8)]],
  ])('draws a line by %s', (_, events) => {
    const h = hand();
    for (const event of events) h.send(event);
    expect(h.edits).toEqual(['Draw a line']);
    expect(h.state).toEqual({ kind: 'idle' });
    expect(h.drawing.points.p5).toEqual({ id: 'p5', x: 4, y: 0, on: ['edge:p1'] });
    expect(h.drawing.points.p6).toEqual({ id: 'p6', x: 4, y: 8, on: ['edge:p3'] });
    expectSound(h.drawing);
  });

  it('shows what catches, and the line to it', () => {
    const h = hand().click(0.1, 0.1).move(7.9, 4.1);
    expect(h.last.preview).toMatchObject({
      snap: { kind: 'middle', reason: 'middle of the edge' },
      line: { a: { x: 0, y: 0 }, b: { x: 8, y: 4 } },
    });
  });

  it('takes a trembling press for a press in one place', () => {
    const h = hand().down(4, 4).move(4.05, 4).up(4.05, 4.05);
    expect(h.state).toMatchObject({ kind: 'placing' });
    expect(h.edits).toEqual([]);
  });

  it('keeps the first end when drawn out and brought back', () => {
    const h = hand().down(0, 0).move(3, 3).up(0.1, 0.1);
    expect(h.state).toMatchObject({ kind: 'placing', start: { point: 'p1' } });
    h.click(8, 8);
    expect(h.edits).toEqual(['Draw a line']);
  });

  it.each([
    ['two clicks', twoClicks],
    ['press, drag, release', oneDrag],
  ])('called off or taken back at any step of %s, leaves the drawing as it was', (_, events) => {
    for (let steps = 0; steps < events.length; steps++) {
      const back = hand();
      for (const event of events.slice(0, steps)) back.send(event);
      back.send({ type: 'back' });
      expect(back.state).toEqual({ kind: 'idle' });

      const cancelled = hand();
      const states = [cancelled.state];
      for (const event of events.slice(0, steps)) states.push(cancelled.send(event).state);
      cancelled.send({ type: 'cancel' });
      // As if the press had not been: the state before it, which is idle or one end put down.
      const before = states.filter(({ kind }) => kind === 'idle' || kind === 'placing').at(-1);
      expect(cancelled.state).toEqual(before);
      for (const h of [back, cancelled]) {
        expect(h.edits).toEqual([]);
        expect(h.drawing).toBe(block);
      }
    }
  });

  it('leaves the first end down when the line is refused', () => {
    const h = hand().click(2, 0).click(6, 0);
    expect(h.problems[0]!.what).toMatch(/same line/);
    expect(h.state).toMatchObject({ kind: 'placing', start: { at: { x: 2, y: 0 } } });
    h.click(6, 8);
    expect(h.edits).toEqual(['Draw a line']);
  });

  it('is not disturbed by an undo between the two clicks', () => {
    const h = hand().drag(4, 0, 4, 8);
    h.click(4, 8);
    h.drawing = block;
    h.click(0, 4);
    expect(h.edits).toEqual(['Draw a line', 'Draw a line']);
    expectSound(h.drawing);
  });

  it('keeps the drawing sound whatever is done with it', () => {
    const event: fc.Arbitrary<ToolEvent> = fc.oneof(
      {
        weight: 8,
        arbitrary: fc
          .tuple(fc.constantFrom('down' as const, 'move' as const, 'up' as const, 'press' as const), anywhere)
          .map(([type, { x, y }]) => at(type, x, y)),
      },
      fc.constantFrom<ToolEvent>(
        { type: 'leave' },
        { type: 'cancel' },
        { type: 'back' },
        { type: 'finish' },
        { type: 'take' },
        { type: 'delete' },
      ),
    );
    fc.assert(
      fc.property(drawings, fc.array(event, { maxLength: 30, size: 'max' }), (drawing, events) => {
        const h = new Hand(splitTool, drawing);
        for (const e of events) h.send(e);
        expectSound(h.drawing);
      }),
      { seed: 121, numRuns: 100 },
    );
  });
});
