import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fit, fitClear, pan, toBlock, toScreen, turnedOver, zoomAt } from './view.ts';

const BOX = { minX: 0, minY: 0, maxX: 8, maxY: 10 };
const SIZE = { width: 640, height: 480 };
const FIT = fit(BOX, SIZE, 20);

test('fitting shows the whole box, centred, and touches the margin on the tighter side', () => {
  expect(toScreen(FIT, { x: 0, y: 0 }).y).toBeCloseTo(20);
  expect(toScreen(FIT, { x: 8, y: 10 }).y).toBeCloseTo(460);
  expect(toScreen(FIT, { x: 4, y: 5 })).toEqual({ x: 320, y: 240 });
});

const coordinate = fc.double({ min: -50, max: 700, noNaN: true });
const place = fc.record({ x: coordinate, y: coordinate });

test('zooming keeps the point under the pointer where it is', () => {
  fc.assert(
    fc.property(place, fc.double({ min: 0.05, max: 20, noNaN: true }), (at, factor) => {
      const before = toBlock(FIT, at);
      const after = toBlock(zoomAt(FIT, at, factor, FIT), at);
      expect(after.x).toBeCloseTo(before.x, 6);
      expect(after.y).toBeCloseTo(before.y, 6);
    }),
    { seed: 1 },
  );
});

test('screen and block coordinates are each other’s inverse', () => {
  fc.assert(
    fc.property(place, coordinate, coordinate, (at, dx, dy) => {
      const view = pan(FIT, dx, dy);
      const round = toScreen(view, toBlock(view, at));
      expect(round.x).toBeCloseTo(at.x, 6);
      expect(round.y).toBeCloseTo(at.y, 6);
    }),
    { seed: 2 },
  );
});

test('zooming stops at its limits and can be undone from there', () => {
  let view = FIT;
  for (let i = 0; i < 100; i++) view = zoomAt(view, { x: 1, y: 1 }, 2, FIT);
  expect(view.scale).toBeCloseTo(FIT.scale * 60);
  for (let i = 0; i < 100; i++) view = zoomAt(view, { x: 1, y: 1 }, 0.5, FIT);
  expect(view.scale).toBeCloseTo(FIT.scale / 4);
});

test('a block that would lie under the corner’s buttons is fitted above them', () => {
  const corner = { width: 150, height: 60 };
  const narrow = { width: 400, height: 420 };
  const view = fitClear(BOX, narrow, 20, corner);
  expect(toScreen(view, { x: 8, y: 10 }).y).toBeLessThanOrEqual(360);
  const wide = { width: 900, height: 480 };
  expect(fitClear(BOX, wide, 20, corner)).toEqual(fit(BOX, wide, 20));
});

test('turned over, the block is its mirror image about the middle of the canvas, and back again the same', () => {
  fc.assert(
    fc.property(place, place, (at, screen) => {
      const over = turnedOver(FIT, SIZE);
      expect(toScreen(over, at).x).toBeCloseTo(SIZE.width - toScreen(FIT, at).x, 6);
      expect(toScreen(over, at).y).toBeCloseTo(toScreen(FIT, at).y, 6);
      const back = toScreen(over, toBlock(over, screen as never));
      expect(back.x).toBeCloseTo(screen.x, 6);
      expect(back.y).toBeCloseTo(screen.y, 6);
      expect(turnedOver(over, SIZE)).toEqual(FIT);
    }),
    { seed: 3 },
  );
});
