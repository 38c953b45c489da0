import type { Patch } from '@seamwright/arrangement';
import { contains, type Polygon } from '@seamwright/geometry';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { roomUnder } from './note-room.ts';

const patch = (polygon: Polygon, holes: Patch['holes'] = []): Patch => ({
  ...{ index: 0, signature: '', ring: [], edges: [], border: [], area: 1, depth: 1 },
  ...{ polygon, holes, heart: { x: 0, y: 0 } },
});

/** A polygon round its heart, by how far its corners are from it. */
const round = (reaches: readonly number[]): Polygon =>
  reaches.map((reach, i) => {
    const angle = (2 * Math.PI * i) / reaches.length;
    return { x: reach * Math.cos(angle), y: reach * Math.sin(angle) };
  });

const anyPatch = fc
  .array(fc.double({ min: 0.5, max: 3, noNaN: true }), { minLength: 3, maxLength: 9 })
  .map((reaches) => patch(round(reaches)));
const anyTop = fc.double({ min: 0, max: 1, noNaN: true });

test('words as wide as the room lie in the patch, wherever the patch has its corners', () => {
  let roomy = 0;
  fc.assert(
    fc.property(anyPatch, anyTop, (one, top) => {
      const bottom = top + 0.2;
      const half = roomUnder(one, top, bottom) / 2;
      if (half === 0) return;
      roomy++;
      for (let i = 0; i <= 20; i++)
        for (const y of [top + 1e-6, top + 0.1, bottom - 1e-6])
          expect(contains(one.polygon, { x: (i / 10 - 1) * (half - 1e-6), y })).toBe('inside');
    }),
    { seed: 31, numRuns: 500 },
  );
  expect(roomy).toBeGreaterThan(100);
});

test('the room is all that there is', () => {
  const square: Polygon = [
    { x: -1, y: -1 },
    { x: 2, y: -1 },
    { x: 2, y: 1 },
    { x: -1, y: 1 },
  ];
  expect(roomUnder(patch(square), 0.2, 0.6)).toBe(2);
  expect(roomUnder(patch(square), 0.8, 1.2)).toBe(0);
  expect(roomUnder(patch(square, [[0, 1, 2]]), 0.2, 0.6)).toBe(0);
  // A triangle that stands on its tip: at half its height half its width is left.
  const tip: Polygon = [
    { x: -2, y: -1 },
    { x: 2, y: -1 },
    { x: 0, y: 1 },
  ];
  expect(roomUnder(patch(tip), -0.5, 0)).toBeCloseTo(2, 12);
});
