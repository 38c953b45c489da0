import type { Arrangement } from '@seamwright/arrangement';
import {
  boundingBox,
  distance,
  type Point,
  pointAt,
  SAME_COORDINATE,
  type Segment,
  segmentCrossing,
} from '@seamwright/geometry';

/** A seam's end as the structure has it: which line, and the vertex where it ends. */
export interface SeamEnd {
  readonly line: number;
  readonly vertex: number;
  /** The vertex at its other end. */
  readonly start: number;
}

/** Finds a seam of a finding's ring in the arrangement that the finding came from; null where it is not there. */
export function seamEndOf({ vertices }: Arrangement, { a, b }: Segment): SeamEnd | null {
  const vertexAt = (p: Point) => vertices.find(({ at }) => at.x === p.x && at.y === p.y);
  const [from, to] = [vertexAt(a), vertexAt(b)];
  if (from === undefined || to === undefined) return null;
  const line = from.lines.find((l) => to.lines.includes(l));
  return line === undefined ? null : { line, vertex: to.index, start: from.index };
}

/** Where the straight way on from a seam's end meets something. */
export interface Stop {
  readonly at: Point;
  /** Inches from the seam's end. */
  readonly length: number;
  /** The edge met; of several, any. */
  readonly edge: number;
  /** The vertex met, or -1 in the middle of an edge. */
  readonly vertex: number;
  readonly onOutline: boolean;
}

/** Everything that the straight way on from a seam's end meets, from the nearest to the edge of the block. */
export function stopsAhead(arrangement: Arrangement, { line, vertex, start }: SeamEnd): Stop[] {
  const { vertices, edges, outline } = arrangement;
  const from = vertices[vertex]!.at;
  const back = vertices[start]!.at;
  const { minX, minY, maxX, maxY } = boundingBox(outline);
  const reach = maxX - minX + maxY - minY;
  const far = pointAt(from, back, -reach / distance(from, back));
  const stops: Stop[] = [];
  for (const edge of edges) {
    if (edge.line === line || edge.from === vertex || edge.to === vertex) continue;
    const [p, q] = [vertices[edge.from]!.at, vertices[edge.to]!.at];
    const hit = segmentCrossing(from, far, p, q);
    if (hit === null) continue;
    const met = [edge.from, edge.to].find((v) => distance(vertices[v]!.at, hit.at) <= SAME_COORDINATE) ?? -1;
    const onOutline = edge.left < 0 || edge.right < 0;
    stops.push({ at: hit.at, length: distance(from, hit.at), edge: edge.index, vertex: met, onOutline });
  }
  stops.sort((s, t) => s.length - t.length || Number(t.onOutline) - Number(s.onOutline) || s.edge - t.edge);
  const apart = stops.filter((stop, i) => i === 0 || stop.length - stops[i - 1]!.length > SAME_COORDINATE);
  const last = apart.findIndex(({ onOutline }) => onOutline);
  return last < 0 ? apart : apart.slice(0, last + 1);
}

/** The vertices along a line from one of its vertices, as far as it is drawn without a gap; nearest first, both ways. */
export function alongLine({ edges, vertices }: Arrangement, line: number, vertex: number): number[] {
  const found: number[] = [];
  const open = [vertex];
  for (const here of open) {
    for (const edge of edges) {
      if (edge.line !== line || (edge.from !== here && edge.to !== here)) continue;
      const next = edge.from === here ? edge.to : edge.from;
      if (next === vertex || found.includes(next)) continue;
      found.push(next);
      open.push(next);
    }
  }
  const at = vertices[vertex]!.at;
  return found.sort((v, w) => distance(vertices[v]!.at, at) - distance(vertices[w]!.at, at) || v - w);
}
