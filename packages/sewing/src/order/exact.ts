import type { Piecing } from './piecing.ts';
import { SetSteps, setOf } from './set-steps.ts';
import type { StepCosts } from './step-costs.ts';

/** The outcome of a search: the best order below a cost, if there is one; `complete` when nothing was left out. */
export interface Found {
  readonly order: readonly number[] | null;
  readonly complete: boolean;
}

const NONE = -1;

/**
 * The best order of all, if it costs less than `below`, by dynamic programming over the sets that peeling can leave.
 *
 * What a step costs depends on the set that is left and the patch that comes off; a jump, on the patch taken before too.
 * So of all the ways that lead to one set only the cheapest is kept for each last patch, and of those none that another
 * outdoes: that costs no more and is near to all patches that this one is near to, or costs less by a jump. Sets are
 * worked through from the largest to the smallest; those from which nothing cheaper than `below` can come are dropped.
 *
 * @param piecing of {@link SETS_UP_TO} patches at most
 * @param effort how many patches of sets may be looked at; n·2^(n−1) is enough for any section of n
 */
export function bestOrder(piecing: Piecing, costs: StepCosts, below: number, effort: number): Found {
  const steps = new SetSteps(piecing, costs);
  const ways = new Ways(steps, costs);
  let lookedAt = 0;
  /** The sets of one size, each with its chain of ways. */
  let sets = new Map([[setOf(piecing.all), ways.start]]);
  for (let size = piecing.all.length; size > 1; size -= 1) {
    const smaller = new Map<number, number>();
    for (const [set, chain] of sets) {
      if (ways.cheapest(chain).cost + steps.atLeast(set) >= below) continue;
      lookedAt += size;
      if (lookedAt > effort) return { order: null, complete: false };
      for (const p of piecing.all) {
        if (((set >> p) & 1) === 0) continue;
        const step = steps.ofTaking(p, set);
        if (step === Number.POSITIVE_INFINITY) continue;
        const way = ways.onwards(chain, p, step);
        if (way.cost >= below) continue;
        const rest = set & ~(1 << p);
        const known = smaller.get(rest) ?? NONE;
        const longer = ways.chain(known, rest, way);
        if (longer !== known) smaller.set(rest, longer);
      }
    }
    sets = smaller;
  }

  let best: { first: number; way: Way } | null = null;
  for (const [set, chain] of sets) {
    const way = ways.cheapest(chain);
    if (way.cost < (best?.way.cost ?? below)) best = { first: 31 - Math.clz32(set), way };
  }
  return { order: best === null ? null : [best.first, ...ways.sewn(best.way)], complete: true };
}

/** One way to peel down to a set: the patch taken last, the cost so far, and the number of the way before that. */
interface Way {
  readonly last: number;
  readonly cost: number;
  readonly before: number;
}

/** The ways kept. Those to one set form a chain, which is known by the number of one of them. */
class Ways {
  /** The one way to the whole section: nothing taken. */
  readonly start = 0;
  private readonly kept: Way[] = [{ last: NONE, cost: 0, before: NONE }];
  private readonly nextInChain: number[] = [NONE];
  private readonly near: readonly number[];
  private readonly jump: number;

  constructor(steps: SetSteps, costs: StepCosts) {
    this.near = steps.near;
    this.jump = costs.weights.jumps;
  }

  /** Adds a way to a chain of ways to `set`, unless one there outdoes it; returns the chain. */
  chain(chain: number, set: number, way: Way): number {
    for (let w = chain; w !== NONE; w = this.nextInChain[w]!) {
      const known = this.kept[w]!;
      if (this.outdoes(known, way, set)) return chain;
      if (!this.outdoes(way, known, set)) continue;
      this.kept[w] = way;
      return chain;
    }
    this.kept.push(way);
    this.nextInChain.push(chain);
    return this.kept.length - 1;
  }

  private outdoes(a: Way, b: Way, set: number): boolean {
    if (a.cost + this.jump <= b.cost) return true;
    return a.cost <= b.cost && (this.near[b.last]! & set & ~this.near[a.last]!) === 0;
  }

  /** The cheapest way on from a chain by taking `patch`, which costs `step` and perhaps a jump. */
  onwards(chain: number, patch: number, step: number): Way {
    let cost = Number.POSITIVE_INFINITY;
    let before = NONE;
    for (let w = chain; w !== NONE; w = this.nextInChain[w]!) {
      const way = this.kept[w]!;
      const isNear = way.last === NONE || ((this.near[way.last]! >> patch) & 1) === 1;
      const here = isNear ? way.cost : way.cost + this.jump;
      if (here >= cost) continue;
      cost = here;
      before = w;
    }
    return { last: patch, cost: cost + step, before };
  }

  cheapest(chain: number): Way {
    let best = this.kept[chain]!;
    for (let w = this.nextInChain[chain]!; w !== NONE; w = this.nextInChain[w]!) {
      if (this.kept[w]!.cost < best.cost) best = this.kept[w]!;
    }
    return best;
  }

  /** The patches taken on a way in the order in which they are sewn: the last taken first. */
  sewn(way: Way): number[] {
    const order: number[] = [];
    for (let w = way; w.last !== NONE; w = this.kept[w.before]!) order.push(w.last);
    return order;
  }
}
