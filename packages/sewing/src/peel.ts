import type { Touching } from './contact.ts';
import { holdsWithout, maskOf, type Region } from './region.ts';

/** The outcome of taking patches off a region for as long as one comes off. */
export interface Peeling {
  /** In the order in which they came off. */
  readonly taken: readonly number[];
  /** What is left: one patch when the region is good on one foundation, several when it is stuck. */
  readonly core: Region;
}

/**
 * Takes patches off a connected region, again and again, whose contact with all that remains lies on one straight
 * line and that leave the rest connected.
 *
 * No search is needed: a patch that comes off a set comes off every smaller connected set in which it still touches
 * something, so whichever is taken first, the same core is left (the orders form an antimatroid: Korte, Lovász,
 * Schrader, Greedoids, 1991; from memory). With a queue over contacts the cost grows with the number of edges.
 *
 * @param prefer among the patches that come off now, the one to take; without it, the first found. It is asked with
 *   the patch taken before, or -1.
 */
export function peel(
  touching: Touching,
  region: Region,
  prefer?: (candidates: readonly number[], before: number) => number,
): Peeling {
  const mask = maskOf(touching, region);
  const counts = region.map((p) => new Int32Array(touching.linesOf[p]!.length));
  const countsOf = new Map(region.map((p, i) => [p, counts[i]!]));
  const linesLeft = new Map<number, number>();
  for (const p of region) {
    const count = countsOf.get(p)!;
    for (const { neighbour, slot } of touching.contacts[p]!) if (mask[neighbour] === 1) count[slot]! += 1;
    linesLeft.set(
      p,
      count.reduce((n, c) => n + Number(c > 0), 0),
    );
  }

  let left = region.length;
  const taken: number[] = [];
  const queue = region.filter((p) => linesLeft.get(p) === 1);
  const waiting = new Set(queue);
  const comesOff = (p: number) =>
    mask[p] === 1 && linesLeft.get(p) === 1 && holdsWithout(touching, region, mask, p);

  while (left > 1 && waiting.size > 0) {
    let next: number | undefined;
    if (prefer === undefined) {
      for (const p of waiting) {
        waiting.delete(p);
        if (!comesOff(p)) continue;
        next = p;
        break;
      }
    } else {
      const candidates = [...waiting].filter(comesOff);
      if (candidates.length > 0) next = prefer(candidates, taken.at(-1) ?? -1);
      if (next !== undefined) waiting.delete(next);
    }
    if (next === undefined) break;

    mask[next] = 0;
    left -= 1;
    taken.push(next);
    for (const { neighbour, line } of touching.contacts[next]!) {
      if (mask[neighbour] === 0) continue;
      const count = countsOf.get(neighbour)!;
      const slot = touching.linesOf[neighbour]!.indexOf(line);
      count[slot]! -= 1;
      if (count[slot] === 0) linesLeft.set(neighbour, linesLeft.get(neighbour)! - 1);
      // Also a patch that held two others together may come off now.
      if (linesLeft.get(neighbour) === 1) waiting.add(neighbour);
    }
  }
  return { taken, core: region.filter((p) => mask[p] === 1) };
}

/** Whether a connected region is good on one foundation. */
export const isOneFoundation = (touching: Touching, region: Region): boolean =>
  peel(touching, region).core.length === 1;
