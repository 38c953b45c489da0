import { type Arrangement, arrange, drawingFromSegments } from '@seamwright/arrangement';
import type { Point, Segment } from '@seamwright/geometry';

export const l = (x1: number, y1: number, x2: number, y2: number): Segment => ({
  a: { x: x1, y: y1 },
  b: { x: x2, y: y2 },
});

/** The corners of a rectangle, inches. */
export const rectangle = (width: number, height: number): readonly Point[] => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];

/** The arrangement of an outline with these splits; throws when there is none. */
export function arrangedIn(outline: readonly Point[], splits: readonly Segment[]): Arrangement {
  const result = arrange(drawingFromSegments(outline, splits));
  if (!result.ok) throw new Error(result.problem.what);
  return result.value;
}

/** The arrangement of a rectangle of `width` × `height` inches with these splits. */
export const blockOf = (width: number, height: number, splits: readonly Segment[]): Arrangement =>
  arrangedIn(rectangle(width, height), splits);

/** Lines right across a square, one inch apart. */
export const grid = (n: number): Segment[] =>
  Array.from({ length: n - 1 }, (_, i) => i + 1).flatMap((v) => [l(v, 0, v, n), l(0, v, n, v)]);

/** The patch that holds a point. */
export function patchAt({ patches }: Arrangement, x: number, y: number): number {
  const found = patches.find(({ polygon }) => {
    const xs = polygon.map((p) => p.x);
    const ys = polygon.map((p) => p.y);
    return Math.min(...xs) < x && x < Math.max(...xs) && Math.min(...ys) < y && y < Math.max(...ys);
  });
  if (found === undefined) throw new Error(`no patch at ${x}, ${y}`);
  return found.index;
}
