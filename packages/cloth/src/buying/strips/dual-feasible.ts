import { SOLVER_ROUNDING } from '@seamwright/geometry';
import type { Stock } from './stock.ts';

/** Lengths that fit together into the capacity have values that sum to 1 at most. */
export type DualFeasible = (length: number) => number;

/**
 * Dual feasible functions (Fekete and Schepers, "New classes of fast lower bounds for bin packing problems",
 * Mathematical Programming 91, 2001): the length itself; for each k the one that rounds to k-ths (of pieces of which k
 * fit but not k + 1, each counts 1/k); for each threshold the one that lets short lengths count nothing, and long ones,
 * beside which nothing else than these fits, all.
 *
 * @param lengths those that occur, none above the capacity
 */
export function dualFeasible(capacity: number, lengths: readonly number[]): DualFeasible[] {
  const proportion: DualFeasible = (length) => length / capacity;
  const most = Math.min(MOST_PARTS, Math.floor(capacity / Math.min(...lengths)));
  const rounding = Array.from({ length: most }, (_, i): DualFeasible => {
    const k = i + 1;
    return (length) =>
      (length * (k + 1)) % capacity === 0 ? length / capacity : Math.floor((length * (k + 1)) / capacity) / k;
  });
  const shorts = [...new Set(lengths)].filter((length) => 2 * length <= capacity);
  const threshold = shorts.map(
    (short): DualFeasible =>
      (length) =>
        length > capacity - short ? 1 : length < short ? 0 : length / capacity,
  );
  return [proportion, ...rounding, ...threshold];
}

/** Beyond so many pieces in a row, rounding takes hardly more than a percent. */
const MOST_PARTS = 100;

/**
 * Fabric that no plan does without, in grid steps: in every strip, each piece stands for its own height and a part of
 * the strip's length.
 */
export function leastLength({ capacity, items }: Stock): number {
  if (items.length === 0) return 0;
  const lengths = items.flatMap(({ ways }) => ways.map(({ length }) => length));
  const bounds = dualFeasible(capacity, lengths).map((value) =>
    items.reduce(
      (sum, { count, ways }) => sum + count * Math.min(...ways.map((way) => way.height * value(way.length))),
      0,
    ),
  );
  return wholeAbove(Math.max(...bounds));
}

/** The least whole number that a computed bound does not exceed, its rounding left aside. */
export const wholeAbove = (bound: number): number =>
  Math.ceil(bound - SOLVER_ROUNDING * Math.max(1, Math.abs(bound)));
