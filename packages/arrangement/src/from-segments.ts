import { type Polygon, SAME_COORDINATE, type Segment } from '@seamwright/geometry';
import type { Drawing, DrawingPoint, PointId, Split } from './drawing.ts';

/**
 * A drawing from bare coordinates, as files have them: points at the same place (within {@link SAME_COORDINATE})
 * become one shared point, everything else is left for the arrangement to find out.
 *
 * @param outline corners in order, inches
 * @param segments the splits, inches
 */
export function drawingFromSegments(outline: Polygon, segments: readonly Segment[]): Drawing {
  const points: Record<PointId, DrawingPoint> = {};
  const known = new Map<string, PointId>();
  let count = 0;

  const idAt = (x: number, y: number): PointId => {
    const column = Math.round(x / SAME_COORDINATE);
    const row = Math.round(y / SAME_COORDINATE);
    const key = `${column} ${row}`;
    const existing = known.get(key);
    if (existing !== undefined) return existing;
    count += 1;
    const id = `p${count}`;
    points[id] = { id, x, y };
    known.set(key, id);
    return id;
  };

  const corners = outline.map(({ x, y }) => idAt(x, y));
  const splits: Split[] = segments.map(({ a, b }, i) => ({
    id: `s${i + 1}`,
    from: idAt(a.x, a.y),
    to: idAt(b.x, b.y),
  }));
  return { points, outline: corners, splits };
}
