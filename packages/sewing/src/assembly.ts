import type { Touching } from './contact.ts';
import { type Crossing, leastFoundations } from './crossings.ts';
import { type Cut, runsAcross, someCut, straightCuts } from './cuts.ts';
import { isOneFoundation, peel } from './peel.ts';
import { maskOf, type Region } from './region.ts';

/** How a region is put together: sewn on one foundation, or of two units joined along one line. */
export type Assembly =
  | { readonly kind: 'section'; readonly patches: Region; readonly cost: 1 }
  | {
      readonly kind: 'join';
      readonly line: number;
      readonly units: readonly [Assembly, Assembly];
      /** Number of foundations. */
      readonly cost: number;
    }
  | {
      /** No foundation holds it and no straight cut divides it: proof that it cannot be sewn with straight seams. */
      readonly kind: 'stuck';
      readonly patches: Region;
      readonly cost: number;
    };

/** The best assembly found, and what is known of better ones. */
export interface AssemblyResult {
  readonly assembly: Assembly;
  /** Whether straight seams suffice. */
  readonly sewable: boolean;
  /** No assembly has fewer foundations. */
  readonly atLeast: number;
}

/**
 * How much the exact search may look at, counted in contacts visited: some tenths of a second. Counted and not timed,
 * so that the same drawing has the same answer on every machine.
 */
export const SEARCH_EFFORT = 20_000_000;

/**
 * Patches. In larger regions the first answer takes a cut by the crossings it passes, without comparing what all cuts
 * leave: that would take a time that grows with the square of the size.
 */
const COMPARED_UP_TO = 300;

/**
 * The assembly of a connected region with the fewest foundations; exact as far as the effort reaches, and honest
 * about it.
 *
 * Whether the region is sewable at all needs no search: if it is, each connected part of it is, so any straight cut
 * is safe, and cutting until every part is one foundation either succeeds or gets stuck. The fewest foundations are
 * 1 if the region peels, otherwise the least of cost(A) + cost(B) over all straight cuts into A and B; different cuts
 * lead to the same regions again, which are remembered.
 */
export function assemble(
  touching: Touching,
  crossings: readonly Crossing[],
  region: Region,
  effort = SEARCH_EFFORT,
): AssemblyResult {
  const search = new Search(touching, crossings, effort);
  const quick = search.anyAssembly(region);
  if (!isSewable(quick)) return { assembly: quick, sewable: false, atLeast: 0 };
  const { assembly, atLeast } = search.improve(region, quick);
  return { assembly, sewable: true, atLeast };
}

const isSewable = (assembly: Assembly): boolean =>
  assembly.kind === 'section' || (assembly.kind === 'join' && assembly.units.every(isSewable));

const join = (line: number, units: readonly [Assembly, Assembly]): Assembly => ({
  kind: 'join',
  line,
  units,
  cost: units[0].cost + units[1].cost,
});

interface Known {
  readonly region: Region;
  /** No assembly of it has fewer foundations; raised as the search goes on. */
  atLeast: number;
  /** One with exactly `atLeast` foundations. */
  least?: Assembly;
  cuts?: readonly Cut[];
}

class Search {
  private readonly known = new Map<string, Known>();
  private readonly crossingAt: ReadonlySet<number>;

  constructor(
    private readonly touching: Touching,
    private readonly crossings: readonly Crossing[],
    private effort: number,
  ) {
    this.crossingAt = new Set(crossings.map(({ vertex }) => vertex));
  }

  /** Cuts until every part is one foundation or stuck, without going back on a cut. */
  anyAssembly(region: Region): Assembly {
    if (isOneFoundation(this.touching, region)) return { kind: 'section', patches: region, cost: 1 };
    const cut =
      region.length <= COMPARED_UP_TO
        ? this.mostPromising(straightCuts(this.touching, region))
        : someCut(this.touching, region, (vertex) => this.crossingAt.has(vertex));
    if (cut === null) return { kind: 'stuck', patches: region, cost: region.length };
    const { run, parts } = cut;
    return join(run.line, [this.anyAssembly(parts[0]), this.anyAssembly(parts[1])]);
  }

  /** The cut whose parts promise the fewest foundations; of several, the one that leaves the fewest patches stuck in cores. */
  private mostPromising(cuts: readonly Cut[]): Cut | null {
    const rate = (part: Region) => {
      const { length } = peel(this.touching, part).core;
      if (length === 1) return { bound: 1, stuck: 0 };
      return { bound: this.bound(part), stuck: length };
    };
    let best: { cut: Cut; bound: number; stuck: number } | null = null;
    for (const cut of cuts) {
      const [a, b] = [rate(cut.parts[0]), rate(cut.parts[1])];
      const [bound, stuck] = [a.bound + b.bound, a.stuck + b.stuck];
      if (best === null || bound < best.bound || (bound === best.bound && stuck < best.stuck)) {
        best = { cut, bound, stuck };
      }
    }
    return best?.cut ?? null;
  }

  /** A lower bound for a region that does not peel. */
  private bound(region: Region): number {
    return Math.max(2, leastFoundations(this.crossings, maskOf(this.touching, region)));
  }

  /** Proves one number of foundations after the other impossible, until one is found or the effort is spent. */
  improve(region: Region, quick: Assembly): { assembly: Assembly; atLeast: number } {
    const known = this.remember(region);
    while (known.atLeast < quick.cost) {
      const found = this.withAtMost(region, known.atLeast);
      if (found !== null) return { assembly: found, atLeast: found.cost };
      if (this.effort <= 0) return { assembly: quick, atLeast: known.atLeast };
    }
    return { assembly: quick, atLeast: known.atLeast };
  }

  /** An assembly with the fewest foundations, if `limit` of them suffice; null when not, or when the effort is spent. */
  private withAtMost(region: Region, limit: number): Assembly | null {
    const known = this.remember(region);
    while (known.least === undefined) {
      if (known.atLeast > limit || this.effort <= 0) return null;
      const found = this.withExactly(known, known.atLeast);
      // Out of effort, "not found" proves nothing.
      if (found === null && this.effort <= 0) return null;
      if (found === null) known.atLeast += 1;
      else known.least = found;
    }
    return known.least.cost <= limit ? known.least : null;
  }

  private withExactly(known: Known, target: number): Assembly | null {
    known.cuts ??= this.cutsOf(known.region);
    for (const { run, parts } of known.cuts) {
      const [a, b] = parts;
      const roomForA = target - this.remember(b).atLeast;
      if (this.remember(a).atLeast > roomForA) continue;
      const first = this.withAtMost(a, roomForA);
      if (first === null) continue;
      const second = this.withAtMost(b, target - first.cost);
      if (second !== null) return join(run.line, [first, second]);
    }
    return null;
  }

  private cutsOf(region: Region): readonly Cut[] {
    const mask = maskOf(this.touching, region);
    const runs = runsAcross(this.touching, region, mask);
    this.spend(region, runs.length + 1);
    // Too much to look at: no number can be proved impossible without all the cuts.
    if (this.effort <= 0) return [];
    const cuts = straightCuts(this.touching, region);
    const bound = (cut: Cut) => this.remember(cut.parts[0]).atLeast + this.remember(cut.parts[1]).atLeast;
    return cuts
      .map((cut) => ({ cut, least: bound(cut) }))
      .sort((c, d) => c.least - d.least)
      .map(({ cut }) => cut);
  }

  private remember(region: Region): Known {
    const key = this.keyOf(region);
    let known = this.known.get(key);
    if (known === undefined) {
      const one = isOneFoundation(this.touching, region);
      this.spend(region, 1);
      known = one
        ? { region, atLeast: 1, least: { kind: 'section', patches: region, cost: 1 } }
        : { region, atLeast: this.bound(region) };
      this.known.set(key, known);
    }
    return known;
  }

  /** A region's patches as a string of bits. */
  private keyOf(region: Region): string {
    const words = new Uint16Array((this.touching.count >> 4) + 1);
    for (const p of region) words[p >> 4]! |= 1 << (p & 15);
    return String.fromCharCode(...words);
  }

  private spend(region: Region, times: number): void {
    for (const p of region) this.effort -= times * this.touching.contacts[p]!.length;
  }
}
