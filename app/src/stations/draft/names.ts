import type { Drawing, LineId, PointId } from '@seamwright/arrangement';
import { drawnLines } from '@seamwright/drafting';

/** What points and lines are called in lists: corners and edges by their place in the outline, the others by age. */
export interface Names {
  readonly points: ReadonlyMap<PointId, string>;
  readonly lines: ReadonlyMap<LineId, string>;
}

const known = new WeakMap<Drawing, Names>();

export function namesOf(drawing: Drawing): Names {
  const before = known.get(drawing);
  if (before !== undefined) return before;
  const points = new Map(drawing.outline.map((id, i) => [id, `Corner ${i + 1}`]));
  let ends = 0;
  for (const id of Object.keys(drawing.points)) if (!points.has(id)) points.set(id, `End ${++ends}`);
  const lines = new Map<LineId, string>();
  const counts = { edge: 0, split: 0 };
  for (const { id, kind } of drawnLines(drawing).values()) {
    counts[kind] += 1;
    lines.set(id, kind === 'edge' ? `Edge ${counts.edge}` : `Line ${counts.split}`);
  }
  const names = { points, lines };
  known.set(drawing, names);
  return names;
}
