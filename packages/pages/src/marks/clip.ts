import { type Box, edgesOf, type Point, type Segment } from '@seamwright/geometry';
import { textCorners } from './metrics.ts';
import type { Mark, PathMark, TextMark } from './model.ts';

/**
 * What of the mark is seen through the box.
 *
 * A straight line is cut where it leaves the box and stays one straight line. A closed path stays the whole path,
 * shown through the box as a window: readers of a page find each outline closed and complete, and its dashes are
 * where they are on the next tile. So do the arrows and leaders of labels. A text stays whole or goes.
 */
export function clipped(mark: Mark, box: Box<'page'>): readonly Mark[] {
  if (mark.kind === 'text') return textInside(mark, box) ? [mark] : [];
  if (mark.closed || mark.role === 'label') return shapeThrough(mark, box);
  const runs = mark.points.slice(1).map((b, i) => ({ a: mark.points[i]!, b }));
  return clippedSegments(runs, box).map(({ a, b }): PathMark => ({ ...mark, points: [a, b] }));
}

function shapeThrough(mark: PathMark, box: Box<'page'>): readonly PathMark[] {
  if (mark.points.every((p) => inside(p, box))) return [mark];
  return clippedSegments(edgesOf(mark.points), box).length === 0 ? [] : [{ ...mark, window: box }];
}

/** Of each segment what lies in the box. */
export const clippedSegments = (
  segments: readonly Segment<'page'>[],
  box: Box<'page'>,
): readonly Segment<'page'>[] =>
  segments.map(({ a, b }) => clippedSegment(a, b, box)).filter((part) => part !== null);

/** Of each segment what lies outside the box: itself, one part, or two. */
export const segmentsOutside = (
  segments: readonly Segment<'page'>[],
  box: Box<'page'>,
): readonly Segment<'page'>[] =>
  segments.flatMap((segment) => {
    const { a, b } = segment;
    const within = clippedSegment(a, b, box);
    if (within === null) return [segment];
    return [...(within.a === a ? [] : [{ a, b: within.a }]), ...(within.b === b ? [] : [{ a: within.b, b }])];
  });

/**
 * The stretch of the segment from a to b inside the box; null when there is none. An end that lies inside is the
 * very same point again.
 *
 * Algorithm: Y.-D. Liang, B. A. Barsky, A new concept and method for line clipping, ACM Transactions on Graphics
 * 3(1), 1984 (from memory).
 */
function clippedSegment(a: Point<'page'>, b: Point<'page'>, box: Box<'page'>): Segment<'page'> | null {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  let from = 0;
  let to = 1;
  for (const [way, room] of [
    [-dx, a.x - box.minX],
    [dx, box.maxX - a.x],
    [-dy, a.y - box.minY],
    [dy, box.maxY - a.y],
  ] as const) {
    if (way === 0 && room < 0) return null;
    if (way < 0) from = Math.max(from, room / way);
    if (way > 0) to = Math.min(to, room / way);
  }
  if (from >= to) return null;
  const at = (t: number): Point<'page'> => ({ x: a.x + t * dx, y: a.y + t * dy });
  return { a: from === 0 ? a : at(from), b: to === 1 ? b : at(to) };
}

const textInside = (mark: TextMark, box: Box<'page'>): boolean =>
  textCorners(mark).every((corner) => inside(corner, box));

const inside = (p: Point<'page'>, box: Box<'page'>): boolean =>
  p.x >= box.minX && p.x <= box.maxX && p.y >= box.minY && p.y <= box.maxY;
