import { neighboursOf } from '../contact.ts';
import type { OrderCosts, OrderWeights } from '../types.ts';
import { SewnSoFar } from './far-side.ts';
import type { Piecing } from './piecing.ts';
import { stepOnto } from './step.ts';

/**
 * How much each cost counts where the maker says nothing.
 *
 * - A dark allowance under a light patch is seen for as long as the quilt lasts: it outweighs any trouble in the making.
 * - A fold that is not clean makes the sewer tear paper off stitches already sewn: a minute's work, and stitches that may
 *   give; as bad as several jumps.
 * - A jump is a look for the next number and a turn of the paper.
 */
export const DEFAULT_WEIGHTS: OrderWeights = { showThrough: 20, uncleanFolds: 5, jumps: 1 };

/** The costs as one figure: the lower, the better the order. */
export const weigh = (costs: OrderCosts, weights: OrderWeights): number =>
  costs.showThrough * weights.showThrough +
  costs.uncleanFolds * weights.uncleanFolds +
  costs.jumps * weights.jumps;

/**
 * What a good order costs, counted step by step as it is sewn.
 *
 * - `showThrough`: steps whose patch is lighter than one that it is sewn to. Both allowances of a seam lie under the newer
 *   patch, so the darker one lies under the lighter. Patches of unknown shade do not count.
 * - `uncleanFolds`: steps whose sew line, drawn on right across the paper, passes through patches already sewn: the paper
 *   cannot be folded along it. So it is when a corner of theirs lies on the new patch's side of it, neither on the line by
 *   the drawing nor within `STRAIGHT_WITHIN`. In a convex section there are none: what is left of it when a patch comes
 *   off along one line is its part on the other side of that line, convex again.
 * - `jumps`: steps, from the third patch on, to a patch that neither touches the one sewn just before nor, in this section,
 *   a neighbour of that.
 *
 * Fabric and thread are no costs of an order: what is cut depends on the patches alone, and what is sewn is the same in every
 * order. For each seam is sewn exactly once, when the later of its two patches is sewn on, and no sew line is longer than the
 * seams on it. (Between two stretches of one sew line there would be a gap, closed in by the patch and those it is sewn to. In a
 * section without holes other patches fill it later; but the last of them touches what is there all round, not along one line.)
 */
export function costsOf(piecing: Piecing, order: readonly number[]): OrderCosts {
  const { touching } = piecing;
  const near = new Neighbourhoods(piecing);
  const soFar = new SewnSoFar(piecing);
  const sewn = new Uint8Array(touching.count);
  let [showThrough, uncleanFolds, jumps] = [0, 0, 0];
  order.forEach((patch, k) => {
    if (k > 0) {
      const step = stepOnto(piecing, patch, sewn);
      if (step.showsThrough) showThrough += 1;
      if (soFar.isCrossedBy(step)) uncleanFolds += 1;
      if (!near.areNear(order[k - 1]!, patch)) jumps += 1;
    }
    sewn[patch] = 1;
    soFar.add(patch);
  });
  return { showThrough, uncleanFolds, jumps };
}

/** Which patches touch, or have a neighbour in common. */
export class Neighbourhoods {
  /** The patches that touch the one with this mark are marked with its number. */
  private readonly mark: Int32Array;
  private marked = -1;

  constructor(private readonly piecing: Piecing) {
    this.mark = new Int32Array(piecing.touching.count).fill(-1);
  }

  areNear(patch: number, other: number): boolean {
    const { touching } = this.piecing;
    if (this.marked !== patch) {
      for (const neighbour of neighboursOf(touching, patch)) this.mark[neighbour] = patch;
      this.marked = patch;
    }
    return neighboursOf(touching, other).some((p) => p === patch || this.mark[p] === patch);
  }

  /** A table of all pairs: `near[p * n + q]` is 1 when p and q are near each other. */
  table(): Uint8Array {
    const { touching, all } = this.piecing;
    const { count } = touching;
    const near = new Uint8Array(count * count);
    for (const p of all) {
      for (const neighbour of neighboursOf(touching, p)) {
        near[p * count + neighbour] = 1;
        for (const q of neighboursOf(touching, neighbour)) near[p * count + q] = 1;
      }
    }
    return near;
  }
}
