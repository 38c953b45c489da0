import { type Drawing, type DrawingPoint, edgeId, type LineId, type PointId } from '@seamwright/arrangement';

/** A line of the drawing with its ends at hand: an edge of the outline, or a split. */
export interface DrawnLine {
  readonly id: LineId;
  readonly kind: 'edge' | 'split';
  readonly from: DrawingPoint;
  readonly to: DrawingPoint;
}

const known = new WeakMap<Drawing, ReadonlyMap<LineId, DrawnLine>>();

/**
 * The drawing's lines by id, edges first. Drawings are never changed in place, so the answer is kept for as
 * long as the drawing is.
 */
export function drawnLines(drawing: Drawing): ReadonlyMap<LineId, DrawnLine> {
  const before = known.get(drawing);
  if (before !== undefined) return before;
  const lines = new Map<LineId, DrawnLine>();
  const { outline, points } = drawing;
  outline.forEach((corner, i) => {
    const from = points[corner];
    const to = points[outline[(i + 1) % outline.length]!];
    if (from !== undefined && to !== undefined) {
      lines.set(edgeId(corner), { id: edgeId(corner), kind: 'edge', from, to });
    }
  });
  for (const split of drawing.splits) {
    const from = points[split.from];
    const to = points[split.to];
    if (from !== undefined && to !== undefined)
      lines.set(split.id, { id: split.id, kind: 'split', from, to });
  }
  known.set(drawing, lines);
  return lines;
}

/** The lines that end in a point, edges first. */
export function linesEndingIn(drawing: Drawing, point: PointId): readonly DrawnLine[] {
  return [...drawnLines(drawing).values()].filter((line) => line.from.id === point || line.to.id === point);
}

/** The lines that a point is on by the drawing's own facts: those that end in it, and those it was placed on. */
export function linesThrough(drawing: Drawing, point: PointId): ReadonlySet<LineId> {
  const through = new Set(drawing.points[point]?.on ?? []);
  for (const line of linesEndingIn(drawing, point)) through.add(line.id);
  return through;
}
