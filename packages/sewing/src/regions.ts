import type { Assembly } from './assembly.ts';
import type { Touching } from './contact.ts';
import type { Crossing } from './crossings.ts';
import type { Cut } from './cuts.ts';
import { JoinBound } from './join-bound.ts';
import { Likeness, rarest } from './likeness.ts';
import { peel } from './peel.ts';
import { emptyMask, type Region, ranksWithin, withMask } from './region.ts';
import { type Stretch, stretchesOf } from './stretches.ts';
import { mayBeSection, mayCut, type Will } from './will.ts';

/** What is known of a region, and of all that are alike. */
export interface Alike {
  /** The first of them that was met. */
  readonly example: Known;
  readonly colours: Int32Array;
  /** The place of a patch of the example that has a rare colour. */
  readonly root: number;
  /** No assembly has fewer foundations; raised as the search goes on. Infinite where there is none. */
  atLeast: number;
  /** Whether `atLeast` foundations suffice. */
  exact: boolean;
  /** The lower bound as it was at first sight. */
  promise: number;
  /** Patches left in the core when the region is peeled; 0 where it is one foundation. */
  stuck: number;
}

/** A region that was met. */
export interface Known {
  readonly region: Region;
  readonly hash: number;
  readonly alike: Alike;
  cuts?: readonly KnownCut[];
  least?: Assembly;
  /** Any assembly; null where there is none, proved. */
  any?: Assembly | null;
}

/** A straight cut of a region that was met. */
export interface KnownCut extends Stretch {
  readonly line: number;
  readonly parts: readonly [Known, Known];
  /** Whether no other cut leads to fewer foundations, proved. */
  readonly costsNothing: boolean;
  written?: Cut;
}

/** The regions of one block that were met, each remembered once; and those that are alike, as one. */
export class Regions {
  private readonly known = new Map<number, Known[]>();
  /** What is known of the very arrays that were asked for: most are asked for again. */
  private readonly knownOf = new WeakMap<Region, Known>();
  private readonly alike = new Map<number, Alike[]>();
  private readonly bound: JoinBound;
  /** Null where the maker's pins make patches differ that are alike otherwise. */
  private readonly likeness: Likeness | null;
  private readonly weights: Float64Array;
  private readonly sideOf: Uint8Array;
  private readonly blocked: Uint8Array;
  private readonly open: Int32Array;
  lookedAt = 0;

  /** @param spend is told of the contacts that are visited */
  constructor(
    private readonly touching: Touching,
    crossings: readonly Crossing[],
    private readonly will: Will,
    private readonly spend: (contacts: number) => void,
  ) {
    this.bound = new JoinBound(touching, crossings);
    this.likeness = pinsPatches(will) ? null : new Likeness(touching);
    this.weights = weightsOf(touching.count);
    this.sideOf = emptyMask(touching);
    this.blocked = new Uint8Array(touching.edge.length);
    this.open = new Int32Array(touching.count);
  }

  get(region: Region): Known {
    const seen = this.knownOf.get(region);
    if (seen !== undefined) return seen;
    let hash = 0;
    for (const p of region) hash += this.weights[p]!;
    const known =
      this.known.get(hash)?.find((one) => sameRegion(one.region, region)) ?? this.remember(region, hash);
    this.knownOf.set(region, known);
    return known;
  }

  /** All straight cuts, those first that promise the fewest foundations; none when `stop` says so before all are known. */
  cutsOf(known: Known, stop: () => boolean = () => false): readonly KnownCut[] {
    if (known.cuts !== undefined) return known.cuts;
    const { region } = known;
    const runs = withMask(this.touching, region, (mask) =>
      stretchesOf(this.touching, ranksWithin(this.touching, region, mask), mask).filter(
        ({ across }) => across,
      ),
    );
    this.spend((runs.length + 1) * this.contactsOf(region));
    if (stop()) return [];
    const cuts = runs.flatMap((run) => this.cutAlong(known, run));
    const least = ({ parts: [a, b] }: KnownCut) => a.alike.atLeast + b.alike.atLeast;
    known.cuts = cuts
      .map((cut) => ({ cut, least: least(cut) }))
      .sort((c, d) => c.least - d.least)
      .map(({ cut }) => cut);
    return known.cuts;
  }

  /** A cut as the rest of the package knows it. */
  written(cut: KnownCut): Cut {
    if (cut.written === undefined) {
      const { first, last, line, parts } = cut;
      const { edge, start } = this.touching;
      const run = {
        line,
        edges: [...edge.subarray(first, last + 1)],
        inner: [...start.subarray(first + 1, last + 1)],
      };
      cut.written = { run, parts: [parts[0].region, parts[1].region] };
    }
    return cut.written;
  }

  /** The cut along a run; none where it leaves one part (in a region with a hole), or parts what is to stay together. */
  private cutAlong({ region, hash }: Known, run: Stretch): KnownCut[] {
    const { first, owner, neighbour, rank, contactAt, line } = this.touching;
    const { sideOf, blocked, open, weights } = this;
    for (const p of region) sideOf[p] = 1;
    blocked.fill(1, run.first, run.last + 1);
    const start = owner[contactAt[run.first]!]!;
    const other = neighbour[contactAt[run.first]!]!;
    let [from, to] = [0, 1];
    let ownHash = weights[start]!;
    open[0] = start;
    sideOf[start] = 2;
    for (; from < to; from += 1) {
      const p = open[from]!;
      for (let c = first[p]!; c < first[p + 1]!; c += 1) {
        const q = neighbour[c]!;
        if (sideOf[q] !== 1 || blocked[rank[c]!] === 1) continue;
        sideOf[q] = 2;
        ownHash += weights[q]!;
        open[to] = q;
        to += 1;
      }
    }
    blocked.fill(0, run.first, run.last + 1);
    const divided = sideOf[other] === 1;
    const parts = divided
      ? ([
          this.part(region, 2, to, ownHash),
          this.part(region, 1, region.length - to, hash - ownHash),
        ] as const)
      : null;
    for (const p of region) sideOf[p] = 0;
    if (parts === null || !mayCut(this.will, parts[0].region)) return [];
    return [{ ...run, line: line[run.first]!, parts, costsNothing: this.costsNothing(run) }];
  }

  /** The part of a region on one side, as it was met before or for the first time. */
  private part(region: Region, side: 1 | 2, size: number, hash: number): Known {
    const { sideOf } = this;
    const met = this.known
      .get(hash)
      ?.find((one) => one.region.length === size && one.region.every((p) => sideOf[p] === side));
    if (met !== undefined) return met;
    const part = region.filter((p) => sideOf[p] === side);
    const known = this.remember(part, hash);
    this.knownOf.set(part, known);
    return known;
  }

  /**
   * Whether a run may be cut first without loss: no line passes through it, and on either side there are two patches at
   * least. In every assembly of the region it is sewn in one go, for whatever is cut before leaves it whole; that makes a
   * join of two units, for a step would have one patch on one side; and what is cut before it lies on one side of it
   * and may as well be cut after it. So the foundations are those of the two parts. (Derived here.)
   */
  private costsNothing(run: Stretch): boolean {
    for (let r = run.first; r < run.last; r += 1)
      if (this.bound.isCrossing(this.touching.end[r]!)) return false;
    return this.bound.hasPatchesOnBothSides(run);
  }

  private remember(region: Region, hash: number): Known {
    const known = { region, hash } as { -readonly [K in keyof Known]: Known[K] };
    const colours = this.likeness?.coloursOf(region) ?? new Int32Array(0);
    const kind = colours.reduce((sum, colour) => (sum + Math.imul(colour, colour | 1)) | 0, 0);
    const met =
      this.likeness === null
        ? undefined
        : this.alike
            .get(kind)
            ?.find((one) =>
              this.likeness!.areAlike(one.example.region, one.colours, one.root, region, colours),
            );
    this.spend(this.contactsOf(region));
    known.alike = met ?? this.lookAt(known, colours);
    if (met === undefined && this.likeness !== null) append(this.alike, kind, known.alike);
    append(this.known, hash, known);
    return known;
  }

  private lookAt(example: Known, colours: Int32Array): Alike {
    this.lookedAt += 1;
    const { region } = example;
    const { will, touching } = this;
    const core = peel(touching, region, will).length;
    const exact = core === 1 && mayBeSection(will, region);
    const atLeast = exact
      ? 1
      : withMask(touching, region, (mask) => {
          const joins = this.bound.leastJoins(
            stretchesOf(touching, ranksWithin(touching, region, mask), mask),
          );
          return Math.max(2, joins + 1, Math.ceil(region.length / will.largestSection));
        });
    return {
      example,
      colours,
      root: rarest(colours),
      atLeast,
      exact,
      promise: atLeast,
      stuck: exact ? 0 : core,
    };
  }

  private contactsOf(region: Region): number {
    const { first } = this.touching;
    let contacts = 0;
    for (const p of region) contacts += first[p + 1]! - first[p]!;
    return contacts;
  }
}

const pinsPatches = ({ firsts, before, together, apart }: Will): boolean =>
  firsts.size > 0 || before.size > 0 || together.length > 0 || apart.length > 0;

function append<T>(lists: Map<number, T[]>, key: number, one: T): void {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [one]);
  else list.push(one);
}

const sameRegion = (a: Region, b: Region): boolean => a.length === b.length && a.every((p, i) => p === b[i]);

/**
 * A whole number for each patch; those of a region are added up to find it again (Zobrist's hashing). Below 2³⁶, so that
 * the sums of 100,000 patches are exact.
 */
function weightsOf(count: number): Float64Array {
  let state = 1;
  return Float64Array.from({ length: count }, () => {
    state = (Math.imul(state, 1664525) + 1013904223) | 0;
    const high = state >>> 0;
    state = (Math.imul(state, 1664525) + 1013904223) | 0;
    return high * 16 + (state >>> 28);
  });
}
