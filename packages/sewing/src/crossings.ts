import type { Arrangement } from '@seamwright/arrangement';
import { patchesRound } from './contact.ts';
import type { Region } from './region.ts';

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
  const patchesAt = patchesRound(arrangement);
  const linesAt: number[][] = vertices.map(() => []);
  for (const { from, to, line } of edges) {
    linesAt[from]!.push(line);
    linesAt[to]!.push(line);
  }
  const straight = new Set<number>();
  for (const patch of patches) {
    patch.edges.forEach((edge, i) => {
      const before = patch.edges[(i + patch.edges.length - 1) % patch.edges.length]!;
      if (edges[edge]!.line === edges[before]!.line) straight.add(patch.ring[i]!);
    });
  }
  return vertices
    .filter(({ index }) => !straight.has(index) && !patchesAt[index]!.includes(-1))
    .map(({ index }) => {
      const lines = linesAt[index]!.filter((line, i, all) => all.indexOf(line) < i);
      return { vertex: index, patches: patchesAt[index]!, lines };
    })
    .sort((c, d) => c.lines.length - d.lines.length);
}

/** Lower bounds for regions of one block, each in a time that grows with the region and not with the block. */
export class CrossingBound {
  /** For each patch, the crossings of which it is the first. */
  private readonly firstOf = new Map<number, number[]>();

  constructor(private readonly crossings: readonly Crossing[]) {
    crossings.forEach(({ patches: [first] }, i) => {
      const own = this.firstOf.get(first!);
      if (own === undefined) this.firstOf.set(first!, [i]);
      else own.push(i);
    });
  }

  /**
   * A proved lower bound on the foundations of a region: one more than the crossings in it that have no line in common.
   *
   * Where all the patches round a crossing are joined, the last join that completes them is along one of its lines and
   * has two patches at least on either side, so it is no step of a section but a join of two units. One join is along one
   * line; crossings without a common line need one each. (Derived here; a packing bound for the hitting set.)
   */
  leastFoundations(region: Region, mask: Uint8Array): number {
    const within: number[] = [];
    for (const p of region) {
      for (const i of this.firstOf.get(p) ?? []) {
        if (this.crossings[i]!.patches.every((q) => mask[q] === 1)) within.push(i);
      }
    }
    // Those with the fewest lines first.
    within.sort((i, j) => i - j);
    const used = new Set<number>();
    let joins = 0;
    for (const i of within) {
      const { lines } = this.crossings[i]!;
      if (lines.some((line) => used.has(line))) continue;
      joins += 1;
      for (const line of lines) used.add(line);
    }
    return joins + 1;
  }
}
