import { type Arrangement, across } from '@seamwright/arrangement';
import { parameterOn, type Segment } from '@seamwright/geometry';

/** One edge that a patch shares with a neighbour. */
export interface Contact {
  readonly edge: number;
  readonly line: number;
  readonly neighbour: number;
  /** The number of this line among the lines on which the patch touches anything: index into `linesOf[patch]`. */
  readonly slot: number;
}

/**
 * Who touches whom, on which line: all that sewability depends on. Coordinates play no part; which edges lie on one
 * straight line was settled by the arrangement.
 */
export interface Touching {
  readonly count: number;
  /** For each patch, its shared edges in the order of its ring; edges on the block's outline are left out. */
  readonly contacts: readonly (readonly Contact[])[];
  /** For each patch, the different lines of its contacts. */
  readonly linesOf: readonly (readonly number[])[];
  /** For each vertex, the patches round it; -1 stands for the outside of the block. */
  readonly around: readonly (readonly number[])[];
  /** The vertex that two edges share, or -1. */
  readonly sharedVertex: (edge: number, other: number) => number;
  /** All edges, line after line, along each in the line's direction. */
  readonly alongLines: readonly AlongLine[];
  /** For each edge, its place in `alongLines`. */
  readonly rankOf: readonly number[];
}

/** An edge as part of its line. */
export interface AlongLine {
  readonly edge: number;
  readonly line: number;
  /** The vertices at its ends, in the line's direction. */
  readonly start: number;
  readonly end: number;
}

export function touching(arrangement: Arrangement): Touching {
  const { patches, edges, lines } = arrangement;
  const linesOf: number[][] = [];
  // For each line, its number among those of the patch that is looked at.
  const slotOf = new Int32Array(lines.length).fill(-1);
  // Filled anew for each patch, and kept as a copy: an array that has grown holds room for more, which a large block has
  // none to spare for.
  const own: number[] = [];
  const shared: Contact[] = [];
  const contacts = patches.map(({ index, border }) => {
    own.length = 0;
    shared.length = 0;
    for (const edge of border) {
      const neighbour = across(arrangement, edge, index);
      if (neighbour < 0) continue;
      const { line } = edges[edge]!;
      if (slotOf[line] === -1) slotOf[line] = own.push(line) - 1;
      shared.push({ edge, line, neighbour, slot: slotOf[line]! });
    }
    for (const line of own) slotOf[line] = -1;
    linesOf.push(own.slice());
    return shared.slice();
  });
  const alongLines = sortedAlongLines(arrangement);
  const rankOf = edges.map(() => 0);
  alongLines.forEach(({ edge }, rank) => {
    rankOf[edge] = rank;
  });
  return {
    count: patches.length,
    alongLines,
    rankOf,
    contacts,
    linesOf,
    around: patchesRound(arrangement),
    sharedVertex: (e, f) => {
      const { from, to } = edges[e]!;
      const other = edges[f]!;
      if (from === other.from || from === other.to) return from;
      return to === other.from || to === other.to ? to : -1;
    },
  };
}

/** For each vertex, the patches round it, each once; -1 stands for the outside. */
export function patchesRound({ vertices, edges }: Arrangement): number[][] {
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
    for (const vertex of [from, to]) {
      edgesAt[free[vertex]!] = index;
      free[vertex]! += 1;
    }
  }
  const round: number[] = [];
  return vertices.map(({ index }) => {
    round.length = 0;
    for (let i = first[index]!; i < first[index + 1]!; i += 1) {
      const { left, right } = edges[edgesAt[i]!]!;
      if (!round.includes(left)) round.push(left);
      if (!round.includes(right)) round.push(right);
    }
    return round.slice();
  });
}

function sortedAlongLines({ edges, lines, vertices }: Arrangement): AlongLine[] {
  const onLine: number[][] = lines.map(() => []);
  // For each edge, where it starts on its line, and whether that is its end `from`.
  const startsAt = new Float64Array(edges.length);
  const forwards = new Uint8Array(edges.length);
  for (const { index, line, from, to } of edges) {
    const { a, b } = lines[line]!;
    const s = parameterOn(a, b, vertices[from]!.at);
    const t = parameterOn(a, b, vertices[to]!.at);
    startsAt[index] = Math.min(s, t);
    forwards[index] = s < t ? 1 : 0;
    onLine[line]!.push(index);
  }
  return onLine.flatMap((own, line) =>
    own
      .sort((e, f) => startsAt[e]! - startsAt[f]!)
      .map((edge) => {
        const { from, to } = edges[edge]!;
        return forwards[edge] === 1
          ? { edge, line, start: from, end: to }
          : { edge, line, start: to, end: from };
      }),
  );
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
