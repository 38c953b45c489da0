import { type Drawing, type DrawingPoint, edgeId, MOST_FACTS, type PointId } from '@seamwright/arrangement';
import { distanceToSegment, ok, type Polygon, type Result, SAME_COORDINATE } from '@seamwright/geometry';
import { keepSoundFacts, withOn } from '../facts.ts';
import { freshIds } from '../ids.ts';
import { drawnLines } from '../lines.ts';
import { drawingFromOutline } from '../outlines.ts';
import { pointIn } from '../place-at.ts';
import { withoutOrphans } from '../tidy.ts';

/**
 * Gives the drawing another outline and keeps its splits where they are. Ends that are in the place of a corner of
 * the new outline become that corner, ends on one of its edges are on it from now on. What then lies outside the
 * block, or no longer reaches its edge, is for the arrangement's findings to tell.
 *
 * Refused: outlines that {@link drawingFromOutline} refuses.
 */
export function replaceOutline(drawing: Drawing, outline: Polygon): Result<Drawing> {
  const fresh = drawingFromOutline(outline);
  if (!fresh.ok || drawing.splits.length === 0) return fresh;

  const splitsOnly = withoutOrphans({ ...drawing, outline: [] });
  const ids = freshIds(drawing);
  const points: Record<PointId, DrawingPoint> = {};
  const corners = fresh.value.outline.map((id) => {
    const { x, y } = fresh.value.points[id]!;
    const corner = { id: pointIn(splitsOnly, { x, y })?.id ?? ids.point(), x, y };
    points[corner.id] = corner;
    return corner;
  });

  const bare: Drawing = { points, outline: corners.map(({ id }) => id), splits: [] };
  const oldEdges = new Set(drawing.outline.map(edgeId));
  for (const point of Object.values(splitsOnly.points)) {
    if (points[point.id] !== undefined) continue;
    const edges = [...drawnLines(bare).values()].filter(
      ({ from, to }) => distanceToSegment(point, from, to) <= SAME_COORDINATE,
    );
    const others = (point.on ?? []).filter((line) => !oldEdges.has(line));
    points[point.id] = withOn(point, [...edges.map(({ id }) => id), ...others].slice(0, MOST_FACTS));
  }
  const next = { ...splitsOnly, points: { ...points }, outline: bare.outline };
  return ok(keepSoundFacts(next));
}
