import type { Touching } from './contact.ts';
import type { Crossing } from './crossings.ts';
import type { Stretch } from './stretches.ts';

/** Lower bounds for regions of one block, each in a time that grows with the region and not with the block. */
export class JoinBound {
  /** For each vertex, which crossing it is, in their order; -1 where it is none. */
  private readonly crossingAt: Int32Array;

  constructor(
    private readonly touching: Touching,
    crossings: readonly Crossing[],
  ) {
    this.crossingAt = new Int32Array(touching.outer.length).fill(-1);
    crossings.forEach(({ vertex }, i) => {
      this.crossingAt[vertex] = i;
    });
  }

  isCrossing(vertex: number): boolean {
    return this.crossingAt[vertex] !== -1;
  }

  /**
   * A proved lower bound on the joins by which a region is put together, each of two units of two patches at least.
   *
   * A join is along one stretch of a line, from boundary to boundary of what it makes: within one of the region's own
   * stretches. Every vertex inside the region is passed by the join, or the step of a section, that completes the patches
   * round it.
   *
   * - Round a crossing, that is a join along one of its lines, for on either side there are two patches at least.
   * - Elsewhere one patch runs straight on, and the seam is the line that it runs along. Where two vertices follow each
   *   other on a line and it is not the same patch, nor the same side, there are two patches on either side again, so
   *   there is a join along that stretch whatever else is done.
   *
   * So there is a join for each stretch of the second kind, and for as many crossings as have no stretch in common
   * with them or with each other. (Derived here; a packing bound for the hitting set.)
   */
  leastJoins(stretches: readonly Stretch[]): number {
    const used = new Uint8Array(stretches.length);
    const through = new Map<number, number[]>();
    let joins = 0;
    stretches.forEach((stretch, i) => {
      if (this.hasPatchesOnBothSides(stretch)) {
        used[i] = 1;
        joins += 1;
      }
      for (let r = stretch.first; r < stretch.last; r += 1) {
        const crossing = this.crossingAt[this.touching.end[r]!]!;
        if (crossing === -1) continue;
        const own = through.get(crossing);
        if (own === undefined) through.set(crossing, [i]);
        else own.push(i);
      }
    });
    // Those with the fewest lines first.
    for (const crossing of [...through.keys()].sort((c, d) => c - d)) {
      const own = through.get(crossing)!;
      if (own.some((i) => used[i] === 1)) continue;
      joins += 1;
      for (const i of own) used[i] = 1;
    }
    return joins;
  }

  /** Whether, between two crossings, other seams end on both sides of a stretch. */
  hasPatchesOnBothSides({ first, last }: Stretch): boolean {
    const { end } = this.touching;
    let straight = -1;
    for (let r = first; r < last; r += 1) {
      if (this.isCrossing(end[r]!)) {
        straight = -1;
        continue;
      }
      const along = sharedSide(this.touching, r);
      if (straight !== -1 && along !== straight) return true;
      straight = along;
    }
    return false;
  }
}

/** The patch that lies along an edge and along the next one of the line, between patches that touch there. */
function sharedSide({ contactAt, owner, neighbour }: Touching, r: number): number {
  const [here, next] = [contactAt[r]!, contactAt[r + 1]!];
  const p = owner[here]!;
  return p === owner[next] || p === neighbour[next] ? p : neighbour[here]!;
}
