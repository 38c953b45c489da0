import type { Arrangement } from '@seamwright/arrangement';
import type { Touching } from '../contact.ts';
import { peelNearby } from '../peel.ts';
import type { Region } from '../region.ts';
import type { OrderCosts, OrderWeights } from '../types.ts';
import { NO_WILL, type Will } from '../will.ts';
import { BEAM_UP_TO, goodOrder } from './beam.ts';
import { costsOf, DEFAULT_WEIGHTS, weigh } from './costs.ts';
import { bestOrder } from './exact.ts';
import { type Piecing, piecingOf } from './piecing.ts';
import { SETS_UP_TO } from './set-steps.ts';
import { StepCosts } from './step-costs.ts';

/** Patches. The best order of a section up to this size is always found, however many sets peeling can leave. */
const EXACT_UP_TO = 20;

/** Patches of sets looked at in larger sections, in which there may be too many: some tens of milliseconds. */
const EFFORT_BEYOND = 200_000;

export interface OrderOptions {
  /** How much each cost counts; 0 or more. */
  readonly weights?: OrderWeights;
  /** How light a patch of the block is, from 0, dark, to 1, light; undefined where that is not known. */
  readonly shade?: (patch: number) => number | undefined;
  /** Which patches are to be first, which before which others; pins on patches of other sections play no part. */
  readonly will?: Will;
  /** How many patches of sets the exact search may look at; if not given, all up to {@link EXACT_UP_TO} patches. */
  readonly effort?: number;
}

export interface ChosenOrder {
  /** Patches of the block, the first one first. */
  readonly order: readonly number[];
  readonly costs: OrderCosts;
  /** No good order that heeds the maker's will costs less, proved. */
  readonly optimal: boolean;
}

/**
 * The best piecing order of a section: of all good orders in which what is to be first or before comes so, one with the
 * least weighted costs ({@link costsOf} says what they are). Where none is better, it is the one
 * that goes on beside the patch before wherever it can.
 *
 * Up to {@link EXACT_UP_TO} patches it is the best there is; beyond, a good one, and `optimal` says whether it is proved
 * the best. The answer depends on counted effort only, never on time.
 *
 * @param region connected patches of the block
 * @returns null when there is no such order: the region is not good on one foundation, or not as the maker wants it
 */
export function chooseOrder(
  arrangement: Arrangement,
  touching: Touching,
  region: Region,
  {
    weights = DEFAULT_WEIGHTS,
    shade = () => undefined,
    will = NO_WILL,
    effort = effortFor(region.length),
  }: OrderOptions = {},
): ChosenOrder | null {
  if (Object.values(weights).some((weight) => !(weight >= 0 && Number.isFinite(weight)))) {
    throw new RangeError('chooseOrder: weights are 0 or more');
  }
  const piecing = piecingOf(arrangement, touching, region, will, shade);
  const order = nearbyOrder(piecing);
  if (order === null) return null;
  const search = new Search(piecing, weights, order);
  search.improve(effort);
  return {
    order: search.order.map((p) => region[p]!),
    costs: search.costs,
    optimal: search.optimal,
  };
}

/** What a good order of a section costs. */
export function orderCosts(
  arrangement: Arrangement,
  touching: Touching,
  order: readonly number[],
  shade: OrderOptions['shade'] = () => undefined,
): OrderCosts {
  const piecing = piecingOf(arrangement, touching, order, NO_WILL, shade);
  return costsOf(piecing, piecing.all);
}

const effortFor = (patches: number): number =>
  patches <= EXACT_UP_TO ? Number.POSITIVE_INFINITY : EFFORT_BEYOND;

/** The order to start from: beside the patch before where that is possible, what is far from the middle late. */
function nearbyOrder({ touching, all, will, offMiddle }: Piecing): number[] | null {
  if ([...will.before].some(([patch, later]) => later.includes(patch))) return null;
  const { taken, core } = peelNearby(touching, all, (p) => offMiddle[p]!, will);
  return core.length === 1 ? [core[0]!, ...[...taken].reverse()] : null;
}

/** The best order so far, and what is known of better ones. */
class Search {
  costs: OrderCosts;
  optimal = false;

  constructor(
    private readonly piecing: Piecing,
    private readonly weights: OrderWeights,
    public order: readonly number[],
  ) {
    this.costs = costsOf(piecing, order);
  }

  improve(effort: number): void {
    const { piecing, weights } = this;
    const n = piecing.all.length;
    if (this.cost() === 0) this.optimal = true;
    if (this.optimal || n > BEAM_UP_TO) return;
    const steps = new StepCosts(piecing, weights);
    this.consider(goodOrder(piecing, steps));
    this.optimal = this.cost() <= steps.atLeast();
    if (this.optimal || n > SETS_UP_TO) return;
    const { order, complete } = bestOrder(piecing, steps, this.cost(), effort);
    if (order !== null) this.consider(order);
    this.optimal = complete;
  }

  private cost(): number {
    return weigh(this.costs, this.weights);
  }

  private consider(order: readonly number[]): void {
    const costs = costsOf(this.piecing, order);
    if (weigh(costs, this.weights) >= this.cost()) return;
    this.order = order;
    this.costs = costs;
  }
}
