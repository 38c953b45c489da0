import { SOLVER_ROUNDING } from '@seamwright/geometry';
import { generateColumns } from './columns.ts';
import type { Master } from './master.ts';
import type { Stock, Strips } from './stock.ts';
import { withoutSurplus } from './surplus.ts';

/** Rounds of the dive; each takes a strip or more. */
const MOST_ROUNDS = 500;

/** Steps of the knapsack's tables in each round: the columns that there are need few more. */
const STEPS_A_ROUND = 4_000_000;

/** A strip that the relaxed answer uses to this part is hardly a wrong one. */
const NEARLY_WHOLE = 0.8;

/**
 * Whole strips out of the relaxed answer, a few at a time: those that it uses once or more, else those that it nearly
 * does, else the one that it uses most; then the relaxed answer for what is still needed, with new patterns for that. (A
 * diving heuristic: Sadykov, Vanderbeck and others, "Primal heuristics for branch and price", INFORMS Journal on
 * Computing 31, 2019.)
 *
 * @param relaxed the master's answer for all pieces
 */
export function dive(
  master: Master,
  part: Stock,
  relaxed: readonly number[],
  steps: { readonly step: number; readonly heightStep: number },
): Strips[] {
  const left = part.items.map(({ count }) => count);
  const taken: Strips[] = [];
  let counts = relaxed;
  for (let round = 0; round < MOST_ROUNDS && left.some((count) => count > 0); round += 1) {
    const chosen = wholeStrips(counts);
    if (chosen.length === 0) break;
    for (const [column, count] of chosen) {
      const pattern = master.patterns[column]!;
      taken.push({ pattern, count });
      for (const cut of pattern.cuts) left[cut.item] = Math.max(0, left[cut.item]! - cut.count * count);
    }
    master.need(left);
    const rest = { ...part, items: part.items.map((item, i) => ({ ...item, count: left[i]! })) };
    counts = generateColumns(master, rest, {
      ...steps,
      enough: Number.POSITIVE_INFINITY,
      most: STEPS_A_ROUND,
    }).counts;
  }
  master.need(part.items.map(({ count }) => count));
  return withoutSurplus(taken, part);
}

function wholeStrips(counts: readonly number[]): (readonly [column: number, count: number])[] {
  const entries = counts.map((count, column) => [column, count] as const);
  const whole = entries.flatMap(([column, count]) => {
    const floor = Math.floor(count + SOLVER_ROUNDING);
    return floor > 0 ? [[column, floor] as const] : [];
  });
  if (whole.length > 0) return whole;
  const nearly = entries.filter(([, count]) => count >= NEARLY_WHOLE);
  if (nearly.length > 0) return nearly.map(([column]) => [column, 1]);
  const most = entries.reduce<readonly [number, number]>(
    (best, entry) => (entry[1] > best[1] ? entry : best),
    [-1, 0],
  );
  return most[1] > 0 ? [[most[0], 1]] : [];
}
