import {
  type Arrangement,
  across,
  type Drawing,
  type Edge,
  inches,
  type LineId,
  placeOn,
  say,
} from '@seamwright/arrangement';
import { distance, midpoint, type Point, parameterOn, SNAP_DISTANCE } from '@seamwright/geometry';
import type { Candidate } from './candidate.ts';
import { DrawingEdit } from './edit.ts';

/**
 * The ways of making one patch of two on both sides of a line that ends at one of some vertices: the stretch of it there is taken
 * away. (What passes through a vertex of a ring of seams keeps the ring, whichever patches beside it become one.)
 */
export function mergesAtEnds(
  drawing: Drawing,
  arrangement: Arrangement,
  vertices: readonly number[],
): Candidate[] {
  const here = new Set(vertices);
  /** For each vertex and line, how many edges of the line are there. */
  const edgesAt = new Map<string, number>();
  const key = (vertex: number, line: number) => `${vertex} ${line}`;
  for (const { from, to, line } of arrangement.edges) {
    for (const vertex of [from, to]) {
      if (here.has(vertex)) edgesAt.set(key(vertex, line), (edgesAt.get(key(vertex, line)) ?? 0) + 1);
    }
  }
  const ends = ({ from, to, line }: Edge) => [from, to].some((v) => edgesAt.get(key(v, line)) === 1);
  return merges(drawing, arrangement, ends);
}

/** The ways of making one patch of one of some patches and a neighbour. */
export const mergesOf = (
  drawing: Drawing,
  arrangement: Arrangement,
  patches: readonly number[],
): Candidate[] =>
  merges(drawing, arrangement, ({ left, right }) => patches.includes(left) || patches.includes(right));

function merges(drawing: Drawing, arrangement: Arrangement, mayGo: (edge: Edge) => boolean): Candidate[] {
  const pairs = new Map<string, readonly [number, number]>();
  for (const edge of arrangement.edges) {
    const pair = [Math.min(edge.left, edge.right), Math.max(edge.left, edge.right)] as const;
    if (pair[0] >= 0 && mayGo(edge)) pairs.set(pair.join(' '), pair);
  }
  return [...pairs.values()].flatMap((pair) => merge(drawing, arrangement, pair) ?? []);
}

function merge(
  drawing: Drawing,
  arrangement: Arrangement,
  [p, q]: readonly [number, number],
): Candidate | null {
  const { edges, vertices, outline } = arrangement;
  const shared = arrangement.patches[p]!.border.filter((edge) => across(arrangement, edge, p) === q);
  const { line } = edges[shared[0]!]!;
  if (shared.some((edge) => edges[edge]!.line !== line)) return null;
  const ends = shared.flatMap((edge) => [edges[edge]!.from, edges[edge]!.to]);
  const outer = ends.filter((v) => ends.indexOf(v) === ends.lastIndexOf(v));
  if (outer.length !== 2) return null;
  const [a, b] = outer.map((v) => vertices[v]!.at) as [Point, Point];
  return {
    kind: 'merge',
    message: say`Take away ${inches(distance(a, b))} of line at ${placeOn(midpoint(a, b), outline)}, so that the patches on its two sides become one`,
    drawing: withoutStretch(drawing, arrangement, line, outer as [number, number], shared),
    splits: [],
    patches: -1,
    seamLength: -distance(a, b),
    takesAway: true,
  };
}

/** The drawing without a stretch of a line between two vertices; what is left of the splits there stays. */
function withoutStretch(
  drawing: Drawing,
  arrangement: Arrangement,
  line: number,
  stretch: readonly [number, number],
  edges: readonly number[],
): Drawing {
  const edit = new DrawingEdit(drawing);
  const { a, b } = arrangement.lines[line]!;
  const size = distance(a, b);
  const along = (at: Point) => parameterOn(a, b, at) * size;
  const [first, last] = [...stretch].sort(
    (v, w) => along(arrangement.vertices[v]!.at) - along(arrangement.vertices[w]!.at),
  ) as [number, number];
  const drawn = new Set<LineId>(edges.flatMap((edge) => arrangement.edges[edge]!.drawn));
  const { members } = arrangement.lines[line]!;
  for (const id of drawn) {
    const split = edit.split(id);
    if (split === undefined) continue;
    const forwards = along(edit.at(split.from)) < along(edit.at(split.to));
    const [low, high] = forwards ? [split.from, split.to] : [split.to, split.from];
    const [gapStart, gapEnd] = [first, last].map((v) => along(arrangement.vertices[v]!.at)) as [
      number,
      number,
    ];
    const before = gapStart - along(edit.at(low)) > SNAP_DISTANCE;
    const after = along(edit.at(high)) - gapEnd > SNAP_DISTANCE;
    const cutAt = (vertex: number) => edit.pointAtVertex(arrangement, vertex, members);
    if (!before && !after) {
      edit.remove(id);
    } else if (!after) {
      edit.setEnd(id, forwards ? 'to' : 'from', cutAt(first));
    } else {
      if (!before) {
        edit.setEnd(id, forwards ? 'from' : 'to', cutAt(last));
        continue;
      }
      edit.setEnd(id, forwards ? 'to' : 'from', cutAt(first));
      const rest = edit.addSplit(cutAt(last), high);
      for (const point of edit.placedOn(id)) {
        if (along(point) >= gapEnd - SNAP_DISTANCE) {
          edit.setFacts(
            point.id,
            (point.on ?? []).map((other) => (other === id ? rest : other)),
          );
        }
      }
    }
  }
  return edit.finish();
}
