import type { Point, Segment } from '@seamwright/geometry';
import { arrange } from '../src/arrange.ts';
import { drawingFromSegments } from '../src/from-segments.ts';
import type { Arrangement } from '../src/types.ts';

export const SQUARE: readonly Point[] = rectangle(6, 6);

export function rectangle(width: number, height: number): readonly Point[] {
  return [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
}

/** `line(0, 1, 6, 1)` runs from (0, 1) to (6, 1). */
export const line = (x1: number, y1: number, x2: number, y2: number): Segment => ({
  a: { x: x1, y: y1 },
  b: { x: x2, y: y2 },
});

/** The arrangement of bare coordinates; throws with the reason when there is none. */
export function arranged(outline: readonly Point[], segments: readonly Segment[]): Arrangement {
  const result = arrange(drawingFromSegments(outline, segments));
  if (!result.ok) throw new Error(`no arrangement: ${result.problem.what} ${result.problem.where}`);
  return result.value;
}

export const kinds = ({ findings }: Arrangement): string[] => findings.map(({ kind }) => kind);

/** Sorted areas, rounded for comparison, square inches. */
export const areas = ({ patches }: Arrangement, digits = 6): number[] =>
  patches.map(({ area }) => Number(area.toFixed(digits))).sort((a, b) => a - b);

/** Numbers in [0, 1) from a seed: the mulberry32 generator (public domain; from memory). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A point on the boundary of a polygon, at a share of its corners' count. */
export function onBoundary(outline: readonly Point[], share: number): Point {
  const i = Math.floor(share * outline.length) % outline.length;
  const t = share * outline.length - Math.floor(share * outline.length);
  const a = outline[i]!;
  const b = outline[(i + 1) % outline.length]!;
  return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
}
