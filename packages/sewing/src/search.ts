import { type Assembly, isSewable, joinOf, sectionOf, stuckAt } from './assembly.ts';
import type { Touching } from './contact.ts';
import type { Crossing } from './crossings.ts';
import { type Cut, someCut } from './cuts.ts';
import { isOneFoundation } from './peel.ts';
import type { Region } from './region.ts';
import { type Known, type KnownCut, Regions } from './regions.ts';
import type { Will } from './will.ts';

/**
 * How much the exact search may look at, counted in contacts visited: about a second and a half where it is all spent; most
 * blocks of some hundred patches take less than a tenth of it. Counted and not timed, so that the same drawing has the
 * same answer on every machine.
 */
export const SEARCH_EFFORT = 20_000_000;

/**
 * Patches. In larger regions the first answer takes a cut by the crossings it passes, without comparing what all cuts
 * leave: that would take a time that grows with the square of the size, and it hardly finds fewer foundations.
 */
const COMPARED_UP_TO = 80;

/**
 * Looks for assemblies of the regions of one block, as the maker wants them, and remembers what it finds.
 *
 * Whether a region is sewable at all needs no search: if it is, each connected part of it is, so any straight cut is
 * safe, and cutting until every part is one foundation either succeeds or gets stuck. The fewest foundations are 1 if
 * the region peels, otherwise the least of cost(A) + cost(B) over all straight cuts into A and B; different cuts lead to
 * the same regions again, or to regions that are alike, and both are remembered. Where patches are to stay together, cuts
 * are not always safe any more, and only the search knows.
 */
export class Search {
  private readonly crossingAt: ReadonlySet<number>;
  private readonly regions: Regions;

  /** @param effort contacts that may be visited */
  constructor(
    private readonly touching: Touching,
    crossings: readonly Crossing[],
    private readonly will: Will,
    private effort: number,
  ) {
    this.crossingAt = new Set(crossings.map(({ vertex }) => vertex));
    this.regions = new Regions(touching, crossings, will, (contacts) => {
      this.effort -= contacts;
    });
  }

  get spent(): boolean {
    return this.effort <= 0;
  }

  /** Regions that have been looked at: those alike count once. */
  get lookedAt(): number {
    return this.regions.lookedAt;
  }

  /** Starts a new piece of work, with what is known already and an effort of its own. */
  grant(effort: number): void {
    this.effort = effort;
  }

  isSection(region: Region): boolean {
    return isOne(this.regions.get(region));
  }

  /** Cuts until every part is one foundation or stuck, without going back on a cut. It is had whatever the effort. */
  anyAssembly(region: Region): Assembly {
    const { effort } = this;
    const assembly = this.cutOnce(region);
    this.effort = effort;
    return assembly;
  }

  private cutOnce(region: Region): Assembly {
    return region.length <= COMPARED_UP_TO
      ? this.cutByPromise(this.regions.get(region))
      : this.cutByCrossings(region);
  }

  private cutByPromise(known: Known): Assembly {
    if (isOne(known)) return sectionOf(known.region);
    const best = mostPromising(this.regions.cutsOf(known));
    if (best === null) return stuckAt(known.region);
    return joinOf(best.line, [this.cutByPromise(best.parts[0]), this.cutByPromise(best.parts[1])]);
  }

  private cutByCrossings(region: Region): Assembly {
    if (isOneFoundation(this.touching, region, this.will)) return sectionOf(region);
    const cut = someCut(this.touching, region, (vertex) => this.crossingAt.has(vertex), this.will);
    if (cut === null) return stuckAt(region);
    return joinOf(cut.run.line, [this.cutOnce(cut.parts[0]), this.cutOnce(cut.parts[1])]);
  }

  /**
   * An assembly, if there is any, with cuts that are taken back where they lead nowhere; null when there is none, which
   * is then proved, and undefined when the effort is spent before either is known.
   */
  assemblyAfterAll(region: Region): Assembly | null | undefined {
    return this.triedAll(this.regions.get(region));
  }

  private triedAll(known: Known): Assembly | null | undefined {
    if (known.any !== undefined) return known.any;
    if (isOne(known)) known.any = sectionOf(known.region);
    else {
      const found = this.triedCuts(known);
      if (found === undefined) return undefined;
      known.any = found;
      if (found === null) known.alike.atLeast = Number.POSITIVE_INFINITY;
    }
    return known.any;
  }

  private triedCuts(known: Known): Assembly | null | undefined {
    for (const { line, parts } of this.cutsWithin(known)) {
      const first = this.triedAll(parts[0]);
      const second = first == null ? first : this.triedAll(parts[1]);
      if (first != null && second != null) return joinOf(line, [first, second]);
    }
    // Out of effort, "not found" proves nothing.
    return this.spent ? undefined : null;
  }

  /**
   * The assembly with the fewest foundations: proves one number after the other impossible, until one is found or the
   * effort is spent.
   *
   * @param fallback what to give when the effort is spent
   */
  fewest(region: Region, fallback: Assembly): { assembly: Assembly; atLeast: number } {
    const known = this.regions.get(region);
    const { alike } = known;
    const limit = isSewable(fallback) ? fallback.foundations : region.length + 1;
    while (alike.atLeast < limit && !this.spent) {
      if (this.suffices(known, alike.atLeast)) return { assembly: this.made(known), atLeast: alike.atLeast };
    }
    return { assembly: fallback, atLeast: alike.atLeast };
  }

  /** The straight cuts of a region that the maker's will allows, the most promising first; none when the effort is spent. */
  cutsOf(region: Region): readonly Cut[] {
    return this.cutsWithin(this.regions.get(region)).map((cut) => this.regions.written(cut));
  }

  /** The cuts of a region that lead to the fewest foundations; none when the effort is spent before these are known. */
  cutsToFewest(region: Region): readonly Cut[] {
    const known = this.regions.get(region);
    if (!this.suffices(known, region.length)) return [];
    const least = known.alike.atLeast;
    return this.cutsWithin(known)
      .filter(({ parts }) => this.bothSuffice(parts, least))
      .map((cut) => this.regions.written(cut));
  }

  /** Whether so many foundations suffice for a region; not, when the effort is spent before it is known. */
  private suffices(known: Known, limit: number): boolean {
    const { alike } = known;
    while (!alike.exact) {
      if (alike.atLeast > limit || this.spent) return false;
      const found = this.sufficesExactly(alike.example, alike.atLeast);
      // Out of effort, "not found" proves nothing.
      if (!found && this.spent) return false;
      if (found) alike.exact = true;
      else alike.atLeast += 1;
    }
    return alike.atLeast <= limit;
  }

  private sufficesExactly(known: Known, target: number): boolean {
    return this.cutsToTry(known).some(({ parts }) => this.bothSuffice(parts, target));
  }

  /** Whether so many foundations suffice for two parts together. */
  private bothSuffice([a, b]: readonly [Known, Known], target: number): boolean {
    if (a.alike.atLeast + b.alike.atLeast > target) return false;
    return this.suffices(a, target - b.alike.atLeast) && this.suffices(b, target - a.alike.atLeast);
  }

  /** The assembly of a region for which it is known how many foundations it takes. */
  private made(known: Known): Assembly {
    known.least ??= this.madeAnew(known);
    return known.least;
  }

  private madeAnew(known: Known): Assembly {
    if (isOne(known)) return sectionOf(known.region);
    const target = known.alike.atLeast;
    const cut = this.regions.cutsOf(known).find(({ parts: [a, b] }) => {
      return a.alike.exact && b.alike.exact && a.alike.atLeast + b.alike.atLeast === target;
    });
    if (cut === undefined) throw new Error('made: nobody has proved that so many foundations suffice');
    return joinOf(cut.line, [this.made(cut.parts[0]), this.made(cut.parts[1])]);
  }

  /** All cuts of a region; none when the effort is spent, for without all the cuts nothing can be proved impossible. */
  private cutsWithin(known: Known): readonly KnownCut[] {
    return this.spent ? [] : this.regions.cutsOf(known, () => this.spent);
  }

  /** Cuts of which one leads to the fewest foundations. */
  private cutsToTry(known: Known): readonly KnownCut[] {
    const cuts = this.cutsWithin(known);
    const safe = cuts.find(({ costsNothing }) => costsNothing);
    return safe === undefined ? cuts : [safe];
  }
}

const isOne = ({ alike }: Known): boolean => alike.exact && alike.atLeast === 1;

/** The cut whose parts promise the fewest foundations; of several, the one that leaves the fewest patches stuck in cores. */
function mostPromising(cuts: readonly KnownCut[]): KnownCut | null {
  let best: { cut: KnownCut; bound: number; stuck: number } | null = null;
  for (const cut of cuts) {
    const [a, b] = [cut.parts[0].alike, cut.parts[1].alike];
    const [bound, stuck] = [a.promise + b.promise, a.stuck + b.stuck];
    if (best === null || bound < best.bound || (bound === best.bound && stuck < best.stuck)) {
      best = { cut, bound, stuck };
    }
  }
  return best?.cut ?? null;
}
