import FlatQueue from 'flatqueue';
import { type Contacts, neighboursOf } from './contact.ts';
import { peeling } from './peel-state.ts';
import type { Region } from './region.ts';
import { mayBeSection, NO_WILL, type Will } from './will.ts';

/**
 * Takes patches off a connected region, again and again, whose contact with all that remains lies on one straight
 * line and that leave the rest connected.
 *
 * No search is needed: a patch that comes off a set comes off every smaller connected set in which it still touches
 * something, so whichever is taken first, the same core is left (the orders form an antimatroid: Korte, Lovász,
 * Schrader, Greedoids, 1991; from memory). With a stack of patches to ask the cost grows with the number of edges; it goes on
 * beside the patch taken last, so that what it looks at next is in the processor's cache.
 *
 * The maker's will changes nothing of that: a patch that is to be first never comes off, one that is to be sewn before
 * others does not while they are there, and neither is ever taken back.
 *
 * @returns what is left: one patch when the region is good on one foundation, several when it is stuck
 */
export const peel = (contacts: Contacts, region: Region, will: Will = NO_WILL): Region =>
  peeling(contacts, region, will, (state, stack) => {
    for (const p of region) if (state.touchesOnOneLine(p)) stack.push(p);
    const push = (p: number) => stack.push(p);
    for (let p = stack.pop(); p !== -1; p = stack.pop()) if (state.comesOff(p)) state.take(p, push);
    return region.filter((p) => state.has(p));
  });

/** The outcome of taking patches off a region for as long as one comes off. */
export interface Peeling {
  /** In the order in which they came off. */
  readonly taken: readonly number[];
  /** What is left, as of {@link peel}. */
  readonly core: Region;
}

/**
 * The same, without jumping about: the next patch is taken beside the one taken before where that is possible (a
 * neighbour, or a neighbour's neighbour), otherwise wherever the rank is highest.
 *
 * @param rank of a patch; high ranks come off early, so they are sewn late
 */
export const peelNearby = (
  contacts: Contacts,
  region: Region,
  rank: (patch: number) => number,
  will: Will = NO_WILL,
): Peeling =>
  peeling(contacts, region, will, (state) => {
    const queue = new FlatQueue<number>();
    const push = (p: number) => queue.push(p, -rank(p));
    for (const p of region) if (state.touchesOnOneLine(p)) push(p);

    const highest = (candidates: readonly number[]): number | undefined => {
      const ready = candidates.filter((p) => state.comesOff(p));
      return ready.length === 0 ? undefined : ready.reduce((best, p) => (rank(p) > rank(best) ? p : best));
    };
    const around = (patches: readonly number[]) => patches.flatMap((p) => [...neighboursOf(contacts, p)]);
    const fromQueue = (): number | undefined => {
      for (let p = queue.pop(); p !== undefined; p = queue.pop()) if (state.comesOff(p)) return p;
      return undefined;
    };

    const taken: number[] = [];
    for (;;) {
      const near = around(taken.slice(-1));
      const next = highest(near) ?? highest(around(near)) ?? fromQueue();
      if (next === undefined) break;
      state.take(next, push);
      taken.push(next);
    }
    return { taken, core: region.filter((p) => state.has(p)) };
  });

/** Whether a connected region is good on one foundation, as the maker wants it. */
export const isOneFoundation = (contacts: Contacts, region: Region, will: Will = NO_WILL): boolean =>
  mayBeSection(will, region) && peel(contacts, region, will).length === 1;
