import type { Drawing, DrawingPoint, LineId, PointId } from '@seamwright/arrangement';
import {
  distance,
  lerp,
  lineCrossing,
  nearestOnSegment,
  type Point,
  parameterOn,
  SAME_COORDINATE,
} from '@seamwright/geometry';
import { withOn } from './facts.ts';
import { type DrawnLine, drawnLines } from './lines.ts';

/**
 * Brings the points that hang on moved lines after them. `after` holds the `moved` points at their new places
 * and all others where they were in `before`; its facts must be sound ({@link keepSoundFacts}).
 *
 * - On one line: the point keeps its share of the way along the line, so a middle stays the middle.
 * - On two lines: it goes to their new crossing. When they no longer cross within their ends, the point stays
 *   with the first of them as above, and the second fact is dropped.
 *
 * Points whose lines did not move are left as they are, to the last digit. Lines are visited before the points
 * that hang on them, whatever the order of ids: one pass settles everything.
 */
export function settle(before: Drawing, after: Drawing, moved: ReadonlySet<PointId>): Drawing {
  const lines = drawnLines(after);
  const linesBefore = drawnLines(before);
  const settled = new Map<PointId, DrawingPoint>();
  const changed = new Set<PointId>(moved);

  const place = (id: PointId): DrawingPoint => {
    const known = settled.get(id);
    if (known !== undefined) return known;
    const point = after.points[id]!;
    let result = point;
    if (!moved.has(id) && point.on !== undefined) {
      const under = point.on.map((line) => lines.get(line)!);
      const now = under.map(({ from, to }) => ({ from: place(from.id), to: place(to.id) }));
      if (under.some(({ from, to }) => changed.has(from.id) || changed.has(to.id))) {
        result = follow(point, under, now, linesBefore);
        changed.add(id);
      }
    }
    settled.set(id, result);
    return result;
  };

  const points: Record<PointId, DrawingPoint> = {};
  for (const id of Object.keys(after.points)) points[id] = place(id);
  return { ...after, points };
}

interface Ends {
  readonly from: Point;
  readonly to: Point;
}

function follow(
  point: DrawingPoint,
  under: readonly DrawnLine[],
  now: readonly Ends[],
  linesBefore: ReadonlyMap<LineId, DrawnLine>,
): DrawingPoint {
  const [first, second] = now;
  if (first === undefined) return point;
  if (second !== undefined) {
    const at = crossingWithin(first, second);
    if (at !== null) return { ...point, ...at };
  }
  const line = under[0]!;
  // A line that took over from another under a new id has no past: the point is measured on it as it is now.
  const past = linesBefore.get(line.id) ?? line;
  const share = Math.min(1, Math.max(0, parameterOn(past.from, past.to, point)));
  const { x, y } = lerp(first.from, first.to, share);
  return withOn({ ...point, x, y }, [line.id]);
}

/** Where two stretches cross, ends included and rounding forgiven; null when they do not. */
function crossingWithin(one: Ends, other: Ends): Point | null {
  const at = lineCrossing(one.from, one.to, other.from, other.to);
  if (at === null) return null;
  const reaches = ({ from, to }: Ends) => distance(at, nearestOnSegment(at, from, to)) <= SAME_COORDINATE;
  return reaches(one) && reaches(other) ? at : null;
}
