import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anywhere, drawings, must } from '../../test/drawings.ts';
import { at, Hand } from '../../test/gestures.ts';
import { expectSound } from '../../test/sound.ts';
import { outlineOf } from '../checks.ts';
import { square } from '../outlines.ts';
import { outlineTool } from './outline-tool.ts';
import type { ToolEvent } from './tool.ts';

const block = must(square(8));
const hand = () => new Hand(outlineTool, block, { grid: 1 });
const house = [
  [0, 4],
  [4, 0],
  [8, 4],
  [8, 10],
  [0, 10],
] as const;
const corners = house.map(([x, y]) => ({ x, y }));

function withCorners(count: number) {
  const h = hand();
  for (const [x, y] of house.slice(0, count)) h.click(x, y);
  return h;
}

describe('the outline tool', () => {
  it.each([
    ['the first corner again', (h: ReturnType<typeof hand>) => h.click(0.1, 4.1)],
    ['the last corner again', (h: ReturnType<typeof hand>) => h.click(0, 10)],
    ['finish', (h: ReturnType<typeof hand>) => h.send({ type: 'finish' })],
    ['a key on the first corner', (h: ReturnType<typeof hand>) => h.press(0, 4)],
  ])('closes by %s', (_, close) => {
    const h = close(withCorners(5));
    expect(h.edits).toEqual(['Draw an outline']);
    expect(outlineOf(h.drawing)).toMatchObject(corners);
    expect(h.state).toEqual({ kind: 'idle' });
    expectSound(h.drawing);
  });

  it('goes back corner by corner', () => {
    const h = withCorners(3);
    for (const left of [2, 1])
      expect(h.send({ type: 'back' }).state).toMatchObject({ corners: corners.slice(0, left) });
    expect(h.send({ type: 'back' }).state).toEqual({ kind: 'idle' });
    expect(h.send({ type: 'back' }).state).toEqual({ kind: 'idle' });
    expect(h.drawing).toBe(block);
  });

  it('called off during any press, keeps the corners that were there before it', () => {
    for (let count = 0; count <= 5; count++) {
      const h = withCorners(count);
      const before = h.state;
      h.move(3, 7).down(3, 7).send({ type: 'cancel' });
      expect(h.state).toEqual(before);
      h.down(3, 7).send({ type: 'back' });
      expect(h.state).toEqual(before);
      expect(h.edits).toEqual([]);
    }
  });

  it('says why an outline cannot be, and lets the maker mend it', () => {
    const crossing = hand().click(0, 0).click(8, 8).click(8, 0).click(0, 8).send({ type: 'finish' });
    expect(crossing.problems[0]!.what).toMatch(/crosses itself/);
    crossing.send({ type: 'back' }).send({ type: 'finish' });
    expect(crossing.edits).toEqual(['Draw an outline']);

    expect(withCorners(2).send({ type: 'finish' }).problems[0]!.what).toMatch(/fewer than three corners/);
    expect(withCorners(4).click(4, 0).problems[0]!.what).toMatch(/corner of this outline already/);
    expect(withCorners(2).click(4, 0).state).toMatchObject({ corners: corners.slice(0, 2) });
    expect(hand().send({ type: 'finish' }).edits).toEqual([]);
  });

  it('shows that the first corner closes', () => {
    expect(withCorners(4).move(0.1, 4.1).last.preview).toMatchObject({
      snap: { reason: 'closes the outline', at: { x: 0, y: 4 } },
      corners: corners.slice(0, 4),
    });
  });

  it('keeps the drawing sound whatever is done with it', () => {
    const event: fc.Arbitrary<ToolEvent> = fc.oneof(
      {
        weight: 8,
        arbitrary: fc
          .tuple(fc.constantFrom('down' as const, 'move' as const, 'up' as const, 'press' as const), anywhere)
          .map(([type, { x, y }]) => at(type, x, y)),
      },
      fc.constantFrom<ToolEvent>({ type: 'cancel' }, { type: 'back' }, { type: 'finish' }, { type: 'leave' }),
    );
    let edits = 0;
    fc.assert(
      fc.property(drawings, fc.array(event, { maxLength: 40, size: 'max' }), (drawing, events) => {
        const h = new Hand(outlineTool, drawing, { grid: 0.5 });
        for (const e of events) h.send(e);
        expectSound(h.drawing);
        edits += h.edits.length;
      }),
      { seed: 141, numRuns: 200 },
    );
    expect(edits).toBeGreaterThan(20);
  });
});
