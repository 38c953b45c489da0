import { neighboursOf } from '../contact.ts';
import type { OrderWeights } from '../types.ts';
import { Neighbourhoods } from './costs.ts';
import { FarSides } from './far-side.ts';
import type { Piecing } from './piecing.ts';
import { stepOnto } from './step.ts';

/** What the steps of orders cost, as a search asks for them: many orders, one step at a time, read backwards. Weighted. */
export class StepCosts {
  readonly farSides: FarSides;
  private readonly near: Uint8Array;

  constructor(
    private readonly piecing: Piecing,
    readonly weights: OrderWeights,
  ) {
    this.farSides = new FarSides(piecing);
    this.near = new Neighbourhoods(piecing).table();
  }

  /** The cost of sewing `patch` on to the patches of `sewn`, without that of a jump. */
  ofStep(patch: number, sewn: Uint8Array): number {
    const { showThrough, uncleanFolds } = this.weights;
    const step = stepOnto(this.piecing, patch, sewn);
    const crosses = this.farSides.reachingBeyond(step).some((p) => sewn[p] === 1);
    return (step.showsThrough ? showThrough : 0) + (crosses ? uncleanFolds : 0);
  }

  isJump(from: number, to: number): boolean {
    return this.near[from * this.piecing.touching.count + to] === 0;
  }

  /** What `patch` costs whenever it is sewn on to others: where all its neighbours are darker, it lies on one of them. */
  unavoidable(patch: number): number {
    const { touching, shade } = this.piecing;
    const neighbours = neighboursOf(touching, patch);
    const allDarker = neighbours.every((p) => shade[patch]! > shade[p]!);
    return allDarker && neighbours.length > 0 ? this.weights.showThrough : 0;
  }

  /** No order costs less. Of the patches whose cost is unavoidable one at most escapes it: the first, which is sewn on to none. */
  atLeast(): number {
    let sum = 0;
    let most = 0;
    for (const p of this.piecing.all) {
      const cost = this.unavoidable(p);
      sum += cost;
      if (this.mayBeFirst(p)) most = Math.max(most, cost);
    }
    return sum - most;
  }

  /** Whether the maker lets a patch be first. */
  mayBeFirst(patch: number): boolean {
    const { will, earlier } = this.piecing;
    return will.firsts.size === 0 ? !earlier.has(patch) : will.firsts.has(patch);
  }
}
