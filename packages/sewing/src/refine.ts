import type { Arrangement } from '@seamwright/arrangement';
import { distance } from '@seamwright/geometry';
import { type Assembly, joinOf, sectionOf } from './assembly.ts';
import { runOf } from './contact.ts';
import type { Cut } from './cuts.ts';
import type { Region } from './region.ts';
import type { Search } from './search.ts';
import { shapeOf, Templates } from './templates.ts';
import { compareVariants, NO_TEMPLATES, union, type Variant, Variants } from './variants.ts';

/** What the maker would rather have. */
export type Wish = 'fewest foundations' | 'most repetition';

/** Ways to assemble one region that are kept to choose from; fewer and fewer as {@link PAIRS_TRIED} are used up. */
const KEPT = 32;

/** Pairs of ways that are put together in one round: some tenths of a second. */
const PAIRS_TRIED = 100_000;

/** Rounds for blocks in which not all ways can be kept. */
const ROUNDS = 3;

/** What is known of a region. */
interface Known {
  readonly region: Region;
  isSection?: boolean;
  template?: number;
  cuts?: readonly Cut[];
  /** The fewest match points of an assembly with the fewest foundations; null when the search is spent before it is known. */
  matchPoints?: number | null;
  variants?: readonly Variant[] | null;
}

/**
 * Looks through the assemblies of a region for the best by all its figures, not only by the number of foundations. A
 * region that one foundation holds is one section, always.
 *
 * Foundations, match points and the length of joins add up over the two parts of a cut: the best whole has the best
 * parts. Templates do not, for a part may repeat what is elsewhere. So of every region those ways are kept that no
 * other outdoes by having no template but theirs and sums that are no larger, and the whole is the best of all, proved,
 * where these were all kept. Where they are too many, those with most templates are left out, and `complete` says so;
 * then it is all done again with the templates found for free, so that parts are kept that repeat them.
 */
export class Refinement {
  /** Whether nothing was left out: no assembly is better by all its figures, in their order. */
  complete = true;
  private pairsLeft = PAIRS_TRIED;
  private free = NO_TEMPLATES;
  private readonly known = new Map<string, Known>();
  /** What is known of the very arrays that were asked for: cuts are remembered, so most are asked for again. */
  private readonly knownOf = new WeakMap<Region, Known>();
  private readonly templates: Templates;

  constructor(
    private readonly arrangement: Arrangement,
    private readonly search: Search,
    private readonly wish: Wish,
  ) {
    this.templates = new Templates(arrangement);
  }

  /** The best assembly of the region, or null when the effort is spent before it is known. */
  refine(region: Region): Assembly | null {
    let best = this.bestOf(region);
    for (let round = 1; round < ROUNDS && best !== null && !this.complete; round += 1) {
      this.startAgain(new Set(best.templates));
      const next = this.bestOf(region);
      if (next === null || compareVariants(next, best) >= 0) break;
      best = next;
    }
    return best?.assembly ?? null;
  }

  private bestOf(region: Region): Variant | null {
    const variants = this.variantsOf(region);
    if (variants === null || variants.length === 0) return null;
    return variants.reduce((best, variant) => (compareVariants(variant, best) < 0 ? variant : best));
  }

  private startAgain(free: ReadonlySet<number>): void {
    this.free = free;
    this.pairsLeft = PAIRS_TRIED;
    for (const known of this.known.values()) delete known.variants;
  }

  private variantsOf(region: Region): readonly Variant[] | null {
    const known = this.remember(region);
    if (known.variants === undefined) known.variants = this.variantsAnew(known);
    return known.variants;
  }

  private variantsAnew(known: Known): readonly Variant[] | null {
    const { region } = known;
    if (this.isSection(known)) {
      known.template ??= this.templates.numberOf(shapeOf(this.arrangement, region));
      const { template } = known;
      return [{ assembly: sectionOf(region), templates: [template], matchPoints: 0, joinLength: 0 }];
    }
    const cuts = this.cutsToFewestMatchPoints(known);
    if (cuts === null) return null;
    const found = new Variants();
    for (const cut of cuts) {
      const [a, b] = [this.variantsOf(cut.parts[0]), this.variantsOf(cut.parts[1])];
      if (a === null || b === null) return null;
      this.putTogether(cut, a, b, found);
    }
    const { kept, all } = found.best(this.most, this.free);
    if (!all) this.complete = false;
    return kept;
  }

  private get most(): number {
    return Math.max(1, Math.ceil((KEPT * this.pairsLeft) / PAIRS_TRIED));
  }

  private putTogether(cut: Cut, a: readonly Variant[], b: readonly Variant[], found: Variants): void {
    const { most } = this;
    if (a.length > most || b.length > most) this.complete = false;
    const { line, edges, inner } = cut.run;
    const seam = runOf(this.arrangement, line, edges);
    const length = distance(seam.a, seam.b);
    for (const v of a.slice(0, most)) {
      for (const w of b.slice(0, most)) {
        found.add({
          assembly: joinOf(line, [v.assembly, w.assembly]),
          templates: union(v.templates, w.templates),
          matchPoints: v.matchPoints + w.matchPoints + inner.length,
          joinLength: v.joinLength + w.joinLength + length,
        });
        this.pairsLeft -= 1;
      }
    }
  }

  /** The cuts with which the best may begin: whoever wants most repetition may begin with any. */
  private cutsToFewestMatchPoints(known: Known): readonly Cut[] | null {
    const cuts = this.cutsToFewest(known);
    if (this.search.spent) return null;
    if (this.wish === 'most repetition') return cuts;
    const rated = cuts.map((cut) => ({ cut, points: this.matchPointsWith(cut) }));
    const least = this.fewestMatchPoints(known);
    return least === null ? null : rated.flatMap(({ cut, points }) => (points === least ? [cut] : []));
  }

  private fewestMatchPoints(known: Known): number | null {
    if (known.matchPoints !== undefined) return known.matchPoints;
    let least: number | null = this.isSection(known) ? 0 : Number.POSITIVE_INFINITY;
    for (const cut of least === 0 ? [] : this.cutsToFewest(known)) {
      const points = this.matchPointsWith(cut);
      if (points === null) {
        least = null;
        break;
      }
      least = Math.min(least, points);
    }
    if (this.search.spent) least = null;
    known.matchPoints = least;
    return least;
  }

  private matchPointsWith({ run, parts }: Cut): number | null {
    const first = this.fewestMatchPoints(this.remember(parts[0]));
    const second = first === null ? null : this.fewestMatchPoints(this.remember(parts[1]));
    return first === null || second === null ? null : first + second + run.inner.length;
  }

  /** The cuts with which an assembly with the fewest foundations may begin; all of them for most repetition. */
  private cutsToFewest(known: Known): readonly Cut[] {
    known.cuts ??= this.cutsAnew(known.region);
    return known.cuts;
  }

  private cutsAnew(region: Region): readonly Cut[] {
    return this.wish === 'most repetition' ? this.search.cutsOf(region) : this.search.cutsToFewest(region);
  }

  private isSection(known: Known): boolean {
    known.isSection ??= this.search.isSection(known.region);
    return known.isSection;
  }

  private remember(region: Region): Known {
    const seen = this.knownOf.get(region);
    if (seen !== undefined) return seen;
    const key = region.join(' ');
    let known = this.known.get(key);
    if (known === undefined) {
      known = { region };
      this.known.set(key, known);
    }
    this.knownOf.set(region, known);
    return known;
  }
}
