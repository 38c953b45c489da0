import type { Touching } from './contact.ts';
import type { Region } from './region.ts';

/**
 * Who touches whom, laid out in flat arrays for the innermost loops of the search.
 *
 * A contact has a number here: those of patch p are `first[p]` up to `first[p + 1]`, in the order of its ring. An edge is
 * known by its rank along the lines ({@link Touching.rankOf}).
 */
export interface FlatTouching {
  readonly first: Int32Array;
  readonly owner: Int32Array;
  readonly neighbour: Int32Array;
  readonly rank: Int32Array;
  readonly slot: Int32Array;
  /** The neighbour's contact along the same edge. */
  readonly twin: Int32Array;
  /** The vertex between a contact and the patch's next one; -1 where they do not follow each other. */
  readonly vertexAfter: Int32Array;
  /** For each rank, the vertices at its ends, in the line's direction. */
  readonly start: Int32Array;
  readonly end: Int32Array;
  /** For each rank, whether the next rank goes on where it ends, on the same line. */
  readonly goesOn: Uint8Array;
  /** For each rank, the two patches that touch there, at twice the rank and the place after it; -1 where none do. */
  readonly sides: Int32Array;
  /** For each vertex, the place in `around` of the first patch round it; one place more for the end. */
  readonly aroundFirst: Int32Array;
  readonly around: Int32Array;
}

/** Lays out who touches whom as it is now. */
export function flatten(touching: Touching): FlatTouching {
  const { count, contacts, alongLines, rankOf, sharedVertex } = touching;
  const first = new Int32Array(count + 1);
  for (let p = 0; p < count; p += 1) first[p + 1] = first[p]! + contacts[p]!.length;
  const total = first[count]!;
  const [owner, neighbour] = [new Int32Array(total), new Int32Array(total)];
  const [rank, slot] = [new Int32Array(total), new Int32Array(total)];
  const [twin, vertexAfter] = [new Int32Array(total).fill(-1), new Int32Array(total).fill(-1)];
  const sides = new Int32Array(2 * alongLines.length).fill(-1);
  const contactAt = new Int32Array(alongLines.length).fill(-1);
  for (let p = 0; p < count; p += 1) {
    const own = contacts[p]!;
    own.forEach((contact, i) => {
      const c = first[p]! + i;
      const r = rankOf[contact.edge]!;
      owner[c] = p;
      neighbour[c] = contact.neighbour;
      rank[c] = r;
      slot[c] = contact.slot;
      if (own.length > 1) vertexAfter[c] = sharedVertex(contact.edge, own[(i + 1) % own.length]!.edge);
      const other = contactAt[r]!;
      if (other === -1) contactAt[r] = c;
      else {
        twin[c] = other;
        twin[other] = c;
      }
      sides[2 * r] = Math.min(p, contact.neighbour);
      sides[2 * r + 1] = Math.max(p, contact.neighbour);
    });
  }
  return {
    ...{ first, owner, neighbour, rank, slot, twin, vertexAfter, sides },
    start: Int32Array.from(alongLines, ({ start }) => start),
    end: Int32Array.from(alongLines, ({ end }) => end),
    goesOn: Uint8Array.from(alongLines, ({ line, end }, r) => {
      const next = alongLines[r + 1];
      return next !== undefined && next.line === line && next.start === end ? 1 : 0;
    }),
    ...flatAround(touching),
  };
}

function flatAround({ around }: Touching): Pick<FlatTouching, 'aroundFirst' | 'around'> {
  const aroundFirst = new Int32Array(around.length + 1);
  around.forEach((patches, v) => {
    aroundFirst[v + 1] = aroundFirst[v]! + patches.length;
  });
  return { aroundFirst, around: Int32Array.from(around.flat()) };
}

/** Whether all patches round a vertex are in the mask: it lies inside the region, not on its boundary. */
export function isInside({ aroundFirst, around }: FlatTouching, mask: Uint8Array, vertex: number): boolean {
  for (let i = aroundFirst[vertex]!; i < aroundFirst[vertex + 1]!; i += 1) {
    const p = around[i]!;
    if (p < 0 || mask[p] === 0) return false;
  }
  return true;
}

/** The ranks of the edges along which patches of a region touch each other, ascending. */
export function ranksWithin(
  { first, neighbour, rank }: FlatTouching,
  region: Region,
  mask: Uint8Array,
): Int32Array {
  let count = 0;
  for (const p of region) {
    for (let c = first[p]!; c < first[p + 1]!; c += 1)
      if (p < neighbour[c]! && mask[neighbour[c]!] === 1) count += 1;
  }
  const ranks = new Int32Array(count);
  let at = 0;
  for (const p of region) {
    for (let c = first[p]!; c < first[p + 1]!; c += 1) {
      if (p < neighbour[c]! && mask[neighbour[c]!] === 1) {
        ranks[at] = rank[c]!;
        at += 1;
      }
    }
  }
  return ranks.sort();
}
