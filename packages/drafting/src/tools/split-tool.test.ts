import { distance } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anywhere, drawings, must } from '../../test/drawings.ts';
import { splitsOf, withLines } from '../../test/exact.ts';
import { at, Hand } from '../../test/gestures.ts';
import { expectSound } from '../../test/sound.ts';
import { square } from '../outlines.ts';
import { SNAP_KINDS } from '../snapping/snap.ts';
import { NO_SYMMETRY, type Symmetry } from '../symmetry/index.ts';
import { splitTool } from './split-tool.ts';
import type { Measure, ToolContext, ToolEvent } from './tool.ts';

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

  const context = (more: Omit<ToolContext, 'drawing' | 'grid'>, drawing = block) =>
    new Hand(splitTool, drawing, { grid: 0, ...more });

  it('draws a chain, each line from the end of the last, until it is told to stop', () => {
    for (const stop of ['press', 'back', 'finish'] as const) {
      const h = context({ chain: true }).click(0, 2).click(3, 3).click(5, 1).click(8, 2);
      if (stop === 'press') h.click(8, 2);
      else h.send({ type: stop });
      expect(h.state).toEqual({ kind: 'idle' });
      expect(h.problems).toEqual([]);
      expect(splitsOf(h.drawing)).toEqual([
        [5, 1, 8, 2],
        [5, 1, 3, 3],
        [0, 2, 3, 3],
      ]);
      // Three lines share their four ends.
      expect(Object.keys(h.drawing.points)).toHaveLength(8);
    }
  });

  it('lets ends run, and shows beforehand to where', () => {
    const h = context({ ends: 'run' }).click(0, 0).move(3, 2);
    expect(h.last.preview?.line).toEqual({ a: { x: 0, y: 0 }, b: { x: 3, y: 2 } });
    expect(h.last.preview?.drawn).toEqual([{ a: { x: 0, y: 0 }, b: { x: 8, y: expect.closeTo(16 / 3, 9) } }]);
    h.click(3, 2);
    expect(splitsOf(h.drawing)).toEqual([[0, 0, 8, 5.333333]]);
  });

  it('holds ends in a chain', () => {
    expect(splitsOf(context({ ends: 'run', chain: true }).click(0, 0).click(3, 2).drawing)).toEqual([
      [0, 0, 3, 2],
    ]);
  });

  it('repeats lines, and shows the images beforehand', () => {
    const h = context({ symmetry: { turns: 4, mirrors: [] } })
      .click(0, 2)
      .move(3, 2.5);
    expect(h.last.preview?.drawn).toHaveLength(4);
    h.click(3, 2.5);
    expect(h.drawing.splits).toHaveLength(4);
    expect(h.edits).toHaveLength(1);
  });

  it('keeps to a typed length, angle or both', () => {
    const long = context({ measure: { length: 5 }, ends: 'run' })
      .click(0, 0)
      .click(3, 4.3).drawing;
    const { from, to } = long.splits[0]!;
    expect(distance(long.points[from]!, long.points[to]!)).toBeCloseTo(5, 12);

    expect(
      splitsOf(
        context({ measure: { length: 5, angle: 0 } })
          .click(0, 2)
          .click(3, 7).drawing,
      ),
    ).toEqual([[0, 2, 5, 2]]);
    // At 45° from the left bottom, whatever the pointer does; up to a line that is near, else to the grid.
    expect(
      splitsOf(
        context({ measure: { angle: 45 } })
          .click(0, 8)
          .click(7.9, 0.1).drawing,
      ),
    ).toEqual([[8, 0, 0, 8]]);
    const onGrid = new Hand(splitTool, block, { grid: 1, measure: { angle: 30 } }).click(0, 4).move(3.1, 2.4);
    expect(onGrid.last.preview?.snap).toMatchObject({ reason: 'at the typed angle, at the grid' });
    expect(onGrid.last.preview?.line?.b.x).toBeCloseTo(3, 9);
    expect(
      context({ measure: { angle: 90 } })
        .click(4, 4)
        .move(1, 6).last.preview?.line?.b,
    ).toEqual({
      x: expect.closeTo(4, 12),
      y: 6,
    });
  });

  it('catches what makes the line parallel or square only where that is asked for', () => {
    const sloped = withLines(block, [0, 2, 8, 6]);
    const pointers = [at('press', 1, 5), at('move', 3.1, 6.1)];
    const plain = context({}, sloped);
    for (const event of pointers) plain.send({ ...event, exact: false } as ToolEvent);
    expect(plain.last.preview?.snap?.kind).toBe('free');
    const guided = context({ kinds: new Set(['parallel']) }, sloped);
    for (const event of pointers) guided.send({ ...event, exact: false } as ToolEvent);
    expect(guided.last.preview?.snap?.kind).toBe('parallel');
    guided.send({ ...at('move', 3.1, 6.1), exact: true } as ToolEvent);
    expect(guided.last.preview?.snap?.kind).toBe('free');
  });

  const contexts = fc.record({
    grid: fc.constantFrom(0, 0.5),
    chain: fc.boolean(),
    ends: fc.constantFrom('held' as const, 'run' as const),
    kinds: fc.constantFrom(new Set(SNAP_KINDS.map(({ kind }) => kind))),
    angleStep: fc.constantFrom(0, 15),
    symmetry: fc.constantFrom<Symmetry>(NO_SYMMETRY, { turns: 4, mirrors: [] }, { turns: 1, mirrors: [90] }),
    measure: fc.constantFrom<Measure>({}, {}, { length: 2 }, { angle: 30 }, { length: 3, angle: 45 }),
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
      fc.property(
        drawings,
        fc.array(event, { maxLength: 30, size: 'max' }),
        contexts,
        (drawing, events, options) => {
          const h = new Hand(splitTool, drawing, options);
          for (const e of events) h.send(e);
          expectSound(h.drawing);
        },
      ),
      { seed: 121, numRuns: 100 },
    );
  });
});
