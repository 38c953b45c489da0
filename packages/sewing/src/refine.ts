import type { Arrangement } from '@seamwright/arrangement';
import { distance } from '@seamwright/geometry';
import { type Assembly, joinOf, sectionOf } from './assembly.ts';
import { runOf } from './contact.ts';
import type { Cut } from './cuts.ts';
import type { Region } from './region.ts';
import type { Search } from './search.ts';
import { shapeOf, Templates } from './templates.ts';

/** What the maker would rather have. */
export type Wish = 'fewest foundations' | 'most repetition';

interface Rated {
  readonly assembly: Assembly;
  readonly matchPoints: number;
  readonly templates: ReadonlySet<number>;
  readonly joinLength: number;
}

/**
 * Looks through the assemblies of a region for the best by all its figures, not only by the number of foundations:
 * of every region it keeps the best, and builds larger ones of these.
 *
 * Foundations, match points and the length of joins add up over the two parts of a cut, so by these the choice is exact.
 * Repetition does not (a part may repeat what is elsewhere); it decides only between assemblies of the same region, which
 * finds the copies in blocks that are symmetrical about their cuts.
 */
export class Refinement {
  private readonly best = new Map<string, Rated | null>();
  private readonly templates: Templates;
  private readonly templateOf = new Map<string, number>();

  constructor(
    private readonly arrangement: Arrangement,
    private readonly search: Search,
    private readonly wish: Wish,
  ) {
    this.templates = new Templates(arrangement);
  }

  /** The best assembly of the region, or null when the effort is spent before it is known. */
  refine(region: Region): Assembly | null {
    return this.rate(region)?.assembly ?? null;
  }

  private rate(region: Region): Rated | null {
    const key = region.join(' ');
    const known = this.best.get(key);
    if (known !== undefined) return known;
    const rated = this.rateAnew(region, key);
    this.best.set(key, rated);
    return rated;
  }

  private rateAnew(region: Region, key: string): Rated | null {
    if (this.search.isSection(region)) {
      const templates = new Set([this.templateNumber(region, key)]);
      return { assembly: sectionOf(region), matchPoints: 0, templates, joinLength: 0 };
    }
    let best: Rated | null = null;
    for (const cut of this.cutsWorthTrying(region)) {
      const [a, b] = [this.rate(cut.parts[0]), this.rate(cut.parts[1])];
      if (this.search.spent) return null;
      if (a === null || b === null) continue;
      const rated = this.joined(cut, a, b);
      if (best === null || this.compare(rated, best) < 0) best = rated;
    }
    return best;
  }

  private cutsWorthTrying(region: Region): readonly Cut[] {
    const cuts = this.search.cutsOf(region);
    if (this.wish === 'most repetition') return cuts;
    const least = this.search.withAtMost(region, region.length)?.foundations;
    if (least === undefined) return [];
    return cuts.filter(({ parts: [a, b] }) => {
      const first = this.search.withAtMost(a, least - 1);
      return first !== null && this.search.withAtMost(b, least - first.foundations) !== null;
    });
  }

  private joined({ run, parts: _ }: Cut, a: Rated, b: Rated): Rated {
    const seam = runOf(this.arrangement, run.line, run.edges);
    return {
      assembly: joinOf(run.line, [a.assembly, b.assembly]),
      matchPoints: a.matchPoints + b.matchPoints + run.inner.length,
      templates: new Set([...a.templates, ...b.templates]),
      joinLength: a.joinLength + b.joinLength + distance(seam.a, seam.b),
    };
  }

  private compare(p: Rated, q: Rated): number {
    const foundations = p.assembly.foundations - q.assembly.foundations;
    const templates = p.templates.size - q.templates.size;
    const matchPoints = p.matchPoints - q.matchPoints;
    const first =
      this.wish === 'most repetition'
        ? [templates, foundations, matchPoints]
        : [foundations, matchPoints, templates];
    return first.find((difference) => difference !== 0) ?? p.joinLength - q.joinLength;
  }

  private templateNumber(region: Region, key: string): number {
    let template = this.templateOf.get(key);
    if (template === undefined) {
      template = this.templates.classify(shapeOf(this.arrangement, region)).template;
      this.templateOf.set(key, template);
    }
    return template;
  }
}
