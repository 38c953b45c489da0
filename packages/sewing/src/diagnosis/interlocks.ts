import type { Arrangement } from '@seamwright/arrangement';
import type { Touching } from '../contact.ts';
import { maskOf, partsOf, type Region } from '../region.ts';
import {
  type ContactGraph,
  interlockedParts,
  isInterlocked,
  isMinimal,
  type Link,
  withNeighbours,
} from './labelled-graph.ts';
import { cornersWithin, type Ring, shortestRing, windmills } from './rings.ts';
import { type Seams, seamsOf } from './seam-runs.ts';
import { SETS_LOOKED_AT, shrunk, smallestInterlocked } from './smallest-set.ts';
import { encloses, middleOf, type Surroundings, surroundingsOf, wayOut } from './surroundings.ts';

/** Patches that hold each other, and the seams between them that are in each other's way. */
export interface Interlock {
  /** The patches that hold each other, ascending; without any of them, straight seams would do for the others. */
  readonly patches: Region;
  /** Whether no smaller set of patches is interlocked round the same ring of seams, proved. */
  readonly smallest: boolean;
  readonly ring: Ring;
  /** The seams that the ring's numbers refer to. */
  readonly seams: Seams;
}

/**
 * What holds a region together that straight seams cannot sew: every windmill in it (seams of which each ends on the next)
 * and every corner at which no seam runs straight through, each with its smallest interlocked set of patches. Where there
 * is neither, the shortest ring of seams that there is.
 *
 * @param region a connected part of the block that no foundation holds and no straight cut divides
 * @param effort sets of patches to be looked at to prove one the smallest; with 0, the same rings are found, but their sets
 *   are not proved the smallest
 */
export function interlocksOf(
  arrangement: Arrangement,
  touching: Touching,
  region: Region,
  effort = SETS_LOOKED_AT,
): Interlock[] {
  const seams = seamsOf(touching, region);
  const candidates = [...cornersWithin(seams), ...windmills(arrangement, seams)].map((ring) => ({
    ring,
    inside: middleOf(arrangement, touching, seams, ring),
  }));
  const found: Interlock[] = [];
  for (const { ring, inside } of candidates) {
    const around = surroundingsOf(arrangement, touching, region, seams, ring, inside);
    const wider = candidates.flatMap((other) =>
      other.inside.size > inside.size && isWithin(inside, other.inside) ? [other.inside] : [],
    );
    const smallest =
      ring.kind === 'ring' ? roundMiddle(touching, around, wider, effort) : roundCorner(around, effort);
    if (smallest === null) continue;
    const known = found.some(
      (other) => other.ring.kind === 'corner' && other.patches.join(' ') === smallest.patches.join(' '),
    );
    // Two patches that meet in several corners are one thing to tell.
    if (ring.kind === 'ring' || !known) found.push({ ...smallest, ring, seams });
  }
  if (found.length === 0) found.push(anyInterlock(arrangement, touching, region, seams));
  return found.sort((a, b) => a.patches.length - b.patches.length);
}

type Smallest = Pick<Interlock, 'patches' | 'smallest'>;

const isWithin = (some: ReadonlySet<number>, others: ReadonlySet<number>): boolean => {
  for (const p of some) if (!others.has(p)) return false;
  return true;
};

/**
 * The smallest interlocked set round the middle of a ring; null when what holds there is something else.
 *
 * @param wider the middles of rings that this one is in: a set all round one of them is not this ring's
 */
function roundMiddle(
  touching: Touching,
  around: Surroundings,
  wider: readonly ReadonlySet<number>[],
  effort: number,
): Smallest | null {
  const { graph, collar, outer, whole } = around;
  const middle = around.middle!;
  const accept = (nodes: ReadonlySet<number>): boolean => {
    // All round the middle, even where it holds the middle itself.
    const ring = new Set(nodes);
    ring.delete(middle);
    return encloses(around, ring) && wider.every((inside) => [...ring].some((p) => inside.has(p)));
  };
  const keep = (nodes: ReadonlySet<number>): ReadonlySet<number> | null =>
    interlockedParts(graph, nodes).find(accept) ?? null;
  const start = keep(collar) ?? keep(withNeighbours(graph, collar));
  if (start === null) return null;
  const set = shrunk(start, keep);
  // Round the ring, but held together by something beside it.
  if (!isMinimal(graph, set)) return null;

  const asDrawn = (nodes: ReadonlySet<number>): number[] =>
    [...nodes].flatMap((p) => (p === middle ? [...around.inside] : [p])).sort((p, q) => p - q);
  // Seen as several patches, the middle may come apart along a seam right through it.
  const holds = (nodes: ReadonlySet<number>): boolean => {
    const patches = asDrawn(nodes);
    return !nodes.has(middle) || isInterlocked(plainGraph(touching, patches), new Set(patches));
  };
  if (!holds(set)) return null;
  const roots = wayOut(graph, middle, outer)!;
  const less = smallestInterlocked(
    graph,
    roots,
    set.size - 1,
    (nodes) => accept(nodes) && holds(nodes),
    effort,
  );
  const best = less.set ?? set;
  const patches = asDrawn(best);
  return { patches, smallest: less.proved && whole && (best.size === patches.length || !best.has(middle)) };
}

/** The patches round a corner, or fewer of them that hold each other. */
function roundCorner({ graph, collar }: Surroundings, effort: number): Smallest | null {
  const keep = (nodes: ReadonlySet<number>) => interlockedParts(graph, nodes)[0] ?? null;
  const start = keep(collar);
  if (start === null) return null;
  const set = shrunk(start, keep);
  const within = (nodes: ReadonlySet<number>) => isWithin(nodes, collar);
  const less = smallestInterlocked(graph, [...collar], set.size - 1, within, effort);
  return { patches: [...(less.set ?? set)].sort((p, q) => p - q), smallest: less.proved };
}

/** The interlocked set that is left when patches are taken away one by one, near the shortest ring of seams. */
function anyInterlock(arrangement: Arrangement, touching: Touching, region: Region, seams: Seams): Interlock {
  const graph = plainGraph(touching, region);
  const keep = (nodes: ReadonlySet<number>) => interlockedParts(graph, nodes)[0] ?? null;
  const { corners } = shortestRing(arrangement, seams)!;
  let near: ReadonlySet<number> = new Set(corners.flatMap((vertex) => touching.around[vertex]!));
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
    part.every((p) => touching.contacts[p]!.length === arrangement.patches[p]!.border.length),
  );
  return [...patches, ...enclosed.flat()].sort((p, q) => p - q);
}

function plainGraph(touching: Touching, patches: Region): ContactGraph {
  const mask = maskOf(touching, patches);
  return new Map(
    patches.map((p) => [
      p,
      touching.contacts[p]!.filter(({ neighbour }) => mask[neighbour] === 1).map(
        ({ neighbour, line }): Link => ({ neighbour, line }),
      ),
    ]),
  );
}
