import type { Arrangement } from '@seamwright/arrangement';

/**
 * A vertex inside the block at which no patch runs straight on: the last join round it must be along a line right
 * through it, with at least two patches on either side.
 */
export interface Crossing {
  readonly vertex: number;
  /** The patches round it. */
  readonly patches: readonly number[];
  /** The lines that pass right through it. Without any, the patches round it cannot be sewn with straight seams. */
  readonly lines: readonly number[];
}

/** The crossings of a block, those with the fewest lines first. */
export function crossingsOf(arrangement: Arrangement): Crossing[] {
  const { vertices, edges, patches } = arrangement;
  const linesAt: number[][] = vertices.map(() => []);
  const patchesAt: Set<number>[] = vertices.map(() => new Set());
  for (const { from, to, line, left, right } of edges) {
    for (const v of [from, to]) {
      linesAt[v]!.push(line);
      patchesAt[v]!.add(left).add(right);
    }
  }
  const straight = new Set<number>();
  for (const patch of patches) {
    patch.edges.forEach((edge, i) => {
      const before = patch.edges[(i + patch.edges.length - 1) % patch.edges.length]!;
      if (edges[edge]!.line === edges[before]!.line) straight.add(patch.ring[i]!);
    });
  }
  return vertices
    .filter(({ index }) => !patchesAt[index]!.has(-1) && !straight.has(index))
    .map(({ index }) => {
      const lines = linesAt[index]!.filter((line, i, all) => all.indexOf(line) < i);
      return { vertex: index, patches: [...patchesAt[index]!], lines };
    })
    .sort((c, d) => c.lines.length - d.lines.length);
}

/**
 * A proved lower bound on the foundations of a region: one more than the crossings in it that have no line in common.
 *
 * Where all the patches round a crossing are joined, the last join that completes them is along one of its lines and has
 * two patches at least on either side, so it is no step of a section but a join of two units. One join is along one line;
 * crossings without a common line need one each. (Derived here; a packing bound for the hitting set.)
 */
export function leastFoundations(crossings: readonly Crossing[], mask: Uint8Array): number {
  const used = new Set<number>();
  let joins = 0;
  for (const { patches, lines } of crossings) {
    if (lines.some((line) => used.has(line)) || patches.some((p) => mask[p] === 0)) continue;
    joins += 1;
    for (const line of lines) used.add(line);
  }
  return joins + 1;
}
