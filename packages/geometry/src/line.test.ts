import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { point, share } from '../test/arbitraries.ts';
import {
  distanceToLine,
  distanceToSegment,
  isOnSegment,
  lineCrossing,
  nearestOnSegment,
  parameterOn,
  pointAt,
  segmentCrossing,
} from './line.ts';
import type { Point } from './point.ts';
import { distance } from './vector.ts';

const a = { x: 1, y: 1 };
const b = { x: 5, y: 4 };
/** Whole coordinates: collinear and touching cases come by themselves. */
const gridPoint = fc.record({ x: fc.integer({ min: 0, max: 4 }), y: fc.integer({ min: 0, max: 4 }) });

describe('places on a line', () => {
  test('parameterOn is 0 at a, 1 at b, and counts beyond', () => {
    expect(parameterOn(a, b, a)).toBe(0);
    expect(parameterOn(a, b, b)).toBe(1);
    expect(parameterOn(a, b, { x: 9, y: 7 })).toBe(2);
    expect(parameterOn(a, b, { x: 1 - 3, y: 1 + 4 })).toBe(0);
    expect(parameterOn(a, a, b)).toBe(0);
  });

  test('pointAt undoes parameterOn for points of the line', () => {
    fc.assert(
      fc.property(point, point, share, (p, q, t) => {
        fc.pre(distance(p, q) > 1e-3);
        expect(parameterOn(p, q, pointAt(p, q, t))).toBeCloseTo(t, 9);
      }),
      { seed: 3, numRuns: 500 },
    );
  });

  test('distances from the line and from the segment differ beyond its ends', () => {
    const [left, right] = [
      { x: 0, y: 0 },
      { x: 4, y: 0 },
    ];
    expect(distanceToLine({ x: 7, y: 4 }, left, right)).toBe(4);
    expect(distanceToSegment({ x: 7, y: 4 }, left, right)).toBe(5);
    expect(distanceToSegment({ x: 2, y: -1 }, left, right)).toBe(1);
    expect(nearestOnSegment({ x: 7, y: 4 }, left, right)).toEqual(right);
    expect(distanceToLine({ x: 3, y: 4 }, left, left)).toBe(5);
    expect(distanceToSegment({ x: 3, y: 4 }, left, left)).toBe(5);
  });

  test('no sampled point of a segment is nearer than nearestOnSegment', () => {
    fc.assert(
      fc.property(point, point, point, (p, q, r) => {
        const least = distanceToSegment(p, q, r);
        for (let k = 0; k <= 20; k++)
          expect(distance(p, pointAt(q, r, k / 20))).toBeGreaterThan(least - 1e-9);
      }),
      { seed: 4, numRuns: 300 },
    );
  });
});

describe('lineCrossing', () => {
  test('finds crossings beyond the ends', () => {
    expect(lineCrossing({ x: 0, y: 0 }, { x: 1, y: 1 }, { x: 10, y: 0 }, { x: 10, y: 1 })).toEqual({
      x: 10,
      y: 10,
    });
  });

  test('is null for parallel and for degenerate lines', () => {
    expect(lineCrossing({ x: 0, y: 0 }, { x: 1, y: 2 }, { x: 5, y: 0 }, { x: 6, y: 2 })).toBeNull();
    expect(lineCrossing({ x: 0, y: 0 }, { x: 1, y: 2 }, { x: 2, y: 4 }, { x: 3, y: 6 })).toBeNull();
    expect(lineCrossing(a, a, { x: 0, y: 0 }, b)).toBeNull();
  });

  test('lies on both lines', () => {
    fc.assert(
      fc.property(point, point, point, point, (p, q, r, s) => {
        const at = lineCrossing(p, q, r, s);
        fc.pre(at !== null && distance(p, q) > 0.1 && distance(r, s) > 0.1 && distance(at, p) < 1000);
        expect(distanceToLine(at!, p, q)).toBeLessThan(1e-6);
        expect(distanceToLine(at!, r, s)).toBeLessThan(1e-6);
      }),
      { seed: 5, numRuns: 500 },
    );
  });
});

describe('segmentCrossing', () => {
  const [west, east] = [
    { x: 0, y: 2 },
    { x: 4, y: 2 },
  ];

  test('a proper crossing', () => {
    expect(segmentCrossing(west, east, { x: 1, y: 0 }, { x: 1, y: 8 })).toEqual({
      at: { x: 1, y: 2 },
      t: 0.25,
      u: 0.25,
    });
  });

  // T-junctions are the normal case of a drawing: each end touching each place, in both orders.
  test.each([
    ['the start', west, 0],
    ['the middle', { x: 2, y: 2 }, 0.5],
    ['the end', east, 1],
  ])('an end that touches at %s', (_, place, t) => {
    const tip = { x: 3, y: 7 };
    expect(segmentCrossing(west, east, place, tip)).toEqual({ at: place, t, u: 0 });
    expect(segmentCrossing(west, east, tip, place)).toEqual({ at: place, t, u: 1 });
    expect(segmentCrossing(place, tip, west, east)).toEqual({ at: place, t: 0, u: t });
    expect(segmentCrossing(tip, place, west, east)).toEqual({ at: place, t: 1, u: t });
  });

  test('segments of one line meet only when end touches end', () => {
    expect(segmentCrossing(west, east, east, { x: 9, y: 2 })).toEqual({ at: east, t: 1, u: 0 });
    expect(segmentCrossing(west, east, { x: -3, y: 2 }, west)).toEqual({ at: west, t: 0, u: 1 });
    expect(segmentCrossing(west, east, { x: 3, y: 2 }, { x: 9, y: 2 })).toBeNull();
    expect(segmentCrossing(west, east, { x: 1, y: 2 }, { x: 2, y: 2 })).toBeNull();
    expect(segmentCrossing(west, east, west, east)).toBeNull();
    expect(segmentCrossing(west, east, { x: 5, y: 2 }, { x: 9, y: 2 })).toBeNull();
  });

  test('near misses are misses, without a tolerance', () => {
    const justBelow = { x: 2, y: 2 + 4e-16 };
    expect(justBelow.y).toBeGreaterThan(2);
    expect(segmentCrossing(west, east, justBelow, { x: 2, y: 9 })).toBeNull();
  });

  /** Independent: whole-number arithmetic on both parameters. */
  function meetOnGrid(p: Point, q: Point, r: Point, s: Point): boolean | 'one line' {
    const d = (q.x - p.x) * (s.y - r.y) - (q.y - p.y) * (s.x - r.x);
    const t = (r.x - p.x) * (s.y - r.y) - (r.y - p.y) * (s.x - r.x);
    const u = (r.x - p.x) * (q.y - p.y) - (r.y - p.y) * (q.x - p.x);
    if (d === 0) return 'one line';
    return d > 0 ? t >= 0 && t <= d && u >= 0 && u <= d : t <= 0 && t >= d && u <= 0 && u >= d;
  }

  test('agrees with whole-number arithmetic on grid points, and is symmetric', () => {
    fc.assert(
      fc.property(gridPoint, gridPoint, gridPoint, gridPoint, (p, q, r, s) => {
        const found = segmentCrossing(p, q, r, s);
        const swapped = segmentCrossing(r, s, p, q);
        expect(swapped === null).toBe(found === null);
        const expected = meetOnGrid(p, q, r, s);
        if (expected !== 'one line') expect(found !== null).toBe(expected);
        if (found === null) return;
        expect(distanceToSegment(found.at, p, q)).toBeLessThan(1e-12);
        expect(distanceToSegment(found.at, r, s)).toBeLessThan(1e-12);
        expect(distance(found.at, pointAt(p, q, found.t))).toBeLessThan(1e-12);
        expect(distance(found.at, pointAt(r, s, found.u))).toBeLessThan(1e-12);
        expect(distance(found.at, swapped!.at)).toBeLessThan(1e-12);
      }),
      { seed: 6, numRuns: 5000 },
    );
  });
});

describe('a point is on a segment', () => {
  test.each([
    [{ x: 2, y: 2.1 }, 0.1, true],
    [{ x: 2, y: 2.2 }, 0.1, false],
    [{ x: -0.05, y: -0.05 }, 0.1, true],
    // In the box, widened by so much, and farther from the end.
    [{ x: -0.09, y: -0.09 }, 0.1, false],
    [{ x: 4.2, y: 4 }, 0.1, false],
  ])('%j within %d: %s', (p, within, expected) => {
    expect(isOnSegment(p, { x: 0, y: 0 }, { x: 4, y: 4 }, within)).toBe(expected);
  });
});
