import { commonStep } from './grid.ts';

/** Sums looked at before the search is given up. */
const MOST_SUMS = 1_000_000;

/**
 * The least length, from a bound up, that strips of these heights can add up to: 150 with strips of 9½ alone is 152.
 *
 * @param bound in grid steps, a whole number
 * @returns the bound itself where that would take too long
 */
export function reachable(bound: number, heights: readonly number[]): number {
  const step = commonStep(heights);
  if (step === 0) return bound;
  const parts = heights.map((height) => height / step);
  const from = Math.ceil(bound / step);
  // Beyond the bound by the least height, one more strip of it has brought some sum there.
  const upTo = from + Math.min(...parts);
  if (upTo > MOST_SUMS) return from * step;
  const can = new Uint8Array(upTo + 1);
  can[0] = 1;
  for (let sum = 1; sum <= upTo; sum += 1) {
    if (parts.some((part) => part <= sum && can[sum - part] === 1)) can[sum] = 1;
    if (sum >= from && can[sum] === 1) return sum * step;
  }
  return from * step;
}
