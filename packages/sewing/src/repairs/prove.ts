import {
  type Arrangement,
  arrange,
  type Drawing,
  type Finding,
  type Repair,
  type RepairPrice,
} from '@seamwright/arrangement';
import { distance } from '@seamwright/geometry';
import { touching as touchingOf } from '../contact.ts';
import { FULL_DIAGNOSIS, type Interlock, interlocksOf } from '../diagnosis/interlocks.ts';
import { endOf } from '../diagnosis/rings.ts';
import { shapeFindings } from '../diagnosis/shapes/shape-findings.ts';
import { stuckParts } from '../diagnosis/stuck-parts.ts';
import type { Candidate, RepairKind } from './candidate.ts';
import { type EndingRing, Endings } from './ending-ring.ts';
import { type SeamEnd, seamEndOf } from './ways-on.ts';

/** A repair that was proved by solving the changed drawing. */
export interface ReadyRepair extends Repair {
  readonly kind: RepairKind;
  readonly price: RepairPrice;
  readonly drawing: Drawing;
  /** Whether something goes that the maker drew: a line or a stretch of it, or a patch. */
  readonly takesAway: boolean;
}

/** What is wrong with a block, and how large it is: what a repair is measured against. Worked out when it is asked for. */
export class Health {
  private knownCounts: ReadonlyMap<string, number> | null = null;
  private knownRings: readonly EndingRing[] | null = null;
  private knownEndings: Endings | null = null;

  constructor(readonly arrangement: Arrangement) {}

  /** How many findings of a kind the lines and the shapes of the patches give. */
  count(kind: string): number {
    return this.counts.get(kind) ?? 0;
  }

  get counts(): ReadonlyMap<string, number> {
    if (this.knownCounts === null) {
      const counts = new Map<string, number>();
      for (const { kind } of [...this.arrangement.findings, ...shapeFindings(this.arrangement)])
        counts.set(kind, (counts.get(kind) ?? 0) + 1);
      this.knownCounts = counts;
    }
    return this.knownCounts;
  }

  get endings(): Endings {
    this.knownEndings ??= new Endings(this.arrangement);
    return this.knownEndings;
  }

  /** The windmills and corners that straight seams cannot sew. */
  get rings(): readonly EndingRing[] {
    if (this.knownRings === null) {
      const { arrangement } = this;
      const touching = touchingOf(arrangement);
      const all = arrangement.patches.map(({ index }) => index);
      this.knownRings = stuckParts(touching, all)
        .flatMap((part) => interlocksOf(arrangement, touching, part, { ...FULL_DIAGNOSIS, sets: 0 }))
        .map((interlock) => this.endings.ringOf(seamEndsOf(interlock)));
    }
    return this.knownRings;
  }

  get seamLength(): number {
    const { edges, vertices } = this.arrangement;
    const seams = edges.filter(({ left, right }) => left >= 0 && right >= 0);
    return seams.reduce((sum, { from, to }) => sum + distance(vertices[from]!.at, vertices[to]!.at), 0);
  }

  get smallestPatch(): number {
    return this.arrangement.patches.reduce(
      (least, { area }) => Math.min(least, area),
      Number.POSITIVE_INFINITY,
    );
  }
}

const seamEndsOf = ({ ring, seams }: Interlock): readonly Pick<SeamEnd, 'line' | 'vertex'>[] =>
  ring.seams.map((heading) => ({ line: seams.runs[heading.run]!.line, vertex: endOf(seams, heading) }));

/** What a repair is to remove: a ring of seams, or one finding of a kind. */
export type Trouble = EndingRing | string;

export function troubleOf({ arrangement, endings }: Health, { kind, ring }: Finding): Trouble {
  if (ring === undefined) return kind;
  return endings.ringOf(ring.flatMap((seam) => seamEndOf(arrangement, seam) ?? []));
}

/**
 * Whether a trouble is gone and none that keeps the block from being sewn came for it. Rings that were there before, unseen
 * beside others, are not new; but only a seam that runs on is sure to make none that are unseen, so of other changes the rings
 * must become fewer.
 */
function isBetter(before: Health, after: Health, trouble: Trouble, kind: RepairKind): boolean {
  if (typeof trouble === 'string') {
    if (after.count(trouble) >= before.count(trouble)) return false;
  } else if (after.endings.hasRing(trouble)) {
    return false;
  } else if (kind !== 'extend' && after.rings.length >= before.rings.length) {
    return false;
  }
  return (
    HINDRANCES.every((k) => after.count(k) <= before.count(k)) &&
    after.rings.every((ring) => before.endings.hasRing(ring))
  );
}

/** Changed drawings: with fewer to be tried, only what is sure to mend is tried. */
const FEW_TRIES = 20;

/** Findings without which a block may be sewn, and with which it may not. */
const HINDRANCES = ['loose-end', 'island'];

/** Whether no kind of finding became more frequent. */
const isClean = (before: Health, after: Health): boolean =>
  [...after.counts].every(([kind, n]) => n <= before.count(kind));

/**
 * Tries candidates and keeps those that remove a finding and make nothing else worse; best first. Where there is none, those are
 * kept that only leave new cautions.
 *
 * Those that keep all that was drawn come before those that take something away; within either, the least costly come first. Of
 * the latter at least one is told where there is one, for the maker may have drawn too much.
 *
 * @param most repairs wanted
 * @param effort patches that may be looked at, over all changed drawings
 */
export function provedRepairs(
  before: Health,
  trouble: Trouble,
  candidates: readonly Candidate[],
  most: number,
  effort: number,
): { repairs: ReadyRepair[]; effortLeft: number } {
  const inTurn = [...candidates].sort(
    (c, d) =>
      Number(c.takesAway) - Number(d.takesAway) || c.patches - d.patches || c.seamLength - d.seamLength,
  );
  // Seams that run on cost more than what else keeps the lines, and come after it, but they are what never fails: half of the
  // effort is theirs, and all of it where it does not reach far.
  const mayExtend = candidates.some(({ kind }) => kind === 'extend');
  const tries = effort / before.arrangement.patches.length;
  const keptForExtending = !mayExtend ? 0 : tries < FEW_TRIES ? effort : effort / 2;
  const clean: ReadyRepair[] = [];
  const others: ReadyRepair[] = [];
  let left = effort;
  for (const candidate of inTurn) {
    if (left <= 0) break;
    const isExtra = candidate.kind !== 'extend' && !candidate.takesAway;
    if (isExtra && left <= keptForExtending) continue;
    if (roomFor(candidate, clean, most) <= 0) continue;
    const changed = arrange(candidate.drawing);
    left -= changed.ok ? changed.value.patches.length : before.arrangement.patches.length;
    if (!changed.ok) continue;
    const after = new Health(changed.value);
    if (!isBetter(before, after, trouble, candidate.kind)) continue;
    const repairs = isClean(before, after) ? clean : others;
    repairs.push(readyRepair(candidate, before, after));
  }
  const mends = typeof trouble !== 'string' || HINDRANCES.includes(trouble);
  const found = clean.length === 0 && mends ? others : clean;
  return { repairs: bestOf(found, most), effortLeft: left };
}

/** How many more repairs of a candidate's sort are wanted. */
function roomFor({ takesAway }: Candidate, found: readonly ReadyRepair[], most: number): number {
  const taking = found.filter((repair) => repair.takesAway).length;
  const keeping = found.length - taking;
  return takesAway ? Math.max(most - keeping, 1) - taking : most - keeping;
}

function readyRepair(candidate: Candidate, before: Health, after: Health): ReadyRepair {
  const { kind, message, drawing, splits } = candidate;
  const price = {
    patches: after.arrangement.patches.length - before.arrangement.patches.length,
    seamLength: after.seamLength - before.seamLength,
    smallestPatch: after.smallestPatch,
  };
  return { kind, message, price, drawing, splits, takesAway: candidate.takesAway || price.patches < 0 };
}

/** The best of some repairs, the best of those that take something away among them; best first. */
function bestOf(found: readonly ReadyRepair[], most: number): ReadyRepair[] {
  const sorted = [...found].sort(
    (r, s) =>
      Number(r.takesAway) - Number(s.takesAway) ||
      r.price.patches - s.price.patches ||
      r.price.seamLength - s.price.seamLength ||
      s.price.smallestPatch - r.price.smallestPatch,
  );
  const taking = sorted.filter(({ takesAway }) => takesAway);
  const keeping = sorted.slice(0, sorted.length - taking.length);
  return [...keeping.slice(0, taking.length === 0 ? most : Math.max(1, most - 1)), ...taking].slice(0, most);
}
