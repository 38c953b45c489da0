import type { Sheet } from '../src/index.ts';
import { boxOf, cornersOf } from './boxes.ts';

// Distances from the definition, with nothing of the program's own geometry: to check packing.

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** 0 when the outlines overlap or one lies in the other. */
export function distanceBetween(p: readonly Spot[], q: readonly Spot[]): number {
  if (inside(p[0]!, q) || inside(q[0]!, p)) return 0;
  let least = Number.POSITIVE_INFINITY;
  for (const [a, b] of sides(p))
    for (const [c, d] of sides(q)) {
      if (cross(a, b, c, d)) return 0;
      least = Math.min(least, toStretch(a, c, d), toStretch(b, c, d), toStretch(c, a, b), toStretch(d, a, b));
    }
  return least;
}

const sides = (p: readonly Spot[]): readonly (readonly [Spot, Spot])[] =>
  p.map((a, i) => [a, p[(i + 1) % p.length]!]);

function toStretch(p: Spot, a: Spot, b: Spot): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const along = ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1);
  const t = Math.min(1, Math.max(0, along));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}

const sideOf = (a: Spot, b: Spot, c: Spot): number =>
  Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));

const cross = (a: Spot, b: Spot, c: Spot, d: Spot): boolean =>
  sideOf(a, b, c) !== sideOf(a, b, d) && sideOf(c, d, a) !== sideOf(c, d, b);

/** Ray to the right. */
function inside(p: Spot, outline: readonly Spot[]): boolean {
  let odd = false;
  for (const [a, b] of sides(outline))
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) odd = !odd;
  return odd;
}

/**
 * Points between the two foundations of the sheet that are nearest to each other: cutting lines and captions, and of the
 * words at the cutting lines, which stand in their foundation's half of the gap, twice the way to the middle of it.
 */
export function leastGap(sheet: Sheet): number {
  const parts = sheet.sections.map((key) => partsOf(sheet, key));
  let least = Number.POSITIVE_INFINITY;
  parts.forEach((one, i) => {
    for (const other of parts.slice(i + 1)) {
      for (const p of one.solid) for (const q of other.solid) least = Math.min(least, distanceBetween(p, q));
      for (const p of one.words)
        for (const q of other.solid) least = Math.min(least, 2 * distanceBetween(p, q));
      for (const p of one.solid)
        for (const q of other.words) least = Math.min(least, 2 * distanceBetween(p, q));
    }
  });
  return least;
}

function partsOf(sheet: Sheet, key: string) {
  const marks = sheet.marks.filter(({ section }) => section === key);
  const boxed = (mark: (typeof marks)[number]): readonly Spot[] => {
    if (mark.kind === 'text') return cornersOf(mark);
    const { minX, minY, maxX, maxY } = boxOf(mark);
    return [
      { x: minX, y: minY },
      { x: maxX, y: minY },
      { x: maxX, y: maxY },
      { x: minX, y: maxY },
    ];
  };
  const lines = marks.flatMap((mark) =>
    mark.kind === 'path' && mark.role === 'cutting-line' ? [mark.points] : [],
  );
  return {
    solid: [...lines, ...marks.filter(({ role }) => role === 'caption').map(boxed)],
    words: marks.filter(({ role }) => role === 'label').map(boxed),
  };
}
