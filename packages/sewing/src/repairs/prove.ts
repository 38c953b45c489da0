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
import { type Interlock, interlocksOf } from '../diagnosis/interlocks.ts';
import { endOf } from '../diagnosis/rings.ts';
import { stuckParts } from '../diagnosis/stuck-parts.ts';
import type { Candidate, RepairKind } from './candidate.ts';
import { type EndingRing, endingRing, hasRing } from './ending-ring.ts';
import { type SeamEnd, seamEndOf } from './ways-on.ts';

/** A repair that was proved by solving the changed drawing. */
export interface ReadyRepair extends Repair {
  readonly kind: RepairKind;
  readonly price: RepairPrice;
  readonly drawing: Drawing;
}

/** What is wrong with a block, and how large it is: what a repair is measured against. */
export interface Health {
  readonly arrangement: Arrangement;
  /** How many findings of each kind the arrangement came with. */
  readonly counts: ReadonlyMap<string, number>;
  /** The windmills and corners that straight seams cannot sew. */
  readonly rings: readonly EndingRing[];
  readonly patches: number;
  readonly seamLength: number;
  readonly smallestPatch: number;
}

/** @returns null where the drawing cannot be taken apart at all */
function healthOfDrawing(drawing: Drawing): Health | null {
  const result = arrange(drawing);
  return result.ok ? healthOf(result.value) : null;
}

export function healthOf(arrangement: Arrangement): Health {
  const { patches, edges, vertices, findings } = arrangement;
  const touching = touchingOf(arrangement);
  const all = patches.map(({ index }) => index);
  const counts = new Map<string, number>();
  for (const { kind } of findings) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const seams = edges.filter(({ left, right }) => left >= 0 && right >= 0);
  return {
    arrangement,
    counts,
    rings: stuckParts(touching, all)
      .flatMap((part) => interlocksOf(arrangement, touching, part, 0))
      .map((interlock) => endingRing(arrangement, seamEndsOf(interlock))),
    patches: patches.length,
    seamLength: seams.reduce((sum, { from, to }) => sum + distance(vertices[from]!.at, vertices[to]!.at), 0),
    smallestPatch: patches.reduce((least, { area }) => Math.min(least, area), Number.POSITIVE_INFINITY),
  };
}

const seamEndsOf = ({ ring, seams }: Interlock): readonly Pick<SeamEnd, 'line' | 'vertex'>[] =>
  ring.seams.map((heading) => ({ line: seams.runs[heading.run]!.line, vertex: endOf(seams, heading) }));

/** What a repair is to remove: a ring of seams, or one finding of a kind. */
export type Trouble = EndingRing | string;

export function troubleOf(arrangement: Arrangement, { kind, ring }: Finding): Trouble {
  if (ring === undefined) return kind;
  return endingRing(
    arrangement,
    ring.flatMap((seam) => seamEndOf(arrangement, seam) ?? []),
  );
}

/**
 * Whether a trouble is gone and nothing new came for it. Rings that were there before, unseen beside others, are not new; but
 * only a seam that runs on is sure to make none that are unseen, so of other changes the rings must become fewer.
 */
function isBetter(before: Health, after: Health, trouble: Trouble, kind: RepairKind): boolean {
  const gone =
    typeof trouble === 'string'
      ? (after.counts.get(trouble) ?? 0) < (before.counts.get(trouble) ?? 0)
      : !hasRing(after.arrangement, trouble) &&
        (kind === 'extend' || after.rings.length < before.rings.length);
  return (
    gone &&
    [...after.counts].every(([k, n]) => n <= (before.counts.get(k) ?? 0)) &&
    after.rings.every((ring) => hasRing(before.arrangement, ring))
  );
}

/**
 * Tries candidates, the least costly first, and keeps those that remove a finding and make nothing else worse; best first.
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
  const byCost = [...candidates].sort((c, d) => c.patches - d.patches || c.seamLength - d.seamLength);
  const found: ReadyRepair[] = [];
  let left = effort;
  for (const candidate of byCost) {
    if (found.length === most || left <= 0) break;
    const after = healthOfDrawing(candidate.drawing);
    left -= after?.patches ?? before.patches;
    if (after === null || !isBetter(before, after, trouble, candidate.kind)) continue;
    const price = {
      patches: after.patches - before.patches,
      seamLength: after.seamLength - before.seamLength,
      smallestPatch: after.smallestPatch,
    };
    const { message, drawing, splits } = candidate;
    found.push({ kind: candidate.kind, message, price, drawing, splits });
  }
  found.sort(
    (r, s) =>
      r.price.patches - s.price.patches ||
      r.price.seamLength - s.price.seamLength ||
      s.price.smallestPatch - r.price.smallestPatch,
  );
  return { repairs: found, effortLeft: left };
}
