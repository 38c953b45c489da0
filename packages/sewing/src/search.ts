import { type Assembly, isSewable, joinOf, sectionOf, stuckAt } from './assembly.ts';
import type { Touching } from './contact.ts';
import { type Crossing, CrossingBound } from './crossings.ts';
import { type Cut, runsAcross, someCut, straightCuts } from './cuts.ts';
import { isOneFoundation, peel } from './peel.ts';
import { type Region, withMask } from './region.ts';
import { mayCut, type Will } from './will.ts';

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

/** What is known of a region. */
interface Known {
  readonly region: Region;
  /** No assembly of it has fewer foundations; raised as the search goes on. */
  atLeast: number;
  /** One with exactly `atLeast` foundations. */
  least?: Assembly;
  cuts?: readonly Cut[];
}

/**
 * Looks for assemblies of the regions of one block, as the maker wants them, and remembers what it finds.
 *
 * Whether a region is sewable at all needs no search: if it is, each connected part of it is, so any straight cut is
 * safe, and cutting until every part is one foundation either succeeds or gets stuck. The fewest foundations are 1 if
 * the region peels, otherwise the least of cost(A) + cost(B) over all straight cuts into A and B; different cuts lead to
 * the same regions again, which are remembered. Where patches are to stay together, cuts are not always safe any more,
 * and only the search knows.
 */
export class Search {
  private readonly known = new Map<string, Known>();
  /** What is known of the very arrays that were asked for: most are asked for again. */
  private readonly knownOf = new WeakMap<Region, Known>();
  private readonly crossingAt: ReadonlySet<number>;
  private readonly crossingBound: CrossingBound;

  /** @param effort contacts that may be visited */
  constructor(
    private readonly touching: Touching,
    crossings: readonly Crossing[],
    private readonly will: Will,
    private effort: number,
  ) {
    this.crossingAt = new Set(crossings.map(({ vertex }) => vertex));
    this.crossingBound = new CrossingBound(crossings);
  }

  get spent(): boolean {
    return this.effort <= 0;
  }

  /** Starts a new piece of work, with what is known already and an effort of its own. */
  grant(effort: number): void {
    this.effort = effort;
  }

  isSection(region: Region): boolean {
    return isOneFoundation(this.touching, region, this.will);
  }

  /** Cuts until every part is one foundation or stuck, without going back on a cut. */
  anyAssembly(region: Region): Assembly {
    if (this.isSection(region)) return sectionOf(region);
    const cut =
      region.length <= COMPARED_UP_TO
        ? this.mostPromising(this.allowedCuts(region))
        : someCut(this.touching, region, (vertex) => this.crossingAt.has(vertex), this.will);
    if (cut === null) return stuckAt(region);
    const { run, parts } = cut;
    return joinOf(run.line, [this.anyAssembly(parts[0]), this.anyAssembly(parts[1])]);
  }

  /**
   * The assembly with the fewest foundations: proves one number after the other impossible, until one is found or the
   * effort is spent.
   *
   * @param fallback what to give when the effort is spent
   */
  fewest(region: Region, fallback: Assembly): { assembly: Assembly; atLeast: number } {
    const known = this.remember(region);
    const limit = isSewable(fallback) ? fallback.foundations : region.length + 1;
    while (known.atLeast < limit) {
      const found = this.withAtMost(region, known.atLeast);
      if (found !== null) return { assembly: found, atLeast: found.foundations };
      if (this.spent) break;
    }
    return { assembly: fallback, atLeast: known.atLeast };
  }

  /** An assembly with the fewest foundations, if `limit` of them suffice; null when not, or when the effort is spent. */
  withAtMost(region: Region, limit: number): Assembly | null {
    const known = this.remember(region);
    while (known.least === undefined) {
      if (known.atLeast > limit || this.spent) return null;
      const found = this.withExactly(known, known.atLeast);
      // Out of effort, "not found" proves nothing.
      if (found === null && this.spent) return null;
      if (found === null) known.atLeast += 1;
      else known.least = found;
    }
    return known.least.foundations <= limit ? known.least : null;
  }

  /** The straight cuts of a region that the maker's will allows, the most promising first; none when the effort is spent. */
  cutsOf(region: Region): readonly Cut[] {
    const known = this.remember(region);
    known.cuts ??= this.sortedCuts(region);
    return known.cuts;
  }

  private withExactly({ region }: Known, target: number): Assembly | null {
    for (const { run, parts } of this.cutsOf(region)) {
      const [a, b] = parts;
      const roomForA = target - this.remember(b).atLeast;
      if (this.remember(a).atLeast > roomForA) continue;
      const first = this.withAtMost(a, roomForA);
      if (first === null) continue;
      const second = this.withAtMost(b, target - first.foundations);
      if (second !== null) return joinOf(run.line, [first, second]);
    }
    return null;
  }

  private sortedCuts(region: Region): readonly Cut[] {
    const runs = runsAcross(this.touching, region);
    this.spend(region, runs.length + 1);
    // Too much to look at: no number can be proved impossible without all the cuts.
    if (this.spent) return [];
    const bound = (cut: Cut) => this.remember(cut.parts[0]).atLeast + this.remember(cut.parts[1]).atLeast;
    return this.allowedCuts(region)
      .map((cut) => ({ cut, least: bound(cut) }))
      .sort((c, d) => c.least - d.least)
      .map(({ cut }) => cut);
  }

  private allowedCuts(region: Region): readonly Cut[] {
    return straightCuts(this.touching, region).filter(({ parts }) => mayCut(this.will, parts[0]));
  }

  /** The cut whose parts promise the fewest foundations; of several, the one that leaves the fewest patches stuck in cores. */
  private mostPromising(cuts: readonly Cut[]): Cut | null {
    const rate = (part: Region) => {
      if (this.isSection(part)) return { bound: 1, stuck: 0 };
      return { bound: this.bound(part), stuck: peel(this.touching, part, this.will).core.length };
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

  /** A lower bound for a region that is no section. */
  private bound(region: Region): number {
    return Math.max(
      2,
      Math.ceil(region.length / this.will.largestSection),
      withMask(this.touching, region, (mask) => this.crossingBound.leastFoundations(region, mask)),
    );
  }

  private remember(region: Region): Known {
    const seen = this.knownOf.get(region);
    if (seen !== undefined) return seen;
    const key = keyOf(region);
    let known = this.known.get(key);
    if (known === undefined) {
      this.spend(region, 1);
      known = this.isSection(region)
        ? { region, atLeast: 1, least: sectionOf(region) }
        : { region, atLeast: this.bound(region) };
      this.known.set(key, known);
    }
    this.knownOf.set(region, known);
    return known;
  }

  private spend(region: Region, times: number): void {
    for (const p of region) this.effort -= times * this.touching.contacts[p]!.length;
  }
}

/** A region's patches as a string: the first, then bits for those up to the last. */
function keyOf(region: Region): string {
  const first = region[0]! >> 4;
  const words = new Uint16Array((region.at(-1)! >> 4) - first + 1);
  for (const p of region) words[(p >> 4) - first]! |= 1 << (p & 15);
  let key = `${first} `;
  // A call takes only so many arguments.
  for (let i = 0; i < words.length; i += 4096) key += String.fromCharCode(...words.subarray(i, i + 4096));
  return key;
}
