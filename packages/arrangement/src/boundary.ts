import { type Polygon, SAME_COORDINATE, withoutFlatCorners } from '@seamwright/geometry';
import type { Arrangement } from './types.ts';

/** The patch on the other side of `edge` from `patch`; -1 outside the block. */
export function across(arrangement: Arrangement, edge: number, patch: number): number {
  const { left, right } = arrangement.edges[edge]!;
  return left === patch ? right : left;
}

/**
 * The outer boundary of a connected set of patches without holes: its vertices in order, clockwise on the screen,
 * those on straight runs too. Read off the structure, no coordinates are computed.
 */
export function boundaryRing(arrangement: Arrangement, patches: ReadonlySet<number>): number[] {
  const isBorder = (patch: number, edge: number) => !patches.has(across(arrangement, edge, patch));
  const positions = new Map<number, Map<number, number>>();
  for (const p of patches) {
    positions.set(p, new Map(arrangement.patches[p]!.edges.map((edge, i) => [edge, i])));
  }
  const after = (patch: number, edge: number): number => {
    const { edges } = arrangement.patches[patch]!;
    return edges[(positions.get(patch)!.get(edge)! + 1) % edges.length]!;
  };
  const originOf = (patch: number, edge: number): number =>
    arrangement.patches[patch]!.ring[positions.get(patch)!.get(edge)!]!;

  const start = startOfBoundary(arrangement, patches, isBorder);
  if (start === null) return [];
  const ring: number[] = [];
  let { patch, edge } = start;
  do {
    ring.push(originOf(patch, edge));
    edge = after(patch, edge);
    while (!isBorder(patch, edge)) {
      patch = across(arrangement, edge, patch);
      edge = after(patch, edge);
    }
  } while (patch !== start.patch || edge !== start.edge);
  return ring;
}

/** A boundary edge that leaves the topmost, then leftmost vertex: it is on the outer boundary, not on a hole's. */
function startOfBoundary(
  arrangement: Arrangement,
  patches: ReadonlySet<number>,
  isBorder: (patch: number, edge: number) => boolean,
): { patch: number; edge: number } | null {
  let best: { patch: number; edge: number; vertex: number } | null = null;
  for (const p of patches) {
    const { edges, ring } = arrangement.patches[p]!;
    edges.forEach((edge, i) => {
      // Vertices are numbered from the top down, from left to right.
      if (isBorder(p, edge) && (best === null || ring[i]! < best.vertex))
        best = { patch: p, edge, vertex: ring[i]! };
    });
  }
  return best;
}

/** The corners of a ring of vertices: without those at which it runs straight on along one line. */
export const cornersOfRing = ({ vertices }: Arrangement, ring: readonly number[]): Polygon =>
  withoutFlatCorners(
    ring.map((v) => vertices[v]!.at),
    SAME_COORDINATE,
  );
