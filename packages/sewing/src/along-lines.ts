import type { Arrangement } from '@seamwright/arrangement';
import { parameterOn } from '@seamwright/geometry';

/**
 * All edges of a block, line after line, along each in the line's direction. The place of an edge in that order is its rank;
 * the arrays are by rank, but for `rankOf`.
 */
export interface AlongLines {
  readonly edge: Int32Array;
  readonly line: Int32Array;
  /** The vertices at the ends of the edge, in the line's direction. */
  readonly start: Int32Array;
  readonly end: Int32Array;
  /** Whether the next rank goes on where this one ends, on the same line. */
  readonly goesOn: Uint8Array;
  /** For each edge, its rank. */
  readonly rankOf: Int32Array;
}

export function alongLines({ edges, lines, vertices }: Arrangement): AlongLines {
  const total = edges.length;
  // The edges of line l are those of the ranks `first[l]` … `first[l + 1] - 1`.
  const first = new Int32Array(lines.length + 1);
  for (const { line } of edges) first[line + 1]! += 1;
  for (let l = 0; l < lines.length; l += 1) first[l + 1]! += first[l]!;

  // For each edge, where it starts on its line, and whether that is its end `from`.
  const startsAt = new Float64Array(total);
  const forwards = new Uint8Array(total);
  const edge = new Int32Array(total);
  const free = first.slice();
  for (const { index, line, from, to } of edges) {
    const { a, b } = lines[line]!;
    const s = parameterOn(a, b, vertices[from]!.at);
    const t = parameterOn(a, b, vertices[to]!.at);
    startsAt[index] = Math.min(s, t);
    forwards[index] = s < t ? 1 : 0;
    edge[free[line]!] = index;
    free[line]! += 1;
  }
  for (let l = 0; l < lines.length; l += 1) {
    const own = edge.subarray(first[l]!, first[l + 1]!);
    if (!isAscending(own, startsAt)) own.sort((e, f) => startsAt[e]! - startsAt[f]!);
  }

  const [line, start, end] = [new Int32Array(total), new Int32Array(total), new Int32Array(total)];
  const rankOf = new Int32Array(total);
  for (let rank = 0; rank < total; rank += 1) {
    const { index, line: own, from, to } = edges[edge[rank]!]!;
    const runsOn = forwards[index] === 1;
    line[rank] = own;
    start[rank] = runsOn ? from : to;
    end[rank] = runsOn ? to : from;
    rankOf[index] = rank;
  }
  const goesOn = new Uint8Array(total);
  for (let rank = 0; rank + 1 < total; rank += 1)
    if (line[rank + 1] === line[rank] && start[rank + 1] === end[rank]) goesOn[rank] = 1;
  return { edge, line, start, end, goesOn, rankOf };
}

function isAscending(some: Int32Array, by: Float64Array): boolean {
  for (let i = 1; i < some.length; i += 1) if (by[some[i]!]! < by[some[i - 1]!]!) return false;
  return true;
}
