import { distance, type Polygon, SAME_COORDINATE, type Segment } from '@seamwright/geometry';
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
  const known = new Map<string, readonly PointId[]>();
  let count = 0;

  const idAt = (x: number, y: number): PointId => {
    const column = Math.floor(x / SAME_COORDINATE);
    const row = Math.floor(y / SAME_COORDINATE);
    // Neighbouring cells too: a coordinate on the border of two falls on either side by its last digit.
    for (let i = column - 1; i <= column + 1; i++) {
      for (let j = row - 1; j <= row + 1; j++) {
        const near = known.get(`${i} ${j}`)?.find((id) => distance(points[id]!, { x, y }) <= SAME_COORDINATE);
        if (near !== undefined) return near;
      }
    }
    count += 1;
    const id = `p${count}`;
    points[id] = { id, x, y };
    const key = `${column} ${row}`;
    known.set(key, [...(known.get(key) ?? []), id]);
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
