import type { Arrangement } from '@seamwright/arrangement';
import { contactsOf, type Touching } from '../contact.ts';
import { maskOf, partsOf, type Region } from '../region.ts';
import {
  type ContactGraph,
  interlockedParts,
  isInterlocked,
  isMinimal,
  withNeighbours,
} from './labelled-graph.ts';
import { cornersWithin, type Ring, shortestRing, windmills } from './rings.ts';
import { type Seams, seamsOf } from './seam-runs.ts';
import { SETS_LOOKED_AT, type SmallestSet, shrunk, smallestInterlocked } from './smallest-set.ts';
import { middleOf, patchesAt, RegionGraph, Surroundings } from './surroundings.ts';

/** Patches that hold each other, and the seams between them that are in each other's way. */
export interface Interlock {
  /**
   * The patches that hold each other, ascending; without any of them, straight seams would do for the others. Empty where they
   * were not looked for.
   */
  readonly patches: Region;
  /** Whether no smaller set of patches is interlocked round the same ring of seams, proved. */
  readonly smallest: boolean;
  readonly ring: Ring;
  /** The seams that the ring's numbers refer to. */
  readonly seams: Seams;
}

/** How much is done for each ring of a region. */
export interface DiagnosisEffort {
  /** Rings for which the patches that hold each other are found; the others are found without them. */
  readonly rings: number;
  /** Sets of patches to be looked at, over all rings, to prove one the smallest; with 0 the same rings are found. */
  readonly sets: number;
}

/** Enough to prove the sets of an ordinary block the smallest: some tenths of a second at most. */
export const FULL_DIAGNOSIS: DiagnosisEffort = { rings: Number.POSITIVE_INFINITY, sets: 10 * SETS_LOOKED_AT };

/**
 * What holds a region together that straight seams cannot sew: every windmill in it (seams of which each ends on the next)
 * and every corner at which no seam runs straight through, each with its smallest interlocked set of patches. Where there
 * is neither, the shortest ring of seams that there is.
 *
 * @param region a connected part of the block that no foundation holds and no straight cut divides
 */
export function interlocksOf(
  arrangement: Arrangement,
  touching: Touching,
  region: Region,
  { rings, sets }: DiagnosisEffort = FULL_DIAGNOSIS,
): Interlock[] {
  const seams = seamsOf(touching, region);
  const graph = new RegionGraph(arrangement, touching, region);
  const budget = { sets };
  const found: Interlock[] = [];
  const told = new Set<string>();
  for (const ring of cornersWithin(seams)) {
    const smallest = roundCorner(graph, new Set(patchesAt(touching, ring.corners)), budget);
    // Two patches that meet in several corners are one thing to tell.
    if (smallest === null || told.has(smallest.patches.join(' '))) continue;
    told.add(smallest.patches.join(' '));
    found.push({ ...smallest, ring, seams });
  }
  const mills = windmills(arrangement, seams).map((ring) => ({
    ring,
    inside: middleOf(arrangement, touching, seams, ring),
  }));
  const middlesWith = new Map<number, ReadonlySet<number>[]>();
  for (const { inside } of mills) {
    for (const p of inside) {
      const middles = middlesWith.get(p);
      if (middles === undefined) middlesWith.set(p, [inside]);
      else middles.push(inside);
    }
  }
  for (const { ring, inside } of mills) {
    const around = new Surroundings(graph, touching, seams, ring, inside);
    const [first] = inside;
    const wider = middlesWith
      .get(first!)!
      .filter((other) => other.size > inside.size && isWithin(inside, other));
    const smallest = roundMiddle(around, wider, found.length < rings, budget);
    if (smallest !== null) found.push({ ...smallest, ring, seams });
  }
  if (found.length === 0) found.push(anyInterlock(arrangement, touching, graph, seams));
  return found.sort((a, b) => sizeOf(a) - sizeOf(b));
}

/** Those whose patches were not looked for come last. */
const sizeOf = ({ patches }: Interlock): number => patches.length || Number.MAX_SAFE_INTEGER;

type Smallest = Pick<Interlock, 'patches' | 'smallest'>;

interface Budget {
  sets: number;
}

const isWithin = (some: ReadonlySet<number>, others: ReadonlySet<number>): boolean => {
  for (const p of some) if (!others.has(p)) return false;
  return true;
};

/**
 * The smallest interlocked set round the middle of a ring; null when what holds there is something else.
 *
 * @param wider the middles of rings that this one is in: a set all round one of them is not this ring's
 * @param wanted whether the set is to be found
 */
function roundMiddle(
  around: Surroundings,
  wider: readonly ReadonlySet<number>[],
  wanted: boolean,
  budget: Budget,
): Smallest | null {
  const { middle, collar } = around;
  const accept = (nodes: ReadonlySet<number>): boolean => {
    // All round the middle, even where it holds the middle itself.
    const ring = new Set(nodes);
    ring.delete(middle);
    return around.isEnclosedBy(ring) && wider.every((inside) => [...ring].some((p) => inside.has(p)));
  };
  const keep = (nodes: ReadonlySet<number>): ReadonlySet<number> | null =>
    interlockedParts(around, nodes).find(accept) ?? null;
  const start = keep(collar) ?? keep(withNeighbours(around, collar));
  if (start === null) return null;
  if (!wanted) return { patches: [], smallest: false };
  const set = shrunk(start, keep);
  // Round the ring, but held together by something beside it.
  if (!isMinimal(around, set)) return null;

  const asDrawn = (nodes: ReadonlySet<number>): number[] =>
    [...nodes].flatMap((p) => (p === middle ? [...around.inside] : [p])).sort((p, q) => p - q);
  // Seen as several patches, the middle may come apart along a seam right through it.
  const holds = (nodes: ReadonlySet<number>): boolean =>
    !nodes.has(middle) || isInterlocked(around.asDrawn, new Set(asDrawn(nodes)));
  if (!holds(set)) return null;
  const less = smallestWithin(
    around,
    around.wayOut()!,
    set.size,
    (nodes) => accept(nodes) && holds(nodes),
    budget,
  );
  const best = less.set ?? set;
  const patches = asDrawn(best);
  const proved = less.proved && around.whole && (best.size === patches.length || !best.has(middle));
  return { patches, smallest: proved };
}

/** The patches round a corner, or fewer of them that hold each other. */
function roundCorner(graph: ContactGraph, collar: ReadonlySet<number>, budget: Budget): Smallest | null {
  const keep = (nodes: ReadonlySet<number>) => interlockedParts(graph, nodes)[0] ?? null;
  const start = keep(collar);
  if (start === null) return null;
  const set = shrunk(start, keep);
  const less = smallestWithin(graph, [...collar], set.size, (nodes) => isWithin(nodes, collar), budget);
  return { patches: [...(less.set ?? set)].sort((p, q) => p - q), smallest: less.proved };
}

/** A smaller set than one of a given size, as far as the budget reaches. */
function smallestWithin(
  graph: ContactGraph,
  roots: readonly number[],
  size: number,
  accept: (set: ReadonlySet<number>) => boolean,
  budget: Budget,
): SmallestSet {
  const effort = Math.min(budget.sets, SETS_LOOKED_AT);
  const less = smallestInterlocked(graph, roots, size - 1, accept, effort);
  budget.sets -= effort - less.effortLeft;
  return less;
}

/** The interlocked set that is left when patches are taken away one by one, near the shortest ring of seams. */
function anyInterlock(
  arrangement: Arrangement,
  touching: Touching,
  graph: RegionGraph,
  seams: Seams,
): Interlock {
  const { region } = graph;
  const keep = (nodes: ReadonlySet<number>) => interlockedParts(graph, nodes)[0] ?? null;
  let near: ReadonlySet<number> = new Set(patchesAt(touching, shortestRing(arrangement, seams)!.corners));
  let start = keep(near);
  while (start === null) {
    // Twice as large each time, so that not many are looked at in vain.
    const { size } = near;
    while (near.size < Math.min(2 * size, region.length)) near = withNeighbours(graph, near);
    start = keep(near);
  }
  const set = shrunk(start, keep);
  const less = smallestInterlocked(graph, region, set.size - 1, () => true, SETS_LOOKED_AT);
  const patches = [...(less.set ?? set)].sort((p, q) => p - q);
  const inner = seamsOf(touching, withEnclosed(arrangement, touching, patches));
  return { patches, smallest: less.proved, ring: shortestRing(arrangement, inner)!, seams: inner };
}

/** A set of patches with those that it encloses. */
function withEnclosed(arrangement: Arrangement, touching: Touching, patches: Region): Region {
  const mask = maskOf(touching, patches);
  const others = arrangement.patches.map(({ index }) => index).filter((p) => mask[p] === 0);
  const enclosed = partsOf(touching, others, maskOf(touching, others)).filter((part) =>
    part.every((p) => contactsOf(touching, p).length === arrangement.patches[p]!.border.length),
  );
  return [...patches, ...enclosed.flat()].sort((p, q) => p - q);
}
