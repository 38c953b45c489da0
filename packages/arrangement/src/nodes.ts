import { distance, type Point, SAME_COORDINATE } from '@seamwright/geometry';
import { Cells } from './cells.ts';
import type { Drawing, PointId } from './drawing.ts';

/** Points of the drawing that are one place: a corner of the outline, or ends of splits that meet. */
export interface Node {
  readonly at: Point;
  /** Corners of the outline stay exactly where the maker put them. */
  readonly corner: boolean;
  readonly points: readonly PointId[];
}

export interface Nodes {
  readonly nodes: readonly Node[];
  readonly nodeOf: ReadonlyMap<PointId, number>;
}

/**
 * Gathers the drawing's points into nodes. A point that two lines share is one node by structure; points that
 * were drawn apart but lie within `snap` inches of a node that is already there join it.
 *
 * Corners come first, the other points in order of their coordinates, so the order in which the splits were
 * drawn does not matter.
 */
export function gatherNodes(drawing: Drawing, snap: number): Nodes {
  const nodes: { at: Point; corner: boolean; points: PointId[] }[] = [];
  const nodeOf = new Map<PointId, number>();
  const cells = new Cells(snap);

  const settle = (id: PointId, at: Point, corner: boolean) => {
    nodeOf.set(id, nodes.length);
    cells.add(nodes.length, at);
    nodes.push({ at: { x: at.x, y: at.y }, corner, points: [id] });
  };

  const nearest = (at: Point): number | undefined => {
    let best: number | undefined;
    let bestDistance = snap;
    for (const n of cells.near(at)) {
      const d = distance(nodes[n]!.at, at);
      if (d > bestDistance) continue;
      best = n;
      bestDistance = d;
    }
    return best;
  };

  for (const id of drawing.outline) if (!nodeOf.has(id)) settle(id, drawing.points[id]!, true);

  const ends = new Set(drawing.splits.flatMap((split) => [split.from, split.to]));
  const loose = [...ends].filter((id) => !nodeOf.has(id)).map((id) => drawing.points[id]!);
  loose.sort((p, q) => p.x - q.x || p.y - q.y);
  for (const point of loose) {
    const n = nearest(point);
    if (n === undefined) {
      settle(point.id, point, false);
    } else {
      nodes[n]!.points.push(point.id);
      nodeOf.set(point.id, n);
    }
  }

  // A node of several sloppy ends lies at their mean, so that none of them is favoured.
  for (const node of nodes) {
    if (node.corner) continue;
    const members = node.points.map((id) => drawing.points[id]!);
    if (members.every((p) => distance(p, node.at) <= SAME_COORDINATE)) continue;
    const sum = members.reduce((s, p) => ({ x: s.x + p.x, y: s.y + p.y }), { x: 0, y: 0 });
    node.at = { x: sum.x / members.length, y: sum.y / members.length };
  }
  return { nodes, nodeOf };
}
