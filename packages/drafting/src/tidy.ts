import type { Drawing, DrawingPoint, PointId } from '@seamwright/arrangement';

/** Takes out the points that are neither a corner of the outline nor an end of a split. */
export function withoutOrphans(drawing: Drawing): Drawing {
  const used = new Set<PointId>(drawing.outline);
  for (const { from, to } of drawing.splits) used.add(from).add(to);
  const entries = Object.entries(drawing.points);
  if (entries.every(([id]) => used.has(id))) return drawing;
  const points: Record<PointId, DrawingPoint> = Object.fromEntries(entries.filter(([id]) => used.has(id)));
  return { ...drawing, points };
}
