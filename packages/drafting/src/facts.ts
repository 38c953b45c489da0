import {
  type Drawing,
  type DrawingPoint,
  type LineId,
  MOST_FACTS,
  type PointId,
} from '@seamwright/arrangement';
import { distanceToSegment, SAME_COORDINATE } from '@seamwright/geometry';
import { drawnLines, linesEndingIn } from './lines.ts';

/**
 * What moves when points move: the lines that end in it, the points that were placed on those lines, the
 * lines that end in them, and so on.
 */
export interface Followers {
  /** The points themselves too. */
  readonly points: ReadonlySet<PointId>;
  readonly lines: ReadonlySet<LineId>;
}

export function followersOf(drawing: Drawing, ...moved: readonly PointId[]): Followers {
  const points = new Set<PointId>(moved);
  const lines = new Set<LineId>();
  const waiting = [...moved];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    for (const line of linesEndingIn(drawing, next)) lines.add(line.id);
    for (const other of Object.values(drawing.points)) {
      if (points.has(other.id) || !other.on?.some((line) => lines.has(line))) continue;
      points.add(other.id);
      waiting.push(other.id);
    }
  }
  return { points, lines };
}

const NONE: ReadonlySet<PointId> = new Set();

/**
 * Takes off the facts that cannot be kept true: of lines that are gone, of lines that end in the point, of
 * outline corners (they are what edges hang on, and stand by themselves), beyond the second, and the ones that would
 * make a point hang on itself by way of other lines. Where a ring of points hang on each other, the fact of the
 * point that comes last is the one that goes; `last` names points whose facts are the first to yield.
 */
export function keepSoundFacts(drawing: Drawing, last: ReadonlySet<PointId> = NONE): Drawing {
  const withFacts = Object.values(drawing.points).filter((point) => point.on !== undefined);
  if (withFacts.length === 0) return drawing;
  const lines = drawnLines(drawing);
  const corners = new Set(drawing.outline);
  const kept = new Map<PointId, readonly LineId[]>();

  const hangsOn = (line: LineId, point: PointId, seen: Set<LineId>): boolean => {
    if (seen.has(line)) return false;
    seen.add(line);
    const { from, to } = lines.get(line)!;
    return [from.id, to.id].some(
      (end) => end === point || (kept.get(end) ?? []).some((next) => hangsOn(next, point, seen)),
    );
  };

  withFacts.sort((a, b) => Number(last.has(a.id)) - Number(last.has(b.id)));
  for (const point of withFacts) {
    if (corners.has(point.id)) continue;
    const sound: LineId[] = [];
    for (const line of point.on ?? []) {
      if (sound.length === MOST_FACTS || sound.includes(line) || !lines.has(line)) continue;
      // hangsOn is true of a line that ends in the point, too.
      if (!hangsOn(line, point.id, new Set())) sound.push(line);
    }
    kept.set(point.id, sound);
  }

  const points: Record<PointId, DrawingPoint> = { ...drawing.points };
  for (const point of withFacts) {
    const on = kept.get(point.id) ?? [];
    if (on.length !== point.on!.length) points[point.id] = withOn(point, on);
  }
  return { ...drawing, points };
}

/** Takes off the facts of these points that their coordinates contradict. */
export function keepTrueFacts(drawing: Drawing, of: ReadonlySet<PointId>): Drawing {
  const lines = drawnLines(drawing);
  const points: Record<PointId, DrawingPoint> = { ...drawing.points };
  for (const id of of) {
    const point = points[id];
    if (point?.on === undefined) continue;
    const on = point.on.filter((line) => {
      const under = lines.get(line);
      return under !== undefined && distanceToSegment(point, under.from, under.to) <= SAME_COORDINATE;
    });
    if (on.length < point.on.length) points[id] = withOn(point, on);
  }
  return { ...drawing, points };
}

/** The point with these facts and no others. */
export function withOn(point: DrawingPoint, on: readonly LineId[]): DrawingPoint {
  const { id, x, y } = point;
  return on.length === 0 ? { id, x, y } : { id, x, y, on };
}
