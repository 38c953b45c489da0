import { describe, expect, it } from 'vitest';
import { must } from '../../test/drawings.ts';
import { Hand } from '../../test/gestures.ts';
import { expectSound } from '../../test/sound.ts';
import { regularHexagon, square } from '../outlines.ts';
import { inReadingOrder } from '../snapping/snap.ts';
import { snapScene } from '../snapping/snap-scene.ts';
import { type CrosshairMove, FINE_STEP, moveCrosshair } from './crosshair.ts';
import { splitTool } from './split-tool.ts';

const block = must(square(6));
const context = {
  scene: snapScene(block),
  grid: 0.5,
  fine: FINE_STEP,
  within: { minX: -1, minY: -1, maxX: 7, maxY: 7 },
};
const step = (toward: 'left' | 'right' | 'up' | 'down', fine = false): CrosshairMove => ({
  kind: 'step',
  toward,
  fine,
});

describe('the crosshair', () => {
  it('steps over the grid, from between its lines too', () => {
    expect(moveCrosshair({ x: 1, y: 1 }, step('right'), context)).toEqual({ x: 1.5, y: 1 });
    expect(moveCrosshair({ x: 1, y: 1 }, step('up'), context)).toEqual({ x: 1, y: 0.5 });
    expect(moveCrosshair({ x: 1.3, y: 1 }, step('left'), context)).toEqual({ x: 1, y: 1 });
    expect(moveCrosshair({ x: 1.3, y: 1 }, step('right'), context)).toEqual({ x: 1.5, y: 1 });
    expect(moveCrosshair({ x: 1, y: 0.3 }, step('up'), context)).toEqual({ x: 1, y: 0 });
  });

  it('moves finely, and not out of reach', () => {
    expect(moveCrosshair({ x: 1, y: 1 }, step('down', true), context)).toEqual({ x: 1, y: 1 + 1 / 32 });
    expect(moveCrosshair({ x: 6.9, y: 1 }, step('right'), context)).toEqual({ x: 7, y: 1 });
    expect(moveCrosshair({ x: -1, y: 1 }, step('left', true), context)).toEqual({ x: -1, y: 1 });
  });

  it('visits every place that can be caught, both ways, and ends', () => {
    const scene = snapScene(must(regularHexagon(3)));
    const places = inReadingOrder(scene.places).map(({ at }) => at);
    const visit = (toward: 'next' | 'previous', start: { x: number; y: number }) => {
      const seen = [];
      let at: { x: number; y: number } | null = start;
      while (at !== null) {
        at = moveCrosshair(at, { kind: 'place', toward }, { ...context, scene });
        if (at !== null) seen.push(at);
      }
      return seen;
    };
    expect(visit('next', { x: -1, y: -1 })).toEqual(places);
    expect(visit('previous', { x: 99, y: 99 })).toEqual([...places].reverse());
    expect(visit('next', places[3]!)).toEqual(places.slice(4));
  });

  it('draws a line without a pointer', () => {
    const hand = new Hand(splitTool, block);
    let at = { x: 3, y: 3 };
    const go = (toward: 'left' | 'right' | 'up' | 'down', times: number) => {
      for (let i = 0; i < times; i++) at = moveCrosshair(at, step(toward), context)!;
      hand.move(at.x, at.y);
    };
    go('up', 6);
    hand.press(at.x, at.y);
    go('down', 12);
    hand.press(at.x, at.y);
    expect(hand.drawing.points.p5).toEqual({ id: 'p5', x: 3, y: 0, on: ['edge:p1'] });
    expect(hand.drawing.points.p6).toEqual({ id: 'p6', x: 3, y: 6, on: ['edge:p3'] });
    expectSound(hand.drawing);
  });
});
