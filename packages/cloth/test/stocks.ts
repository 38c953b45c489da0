import fc from 'fast-check';
import { expect } from 'vitest';
import type { Item, Stock, Strips, Way } from '../src/buying/strips/stock.ts';

/** A piece and, where it fits, the same piece turned; null when neither fits. */
function item(length: number, height: number, count: number, capacity: number, turn: boolean): Item | null {
  const ways: Way[] = [{ length, height }];
  if (turn && length !== height) ways.push({ length: height, height: length });
  const fitting = ways.filter((way) => way.length <= capacity);
  return fitting.length === 0 ? null : { count, ways: fitting };
}

/** Every piece into every strip there is, every way, or into a new one: the least fabric, by trying everything. */
export function bruteForce({ capacity, trim, items }: Stock): number {
  const pieces = items.flatMap(({ count, ways }) => Array.from({ length: count }, () => ways));
  let best = Number.POSITIVE_INFINITY;
  const strips: { height: number; used: number }[] = [];
  const place = (index: number): void => {
    const sum = strips.reduce((total, { height }) => total + height, 0);
    if (sum >= best) return;
    const ways = pieces[index];
    if (ways === undefined) {
      best = sum;
      return;
    }
    for (const { length, height } of ways) {
      for (const strip of [...strips]) {
        if (strip.used + length > capacity || (!trim && strip.height !== height)) continue;
        const before = { ...strip };
        strip.used += length;
        strip.height = Math.max(strip.height, height);
        place(index + 1);
        Object.assign(strip, before);
      }
      strips.push({ height, used: length });
      place(index + 1);
      strips.pop();
    }
  };
  place(0);
  return best;
}

/** Shares nothing with the planner: every strip is within its bounds, and every piece is there, no fewer, no more. */
export function expectSound({ capacity, trim, items }: Stock, strips: readonly Strips[]): void {
  const had = items.map(() => 0);
  for (const { pattern, count } of strips) {
    expect(count).toBeGreaterThan(0);
    expect(pattern.cuts.length).toBeGreaterThan(0);
    let used = 0;
    for (const cut of pattern.cuts) {
      expect(items[cut.item]!.ways).toContainEqual(cut.way);
      if (trim) expect(cut.way.height).toBeLessThanOrEqual(pattern.height);
      else expect(cut.way.height).toBe(pattern.height);
      used += cut.way.length * cut.count;
      had[cut.item]! += cut.count * count;
    }
    expect(used).toBeLessThanOrEqual(capacity);
  }
  expect(had).toEqual(items.map(({ count }) => count));
}

/** Stocks of up to so many sizes, so large, of up to so many pieces each. */
export const stocks = (most: { size: number; kinds: number; count: number }) =>
  fc
    .record({
      capacity: fc.integer({ min: 6, max: 14 }),
      trim: fc.boolean(),
      turn: fc.boolean(),
      sizes: fc.array(
        fc.tuple(
          fc.integer({ min: 1, max: most.size }),
          fc.integer({ min: 1, max: most.size }),
          fc.integer({ min: 1, max: most.count }),
        ),
        { minLength: 1, maxLength: most.kinds },
      ),
    })
    .map(
      ({ capacity, trim, turn, sizes }): Stock => ({
        capacity,
        trim,
        items: sizes.flatMap(([length, height, count]) => item(length, height, count, capacity, turn) ?? []),
      }),
    );
