import { SOLVER_ROUNDING } from '@seamwright/geometry';
import { wholeAbove } from './dual-feasible.ts';
import { type Choice, fillStrip } from './knapsack.ts';
import type { Master } from './master.ts';
import { heightsOf, type Stock, type StripPattern, wayIn } from './stock.ts';

/** Steps of the knapsack's tables; about a second. Counted, so that the answer is the same on every computer. */
const MOST_STEPS = 400_000_000;

export interface Generated {
  /** Fabric that no plan does without, in grid steps. */
  readonly bound: number;
  /** How often each of the master's patterns is used, parts of strips allowed. */
  readonly counts: readonly number[];
}

/**
 * Column generation (Gilmore and Gomory, Operations Research 9, 1961): patterns that would lessen the fabric are added
 * to the master until there is none, or the bound is as good as `enough`.
 *
 * The bound is Farley's (Operations Research 38, 1990): with the pieces worth what the master says, no strip of a
 * height holds more than its best filling is worth; so it holds at every step, also when the search is given up.
 *
 * @param most steps of the knapsack's tables after which it is given up
 * @param step all lengths are whole multiples of it
 * @param heightStep all heights are whole multiples of it
 */
export function generateColumns(
  master: Master,
  stock: Stock,
  {
    step,
    heightStep,
    enough,
    most = MOST_STEPS,
  }: { step: number; heightStep: number; enough: number; most?: number },
): Generated {
  const heights = heightsOf(stock);
  const room = stock.capacity / step;
  let bound = 0;
  let steps = 0;
  let counts: readonly number[] = [];
  for (;;) {
    const solved = master.relaxed();
    if (solved === null) return { bound, counts };
    counts = solved.counts;
    const added: StripPattern[] = [];
    let densest = 0;
    for (const height of heights) {
      const choices = choicesFor(stock, height, solved.worth);
      steps += choices.length * room;
      const { value, counts: fill } = fillStrip(choices, stock.capacity, step);
      const density = (value * heightStep) / height;
      densest = Math.max(densest, density);
      if (density > 1 + SOLVER_ROUNDING) {
        added.push({ height, cuts: fill.map(({ choice: { item, way }, count }) => ({ item, way, count })) });
      }
    }
    const worth = stock.items.reduce((sum, { count }, item) => sum + count * solved.worth[item]!, 0);
    if (densest > 0) bound = Math.max(bound, wholeAbove((worth * heightStep) / Math.max(1, densest)));
    if (added.length === 0 || bound >= enough || steps > most) return { bound, counts };
    for (const pattern of added) master.add(pattern);
  }
}

function choicesFor(stock: Stock, height: number, worth: readonly number[]): Choice[] {
  return stock.items.flatMap(({ count }, item) => {
    const way = wayIn(stock, item, height);
    const value = worth[item]!;
    return way === undefined || value === 0 ? [] : [{ item, way, count, value }];
  });
}
