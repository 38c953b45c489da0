import type { Arrangement } from '@seamwright/arrangement';

/** The patches round each corner: a vertex of the block, or what is left of one where only some patches are looked at. */
export interface Corners {
  /** For each corner, the place in `around` of the first patch round it; one place more for the end. */
  readonly aroundFirst: Int32Array;
  /** Each patch round a corner once. */
  readonly around: Int32Array;
  /** For each corner, 1 where it lies on the outside of the block or on a seam that is left open. */
  readonly outer: Uint8Array;
}

/** The corners of a block: its vertices, by their numbers. */
export function cornersOf({ vertices, edges }: Arrangement): Corners {
  // The edges at vertex v are `edgesAt[first[v]]` … `edgesAt[first[v + 1] - 1]`.
  const first = new Int32Array(vertices.length + 1);
  for (const { from, to } of edges) {
    first[from + 1]! += 1;
    first[to + 1]! += 1;
  }
  for (let v = 0; v < vertices.length; v += 1) first[v + 1]! += first[v]!;
  const free = first.slice();
  const edgesAt = new Int32Array(2 * edges.length);
  for (const { index, from, to } of edges) {
    edgesAt[free[from]!] = index;
    free[from]! += 1;
    edgesAt[free[to]!] = index;
    free[to]! += 1;
  }

  const aroundFirst = new Int32Array(vertices.length + 1);
  // Between the edges at a vertex there are no more patches than edges.
  const around = new Int32Array(edgesAt.length);
  const outer = new Uint8Array(vertices.length);
  let end = 0;
  const add = (vertex: number, patch: number) => {
    if (patch < 0) {
      outer[vertex] = 1;
      return;
    }
    for (let i = aroundFirst[vertex]!; i < end; i += 1) if (around[i] === patch) return;
    around[end] = patch;
    end += 1;
  };
  for (let v = 0; v < vertices.length; v += 1) {
    for (let i = first[v]!; i < first[v + 1]!; i += 1) {
      const { left, right } = edges[edgesAt[i]!]!;
      add(v, left);
      add(v, right);
    }
    aroundFirst[v + 1] = end;
  }
  return { aroundFirst, around: around.slice(0, end), outer };
}

/** The patches round a corner. */
export const patchesRound = ({ aroundFirst, around }: Corners, corner: number): Int32Array =>
  around.subarray(aroundFirst[corner]!, aroundFirst[corner + 1]!);

/** Whether a corner lies inside the region of a mask, not on its boundary: all patches round it are in the mask. */
export function isInside({ aroundFirst, around, outer }: Corners, mask: Uint8Array, corner: number): boolean {
  if (outer[corner] === 1) return false;
  for (let i = aroundFirst[corner]!; i < aroundFirst[corner + 1]!; i += 1)
    if (mask[around[i]!] === 0) return false;
  return true;
}
