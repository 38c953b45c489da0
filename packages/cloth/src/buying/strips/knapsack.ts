import type { Way } from './stock.ts';

/** A piece that a strip may hold. */
export interface Choice {
  readonly item: number;
  readonly way: Way;
  /** At most so many of it. */
  readonly count: number;
  /** What one is worth; above 0. */
  readonly value: number;
}

export interface Filled {
  readonly value: number;
  readonly counts: readonly { readonly choice: Choice; readonly count: number }[];
}

/**
 * The strip's most valuable filling: the bounded knapsack problem, by dynamic programming over the room, each choice
 * split into bundles of 1, 2, 4 … (Martello and Toth, Knapsack Problems, 1990, chapter 3).
 *
 * @param step all lengths are whole multiples of it
 */
export function fillStrip(choices: readonly Choice[], capacity: number, step: number): Filled {
  const room = Math.floor(capacity / step);
  const bundles = choices.flatMap((choice) => {
    const most = Math.min(choice.count, Math.floor(capacity / choice.way.length));
    const sizes: number[] = [];
    for (let left = most, size = 1; left > 0; size *= 2) {
      sizes.push(Math.min(size, left));
      left -= size;
    }
    return sizes.map((size) => ({ choice, size, length: (size * choice.way.length) / step }));
  });
  const best = new Float64Array(room + 1);
  const taken = bundles.map(({ choice, size, length }) => {
    const takes = new Uint8Array(room + 1);
    const value = size * choice.value;
    for (let at = room; at >= length; at -= 1) {
      const withIt = best[at - length]! + value;
      if (withIt <= best[at]!) continue;
      best[at] = withIt;
      takes[at] = 1;
    }
    return takes;
  });
  const counts = new Map<Choice, number>();
  let at = room;
  for (let i = bundles.length - 1; i >= 0; i -= 1) {
    const { choice, size, length } = bundles[i]!;
    if (taken[i]![at] === 0) continue;
    counts.set(choice, (counts.get(choice) ?? 0) + size);
    at -= length;
  }
  return { value: best[room]!, counts: [...counts].map(([choice, count]) => ({ choice, count })) };
}
