import FlatQueue from 'flatqueue';
import type { Touching } from './contact.ts';
import { holdsWithout, type Region, withMask } from './region.ts';
import { mayBeSection, NO_WILL, type Will } from './will.ts';
import { WorkingMemory } from './working-memory.ts';

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
 * The maker's will changes nothing of that: a patch that is to be first never comes off, one that is to be sewn before
 * others does not while they are there, and neither is ever taken back.
 */
export function peel(touching: Touching, region: Region, will: Will = NO_WILL): Peeling {
  return peeling(touching, region, will, (state) => {
    const queue = region.filter((p) => state.touchesOnOneLine(p));
    const taken: number[] = [];
    for (let p = queue.pop(); p !== undefined; p = queue.pop()) {
      if (!state.comesOff(p)) continue;
      state.take(p, (neighbour) => queue.push(neighbour));
      taken.push(p);
    }
    return { taken, core: region.filter((p) => state.has(p)) };
  });
}

/**
 * The same, without jumping about: the next patch is taken beside the one taken before where that is possible (a
 * neighbour, or a neighbour's neighbour), otherwise wherever the rank is highest.
 *
 * @param rank of a patch; high ranks come off early, so they are sewn late
 */
export function peelNearby(
  touching: Touching,
  region: Region,
  rank: (patch: number) => number,
  will: Will = NO_WILL,
): Peeling {
  return peeling(touching, region, will, (state) => {
    const queue = new FlatQueue<number>();
    const push = (p: number) => queue.push(p, -rank(p));
    for (const p of region) if (state.touchesOnOneLine(p)) push(p);

    const highest = (candidates: readonly number[]): number | undefined => {
      const ready = candidates.filter((p) => state.comesOff(p));
      return ready.length === 0 ? undefined : ready.reduce((best, p) => (rank(p) > rank(best) ? p : best));
    };
    const around = (patches: readonly number[]) =>
      patches.flatMap((p) => touching.contacts[p]!.map(({ neighbour }) => neighbour));
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
}

/** What peeling counts. */
interface Counts {
  /** For each patch, the place of its first line in `edgesLeft`. */
  readonly first: Int32Array;
  /** For each patch and each of its lines, the edges on it to patches that are left. */
  readonly edgesLeft: Int32Array;
  /** For each patch, the lines on which it touches patches that are left. */
  readonly linesLeft: Int32Array;
}

const counts = new WorkingMemory(({ count, linesOf }): Counts => {
  const first = new Int32Array(count + 1);
  for (let p = 0; p < count; p += 1) first[p + 1] = first[p]! + linesOf[p]!.length;
  return { first, edgesLeft: new Int32Array(first[count]!), linesLeft: new Int32Array(count) };
});

const peeling = <T>(touching: Touching, region: Region, will: Will, use: (state: PeelState) => T): T =>
  counts.lend(touching, (memory) =>
    withMask(touching, region, (mask) => use(new PeelState(touching, region, will, mask, memory))),
  );

/** Which patches of a region are left, and on how many lines each touches the others that are left. */
class PeelState {
  private left: number;

  constructor(
    private readonly touching: Touching,
    private readonly region: Region,
    private readonly will: Will,
    private readonly mask: Uint8Array,
    private readonly counts: Counts,
  ) {
    this.left = region.length;
    const { first, edgesLeft, linesLeft } = counts;
    for (const p of region) {
      edgesLeft.fill(0, first[p]!, first[p + 1]!);
      linesLeft[p] = 0;
      for (const { neighbour, slot } of touching.contacts[p]!) {
        if (mask[neighbour] === 0) continue;
        edgesLeft[first[p]! + slot]! += 1;
        if (edgesLeft[first[p]! + slot] === 1) linesLeft[p]! += 1;
      }
    }
  }

  has(patch: number): boolean {
    return this.mask[patch] === 1;
  }

  touchesOnOneLine(patch: number): boolean {
    return this.has(patch) && this.counts.linesLeft[patch] === 1;
  }

  comesOff(patch: number): boolean {
    return (
      this.left > 1 &&
      this.touchesOnOneLine(patch) &&
      !this.will.firsts.has(patch) &&
      !this.will.before.get(patch)?.some((later) => this.has(later)) &&
      holdsWithout(this.touching, this.region, this.mask, patch)
    );
  }

  /**
   * Takes a patch off.
   *
   * @param mayComeOff is told each neighbour that now touches the rest on one line; also one that did before, since it may
   *   have held the patch that is gone
   */
  take(patch: number, mayComeOff: (neighbour: number) => void): void {
    const { first, edgesLeft, linesLeft } = this.counts;
    this.mask[patch] = 0;
    this.left -= 1;
    for (const { neighbour, line } of this.touching.contacts[patch]!) {
      if (!this.has(neighbour)) continue;
      const slot = first[neighbour]! + this.touching.linesOf[neighbour]!.indexOf(line);
      edgesLeft[slot]! -= 1;
      if (edgesLeft[slot] === 0) linesLeft[neighbour]! -= 1;
      if (linesLeft[neighbour] === 1) mayComeOff(neighbour);
    }
    for (const [earlier, later] of this.will.before) {
      if (later.includes(patch) && this.touchesOnOneLine(earlier)) mayComeOff(earlier);
    }
  }
}

/** Whether a connected region is good on one foundation, as the maker wants it. */
export const isOneFoundation = (touching: Touching, region: Region, will: Will = NO_WILL): boolean =>
  mayBeSection(will, region) && peel(touching, region, will).core.length === 1;
