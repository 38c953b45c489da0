import { checkSimple } from '../src/check-simple.ts';
import type { Point, Polygon } from '../src/point.ts';
import { isClockwise, reversed } from '../src/polygon.ts';

/** Seeded polygons for tests: the same seed gives the same shapes on every machine. */

/** Numbers in 0 … 1 from a seed. Algorithm: mulberry32, T. Ettinger, 2017 (public domain; from memory). */
export function randomNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A convex polygon: corners on an ellipse of up to 12 × 12 in, clockwise. */
export function convexPolygon(random: () => number): Polygon {
  const count = 3 + Math.floor(random() * 7);
  const [rx, ry] = [1 + random() * 5, 1 + random() * 5];
  // Gaps of at least a fifth of an even share, so that no two corners coincide.
  const gaps = Array.from({ length: count }, () => 0.2 + random());
  const whole = gaps.reduce((a, b) => a + b, 0);
  let angle = random() * 2 * Math.PI;
  return gaps.map((gap) => {
    angle += (gap / whole) * 2 * Math.PI;
    return { x: rx * Math.cos(angle), y: ry * Math.sin(angle) };
  });
}

/**
 * A wild simple polygon in a 12 in square, clockwise: random corners, joined in random order, then every crossing
 * pair of edges undone by reversing the stretch between them. Has narrow notches, spikes and reflex corners.
 */
export function wildPolygon(random: () => number): Polygon {
  for (;;) {
    const count = 4 + Math.floor(random() * 12);
    const corners = Array.from({ length: count }, () => ({ x: random() * 12, y: random() * 12 }));
    while (undoOneCrossing(corners));
    if (checkSimple(corners).ok) return isClockwise(corners) ? corners : reversed(corners);
  }
}

function undoOneCrossing(corners: Point[]): boolean {
  const count = corners.length;
  for (let i = 0; i + 1 < count; i++) {
    for (let j = i + 2; j < count; j++) {
      if ((j + 1) % count === i) continue;
      if (!crosses(corners[i]!, corners[i + 1]!, corners[j]!, corners[(j + 1) % count]!)) continue;
      const stretch = corners.slice(i + 1, j + 1).reverse();
      corners.splice(i + 1, stretch.length, ...stretch);
      return true;
    }
  }
  return false;
}

/** Plain doubles are good enough here: the result is checked afterwards. */
function crosses(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** Interior angle at each corner of a clockwise polygon, degrees, 0 … 360. */
export const interiorAngles = (polygon: Polygon): readonly number[] =>
  polygon.map((corner, i) => {
    const before = polygon[(i + polygon.length - 1) % polygon.length]!;
    const after = polygon[(i + 1) % polygon.length]!;
    const towards = Math.atan2(after.y - corner.y, after.x - corner.x);
    const back = Math.atan2(before.y - corner.y, before.x - corner.x);
    const degrees = ((back - towards) * 180) / Math.PI;
    return degrees < 0 ? degrees + 360 : degrees;
  });

/** Corners from pairs. */
export const shape = (...corners: readonly (readonly [number, number])[]): Polygon =>
  corners.map(([x, y]) => ({ x, y }));

/** The regular polygon of n sides of the given length, clockwise. */
export function regularPolygon(sides: number, side: number): Polygon {
  const radius = side / (2 * Math.sin(Math.PI / sides));
  return Array.from({ length: sides }, (_, i) => {
    const angle = (2 * Math.PI * i) / sides;
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
}
