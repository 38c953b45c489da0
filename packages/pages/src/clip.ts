import { type Box, distance, edgesOf, type Point, type Segment } from '@seamwright/geometry';
import { CAP_HEIGHT, textWidth } from './metrics.ts';
import type { Mark, PathMark, TextMark } from './model.ts';

/**
 * What of the mark lies in the box. A path is cut where it leaves the box: straight stretches stay straight, a
 * closed path that is cut comes as open ones, each with its dashes where they were. A text stays whole or goes.
 */
export function clipped(mark: Mark, box: Box<'page'>): readonly Mark[] {
  return mark.kind === 'path' ? clippedPath(mark, box) : textInside(mark, box) ? [mark] : [];
}

function clippedPath(mark: PathMark, box: Box<'page'>): readonly PathMark[] {
  if (mark.points.every((p) => inside(p, box))) return [mark];
  const edges = mark.closed ? edgesOf(mark.points) : edgesOf(mark.points).slice(0, -1);
  const pieces: { points: Point<'page'>[]; start: number }[] = [];
  let walked = 0;
  for (const { a, b } of edges) {
    const part = clippedSegment(a, b, box);
    if (part) {
      const last = pieces.at(-1);
      // Only a stretch that was cut nowhere between goes on from the one before.
      if (last && part.from === 0 && last.points.at(-1) === a) last.points.push(part.b);
      else pieces.push({ points: [part.a, part.b], start: walked + distance(a, part.a) });
    }
    walked += distance(a, b);
  }
  const first = pieces[0];
  const last = pieces.at(-1);
  // The walk began in the middle of a piece: its two halves are one.
  if (mark.closed && first && last && first !== last && last.points.at(-1) === first.points[0]) {
    pieces.shift();
    last.points.push(...first.points.slice(1));
  }
  return pieces.map(({ points, start }) => ({ ...mark, points, closed: false, ...strokeFrom(mark, start) }));
}

function strokeFrom({ stroke }: PathMark, start: number): Pick<PathMark, 'stroke'> {
  if (stroke === undefined) return {};
  if (stroke.dash === undefined) return { stroke };
  return { stroke: { ...stroke, phase: ((stroke.phase ?? 0) + start) % (stroke.dash[0] + stroke.dash[1]) } };
}

/** Of each segment what lies in the box. */
export const clippedSegments = (
  segments: readonly Segment<'page'>[],
  box: Box<'page'>,
): readonly Segment<'page'>[] =>
  segments.map(({ a, b }) => clippedSegment(a, b, box)).filter((part) => part !== null);

/**
 * The stretch of the segment from a to b inside the box; null when there is none. An end that lies inside is the
 * very same point again.
 *
 * Algorithm: Y.-D. Liang, B. A. Barsky, A new concept and method for line clipping, ACM Transactions on Graphics
 * 3(1), 1984 (from memory).
 */
function clippedSegment(
  a: Point<'page'>,
  b: Point<'page'>,
  box: Box<'page'>,
): { a: Point<'page'>; b: Point<'page'>; from: number } | null {
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
  return { a: from === 0 ? a : at(from), b: to === 1 ? b : at(to), from };
}

function textInside(mark: TextMark, box: Box<'page'>): boolean {
  const width = textWidth(mark.content, mark.size, mark.weight);
  const start = mark.anchor === 'start' ? 0 : mark.anchor === 'middle' ? -width / 2 : -width;
  const radians = (mark.angle * Math.PI) / 180;
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
  const rise = CAP_HEIGHT * mark.size;
  return [
    [start, 0],
    [start + width, 0],
    [start, -rise],
    [start + width, -rise],
  ].every(([u, v]) =>
    inside({ x: mark.at.x + u! * cos - v! * sin, y: mark.at.y + u! * sin + v! * cos }, box),
  );
}

const inside = (p: Point<'page'>, box: Box<'page'>): boolean =>
  p.x >= box.minX && p.x <= box.maxX && p.y >= box.minY && p.y <= box.maxY;
