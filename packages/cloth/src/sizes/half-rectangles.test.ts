import { convexHull, type Point, type Polygon } from '@seamwright/geometry';
import { describe, expect, test } from 'vitest';
import { USUAL } from '../../test/blocks.ts';
import { coversByHand, laidTrue, worstSlips } from '../../test/placing-by-hand.ts';
import { randomNumbers } from '../../test/slips.ts';
import type { PieceShape } from '../placing/nominal-place.ts';
import type { CutRules } from '../types.ts';
import { coversWithin } from './cover.ts';
import { ALONG_GRAIN, type Lay, laysAlong, leastHalfRectangle } from './half-rectangles.ts';

const triangle = (random: () => number): Polygon => {
  for (;;) {
    const hull = convexHull(Array.from({ length: 3 }, () => ({ x: random() * 4, y: random() * 4 })));
    const [a, b, c] = hull as unknown as readonly [Point, Point, Point];
    if (hull.length === 3 && (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) > 2) return hull;
  }
};

/** The least area of a right triangle with the given direction of its width that covers: every size is tried. */
function leastByTrying(
  shape: Polygon,
  angles: (w: number, h: number) => readonly number[],
  spare: number,
): number {
  const need = { patch: 0, name: 'A1', sewLine: null, finished: shape, needed: shape };
  let least = Number.POSITIVE_INFINITY;
  for (let width = 0.25; width <= 14; width += 0.25) {
    for (let height = 0.25; width * height < least && height <= 14; height += 0.25) {
      const covers = angles(width, height).some((angle) => {
        const place = laidTrue({ shape: 'half-rectangle', width, height, angle }, need);
        return worstSlips(place, need, spare, 0).every((slip) => coversByHand(place, need, slip));
      });
      if (covers) least = width * height;
    }
  }
  return least;
}

/**
 * All sizes below an area, counted up in whole steps, each asked whether it covers: the one of the least area, of such the
 * less long, of mirror images the wider, in the first lay that has it.
 */
function byCounting(
  shape: Polygon,
  lays: readonly Lay[],
  rules: CutRules,
  below: number,
  only: (w: number, h: number) => boolean,
): PieceShape | null {
  const step = rules.roundUpTo;
  const most = below / step ** 2;
  const sizes: (readonly [number, number])[] = [];
  for (let w = 1; w < most; w++) {
    for (let h = 1; w * h < most; h++) if (only(w, h)) sizes.push([w, h]);
  }
  sizes.sort(([w, h], [v, g]) => w * h - v * g || Math.max(w, h) - Math.max(v, g) || v - w);
  for (const [w, h] of sizes) {
    const [width, height] = [w * step, h * step];
    for (const { along, angle } of lays) {
      const back = 90 + (Math.atan2(width, height) * 180) / Math.PI;
      const turned = along === 'leg' ? angle : (((angle - back) % 360) + 360) % 360;
      const piece = { shape: 'half-rectangle', width, height, angle: turned } as const;
      if (coversWithin(piece, shape, rules)) return piece;
    }
  }
  return null;
}

describe('the least half-rectangle', () => {
  test('is to the very piece what counting up all sizes finds, whatever the spare and the turn', () => {
    const random = randomNumbers(93);
    const rulesOf = (n: number): CutRules => ({
      ...USUAL,
      spare: [0, 0.25, 0.4][n % 3]!,
      turn: [0, 3, 10, 25][n % 4]!,
      roundUpTo: 0.5,
    });
    let found = 0;
    for (let n = 0; n < 36; n++) {
      const high = n % 5 === 0 ? 0.4 : 4;
      const points = Array.from({ length: 3 + (n % 3) }, () => ({ x: random() * 5, y: random() * high }));
      const shape = convexHull(points);
      const [a, b, c] = shape as unknown as readonly [Point, Point, Point];
      const rules = rulesOf(n);
      const below = 20 + random() * 80;
      for (const lays of [ALONG_GRAIN, laysAlong({ a, b }, c)]) {
        const least = byCounting(shape, lays, rules, below, () => true);
        // A square that takes no more than a strip of one step along the longer side in addition.
        const little =
          least === null ? 0 : least.width * least.height + 0.5 * Math.max(least.width, least.height);
        const limit = Math.min(little, below) + 0.25 / 2;
        const even = byCounting(shape, lays, rules, limit, (w, h) => w === h);
        expect(leastHalfRectangle(shape, lays, rules, below)).toEqual(even ?? least);
        if (least !== null) found += 1;
      }
    }
    expect(found).toBeGreaterThan(36);
  });

  test('along the grain is what trying every size finds, or the square that is little larger', () => {
    const random = randomNumbers(91);
    for (let n = 0; n < 15; n++) {
      const shape = triangle(random);
      const found = leastHalfRectangle(shape, ALONG_GRAIN, USUAL, 200)!;
      const least = leastByTrying(shape, () => [0, 90, 180, 270], USUAL.spare);
      const isSquare = found.width === found.height;
      expect(found.width * found.height).toBeGreaterThanOrEqual(least);
      expect(found.width * found.height).toBeLessThanOrEqual(isSquare ? least + 0.25 * 14 : least);
      expect(leastHalfRectangle(shape, ALONG_GRAIN, USUAL, least)).toBeNull();
    }
  });

  test('along a sew line, too: with a leg at either end of it, or with its long side', () => {
    const random = randomNumbers(92);
    const degrees = (radians: number) => (radians * 180) / Math.PI;
    for (let n = 0; n < 15; n++) {
      const shape = triangle(random);
      const [a, b, c] = shape as unknown as readonly [Point, Point, Point];
      // Clockwise: the shape is on the right hand of the way from a to b, a quarter turn clockwise of it.
      const way = degrees(Math.atan2(b.y - a.y, b.x - a.x));
      const found = leastHalfRectangle(shape, laysAlong({ a, b }, c), USUAL, 200)!;
      // Seen from the right angle the long side runs from the end of the width to that of the height, backwards along the way.
      const angles = (w: number, h: number) => [way, way + 90, way + 180 + degrees(Math.atan2(h, w))];
      const least = leastByTrying(shape, angles, USUAL.spare);
      const isSquare = found.width === found.height;
      expect(found.width * found.height).toBeGreaterThanOrEqual(least);
      expect(found.width * found.height).toBeLessThanOrEqual(isSquare ? least + 0.25 * 14 : least);
      // The other end of the line named first is the same line.
      expect(leastHalfRectangle(shape, laysAlong({ a: b, b: a }, c), USUAL, 200)).toEqual(found);
    }
  });
});
