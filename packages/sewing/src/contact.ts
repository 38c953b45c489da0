import { type Arrangement, across } from '@seamwright/arrangement';
import { parameterOn, type Segment } from '@seamwright/geometry';
import { type AlongLines, alongLines } from './along-lines.ts';
import { type Corners, cornersOf } from './corners.ts';

/**
 * Who touches whom: all that peeling looks at, in flat arrays. Objects of a large block lie about in memory; of these arrays
 * whoever walks from patch to patch finds the next entries beside those before.
 *
 * A contact is one edge as seen by one of the two patches that share it. The contacts of patch p have the numbers `first[p]` up
 * to `first[p + 1]`, in the order of its ring; edges on the block's outline are none. The arrays are by contact.
 */
export interface Contacts extends Corners {
  /** How many patches there are. */
  readonly count: number;
  readonly first: Int32Array;
  /** The patch on the other side; {@link nobody} where the seam is left open. */
  readonly neighbour: Int32Array;
  /** The edge, by its rank along the lines. */
  readonly rank: Int32Array;
  /** The line, by its number among those on which its own patch touches anything; they are numbered from `first[p]` on. */
  readonly slot: Int32Array;
  /** The same line by its number among the neighbour's. */
  readonly slotAcross: Int32Array;
  /** The corner between a contact and the patch's next one; -1 where they do not follow each other. */
  readonly cornerAfter: Int32Array;
}

/**
 * Who touches whom in a block, on which line: all that sewability depends on. Coordinates play no part; which edges lie on one
 * straight line was settled by the arrangement. Corners are the block's vertices.
 */
export interface Touching extends Contacts, AlongLines {
  /** For each contact, its own patch. */
  readonly owner: Int32Array;
  /** For each contact, the neighbour's along the same edge. */
  readonly twin: Int32Array;
  /** For each rank, the contact along it that the lesser of the two patches has; -1 where nobody touches. */
  readonly contactAt: Int32Array;
}

/** The number that stands for no patch: the one after the last. Masks have a place for it, which is never filled. */
export const nobody = ({ count }: Contacts): number => count;

/** One contact by itself. */
export interface Contact {
  readonly edge: number;
  readonly line: number;
  readonly neighbour: number;
}

/** The contacts of a patch one by one, for what is not done to all patches of a large block. */
export function contactsOf(touching: Contacts & AlongLines, patch: number): Contact[] {
  const { first, neighbour, rank, edge, line } = touching;
  const own: Contact[] = [];
  for (let c = first[patch]!; c < first[patch + 1]!; c += 1) {
    if (neighbour[c] === nobody(touching)) continue;
    own.push({ edge: edge[rank[c]!]!, line: line[rank[c]!]!, neighbour: neighbour[c]! });
  }
  return own;
}

/** The patches that touch one, one for each contact. */
export const neighboursOf = ({ first, neighbour }: Contacts, patch: number): Int32Array =>
  neighbour.subarray(first[patch]!, first[patch + 1]!);

export function touching(arrangement: Arrangement): Touching {
  const { patches, edges, lines } = arrangement;
  const count = patches.length;
  const along = alongLines(arrangement);
  const first = new Int32Array(count + 1);
  for (const { left, right } of edges) {
    if (left < 0 || right < 0) continue;
    first[left + 1]! += 1;
    first[right + 1]! += 1;
  }
  for (let p = 0; p < count; p += 1) first[p + 1]! += first[p]!;
  const total = first[count]!;
  const [owner, neighbour] = [new Int32Array(total), new Int32Array(total)];
  const [rank, slot] = [new Int32Array(total), new Int32Array(total)];
  const [slotAcross, cornerAfter] = [new Int32Array(total), new Int32Array(total)];
  const twin = new Int32Array(total);
  const contactAt = new Int32Array(edges.length).fill(-1);
  // For each line, its number among those of the patch that is looked at; -1 where it is none.
  const slotOf = new Int32Array(lines.length).fill(-1);
  for (let p = 0; p < count; p += 1) {
    let c = first[p]!;
    let free = c;
    for (const edge of patches[p]!.border) {
      const other = across(arrangement, edge, p);
      if (other < 0) continue;
      const r = along.rankOf[edge]!;
      const line = along.line[r]!;
      if (slotOf[line] === -1) {
        slotOf[line] = free;
        free += 1;
      }
      owner[c] = p;
      neighbour[c] = other;
      rank[c] = r;
      slot[c] = slotOf[line]!;
      if (contactAt[r] === -1) contactAt[r] = c;
      else {
        const before = contactAt[r]!;
        twin[c] = before;
        twin[before] = c;
        slotAcross[c] = slot[before]!;
        slotAcross[before] = slot[c]!;
      }
      c += 1;
    }
    for (let own = first[p]!; own < c; own += 1) {
      slotOf[along.line[rank[own]!]!] = -1;
      const next = own + 1 === c ? first[p]! : own + 1;
      cornerAfter[own] = own === next ? -1 : sharedEnd(along, rank[own]!, rank[next]!);
    }
  }
  return {
    ...{ count, first, neighbour, rank, slot, slotAcross, cornerAfter },
    ...cornersOf(arrangement),
    ...along,
    ...{ owner, twin, contactAt },
  };
}

/** The vertex that two edges share, or -1. */
function sharedEnd({ start, end }: AlongLines, r: number, s: number): number {
  if (start[r] === start[s] || start[r] === end[s]) return start[r]!;
  return end[r] === start[s] || end[r] === end[s] ? end[r]! : -1;
}

/** The straight run from the first to the last of some edges of one line. */
export function runOf(arrangement: Arrangement, line: number, edges: readonly number[]): Segment {
  const { a, b } = arrangement.lines[line]!;
  const ends = edges.flatMap((e) => {
    const { from, to } = arrangement.edges[e]!;
    return [arrangement.vertices[from]!.at, arrangement.vertices[to]!.at];
  });
  ends.sort((p, q) => parameterOn(a, b, p) - parameterOn(a, b, q));
  return { a: ends[0]!, b: ends.at(-1)! };
}
