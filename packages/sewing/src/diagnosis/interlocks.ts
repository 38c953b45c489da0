import type { Arrangement } from '@seamwright/arrangement';
import type { Touching } from '../contact.ts';
import { maskOf, partsOf, type Region } from '../region.ts';
import {
  type ContactGraph,
  interlockedParts,
  isInterlocked,
  isMinimal,
  type Link,
} from './labelled-graph.ts';
import { cornersWithin, type Ring, shortestRing, windmills } from './rings.ts';
import { type Seams, seamsOf } from './seam-runs.ts';
import { shrunk, smallestInterlocked } from './smallest-set.ts';
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
 */
export function interlocksOf(arrangement: Arrangement, touching: Touching, region: Region): Interlock[] {
  const seams = seamsOf(touching, region);
  const candidates = [...cornersWithin(seams), ...windmills(arrangement, seams)].map((ring) => ({
    ring,
    inside: middleOf(arrangement, touching, seams, ring),
  }));
  const found: Interlock[] = [];
  const known = new Set<string>();
  for (const { ring, inside } of candidates) {
    const around = surroundingsOf(arrangement, touching, region, seams, ring, inside);
    const wider = candidates.flatMap((other) =>
      other.inside.size > inside.size && isWithin(inside, other.inside) ? [other.inside] : [],
    );
    const smallest = ring.kind === 'ring' ? roundMiddle(touching, around, wider) : roundCorner(around);
    if (smallest === null || known.has(smallest.patches.join(' '))) continue;
    known.add(smallest.patches.join(' '));
    found.push({ ...smallest, ring, seams });
  }
  if (found.length === 0) found.push(anyInterlock(arrangement, touching, region));
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
  const start = keep(collar) ?? keep(new Set(graph.keys()));
  if (start === null) return null;
  const set = shrunk(start, keep);

  const roots = wayOut(graph, middle, outer)!;
  const less = smallestInterlocked(graph, roots, set.size - 1, accept);
  const best = less.set ?? set;
  const patches = [...best].flatMap((p) => (p === middle ? [...around.inside] : [p]));
  patches.sort((p, q) => p - q);
  const plain = plainGraph(touching, patches);
  const asDrawn = new Set(patches);
  // Seen as several patches, the middle may come apart along a seam right through it.
  if (best.has(middle) && !isInterlocked(plain, asDrawn)) return null;
  return { patches, smallest: less.proved && whole && isMinimal(plain, asDrawn) };
}

/** The patches round a corner, or fewer of them that hold each other. */
function roundCorner({ graph, collar }: Surroundings): Smallest | null {
  const keep = (nodes: ReadonlySet<number>) => interlockedParts(graph, nodes)[0] ?? null;
  const start = keep(collar);
  if (start === null) return null;
  const set = shrunk(start, keep);
  const less = smallestInterlocked(graph, [...collar], set.size - 1, (nodes) =>
    [...nodes].every((p) => collar.has(p)),
  );
  const patches = [...(less.set ?? set)].sort((p, q) => p - q);
  return { patches, smallest: less.proved };
}

/** The interlocked set that is left when patches are taken away one by one, with the shortest ring in it. */
function anyInterlock(arrangement: Arrangement, touching: Touching, region: Region): Interlock {
  const graph = plainGraph(touching, region);
  const keep = (nodes: ReadonlySet<number>) => interlockedParts(graph, nodes)[0] ?? null;
  const set = shrunk(new Set(region), keep);
  const less = smallestInterlocked(graph, region, set.size - 1, () => true);
  const patches = [...(less.set ?? set)].sort((p, q) => p - q);
  const seams = seamsOf(touching, withEnclosed(arrangement, touching, patches));
  const ring = shortestRing(arrangement, seams);
  if (ring === null) throw new Error('interlocksOf: straight seams suffice for this region');
  return { patches, smallest: less.proved, ring, seams };
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
