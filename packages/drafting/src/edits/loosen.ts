import type { Drawing, DrawingPoint, LineId, PointId, Split } from '@seamwright/arrangement';
import { freshIds } from '../ids.ts';
import { drawnLines } from '../lines.ts';

/** A drawing in which some splits have ends of their own where they end in a corner of the outline. */
export interface Loosened {
  readonly drawing: Drawing;
  /** The end of one of the lines that ended in this point: its own, or the point. */
  readonly endOf: (line: LineId, point: PointId) => PointId;
}

/**
 * Gives splits that are about to be moved ends of their own where they end in corners of the outline, so that the
 * outline keeps its shape. Corners that move themselves (`along`, and the ends of edges among the lines) stay shared.
 * Until the ends are moved they lie in the corner's place.
 */
export function loosened(
  drawing: Drawing,
  lines: ReadonlySet<LineId>,
  along: ReadonlySet<PointId> = new Set(),
): Loosened {
  const ids = freshIds(drawing);
  const corners = new Set(drawing.outline);
  for (const id of along) corners.delete(id);
  for (const id of lines) {
    const line = drawnLines(drawing).get(id);
    if (line?.kind !== 'edge') continue;
    corners.delete(line.from.id);
    corners.delete(line.to.id);
  }
  const own = new Map<string, PointId>();
  const points: Record<PointId, DrawingPoint> = { ...drawing.points };
  const leave = (line: LineId, corner: PointId): PointId => {
    if (!corners.has(corner)) return corner;
    const { x, y } = drawing.points[corner]!;
    const id = ids.point();
    points[id] = { id, x, y };
    own.set(`${line} ${corner}`, id);
    return id;
  };
  const splits = drawing.splits.map(
    (split): Split =>
      lines.has(split.id)
        ? { ...split, from: leave(split.id, split.from), to: leave(split.id, split.to) }
        : split,
  );
  return {
    drawing: own.size === 0 ? drawing : { ...drawing, points, splits },
    endOf: (line, point) => own.get(`${line} ${point}`) ?? point,
  };
}
