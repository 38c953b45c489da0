import type { Arrangement } from '@seamwright/arrangement';
import { cornersOf, patchesRound } from './corners.ts';

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
  const corners = cornersOf(arrangement);
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
    .filter(({ index }) => !straight.has(index) && corners.outer[index] === 0)
    .map(({ index }) => {
      const lines = linesAt[index]!.filter((line, i, all) => all.indexOf(line) < i);
      return { vertex: index, patches: [...patchesRound(corners, index)], lines };
    })
    .sort((c, d) => c.lines.length - d.lines.length);
}
