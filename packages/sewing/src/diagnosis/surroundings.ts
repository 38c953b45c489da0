import type { Arrangement } from '@seamwright/arrangement';
import type { Touching } from '../contact.ts';
import { maskOf, type Region } from '../region.ts';
import type { ContactGraph, Link } from './labelled-graph.ts';
import { innerPatches, middleEdges, type Ring } from './rings.ts';
import type { Seams } from './seam-runs.ts';

/**
 * Patches. Round a ring in a larger region, only so many of the nearest are looked at: the patches that hold each other
 * are close by, but that no smaller set exists farther out is then not proved.
 */
const LOOKED_AT = 400;

/** The patches round a ring of seams, with all those in its middle taken for one. */
export interface Surroundings {
  readonly graph: ContactGraph;
  /** The node that stands for the middle; null where seams meet in a corner and there is none. */
  readonly middle: number | null;
  readonly inside: ReadonlySet<number>;
  /** The patches that touch the ring's middle, be it in a corner, and the middle. */
  readonly collar: ReadonlySet<number>;
  /** Nodes beyond which the way out of the region is open. */
  readonly outer: ReadonlySet<number>;
  /** Whether the whole region is looked at. */
  readonly whole: boolean;
}

/** @param inside the patches in the ring's middle: {@link middleOf} */
export function surroundingsOf(
  arrangement: Arrangement,
  touching: Touching,
  region: Region,
  seams: Seams,
  ring: Ring,
  inside: ReadonlySet<number>,
): Surroundings {
  const mask = maskOf(touching, region);
  const rim = ring.kind === 'ring' ? middleEdges(seams, ring) : [];
  const vertices = ring.kind === 'ring' ? verticesAlong(touching, rim) : ring.corners;
  const touchingRing = new Set(vertices.flatMap((vertex) => touching.around[vertex]!));
  const middle = ring.kind === 'ring' ? touching.count : null;

  const near = new Set<number>();
  let front = [...touchingRing].filter((p) => !inside.has(p));
  for (const p of front) near.add(p);
  while (front.length > 0 && near.size < LOOKED_AT) {
    const next = new Set<number>();
    for (const p of front) {
      for (const { neighbour } of touching.contacts[p]!) {
        if (mask[neighbour] === 1 && !inside.has(neighbour) && !near.has(neighbour)) next.add(neighbour);
      }
    }
    front = [...next].slice(0, LOOKED_AT - near.size);
    for (const p of front) near.add(p);
  }

  const nodeOf = (p: number) => (inside.has(p) ? middle! : p);
  const links = (patches: Iterable<number>): Link[] =>
    [...patches].flatMap((p) =>
      touching.contacts[p]!.filter(({ neighbour }) => near.has(neighbour) || inside.has(neighbour))
        .map(({ neighbour, line }) => ({ neighbour: nodeOf(neighbour), line }))
        .filter(({ neighbour }) => neighbour !== nodeOf(p)),
    );
  const graph = new Map<number, readonly Link[]>();
  for (const p of near) graph.set(p, links([p]));
  const collar = new Set([...touchingRing].filter((p) => near.has(p)));
  if (middle !== null) {
    graph.set(middle, links(inside));
    collar.add(middle);
  }
  // On the block's outline, at a patch outside the region, or where the looking ends.
  const leadsOut = (p: number) =>
    touching.contacts[p]!.length < arrangement.patches[p]!.border.length ||
    touching.contacts[p]!.some(({ neighbour }) => !near.has(neighbour) && !inside.has(neighbour));
  const outer = new Set([...near].filter(leadsOut));
  const whole = near.size + inside.size === region.length;
  return { graph, middle, inside, collar, outer, whole };
}

/** The patches in the middle of a ring; none where seams meet in a corner. */
export function middleOf(
  arrangement: Arrangement,
  touching: Touching,
  seams: Seams,
  ring: Ring,
): ReadonlySet<number> {
  if (ring.kind === 'corner') return new Set();
  const walls = new Set(middleEdges(seams, ring));
  return filled(touching, innerPatches(arrangement, touching, seams, ring), walls);
}

function verticesAlong(touching: Touching, edges: readonly number[]): number[] {
  return edges.flatMap((edge) => {
    const { start, end } = touching.alongLines[touching.rankOf[edge]!]!;
    return [start, end];
  });
}

/** All patches that are reached from some without crossing the walls. */
function filled(touching: Touching, from: ReadonlySet<number>, walls: ReadonlySet<number>): Set<number> {
  const fill = new Set(from);
  const open = [...from];
  for (let p = open.pop(); p !== undefined; p = open.pop()) {
    for (const { edge, neighbour } of touching.contacts[p]!) {
      if (walls.has(edge) || fill.has(neighbour)) continue;
      fill.add(neighbour);
      open.push(neighbour);
    }
  }
  return fill;
}

/** Whether a set of nodes lies all round the middle, so that there is no way out of it but through them. */
export function encloses({ graph, middle, outer }: Surroundings, nodes: ReadonlySet<number>): boolean {
  // Where seams meet in a corner there is nothing to be enclosed but that corner.
  return middle === null || wayOut(graph, middle, outer, nodes) === null;
}

/** The nodes on a shortest way from the middle outwards, the middle left out; a set that encloses it holds one of them. */
export function wayOut(
  graph: ContactGraph,
  middle: number,
  outer: ReadonlySet<number>,
  closed: ReadonlySet<number> = new Set(),
): number[] | null {
  const cameFrom = new Map<number, number | null>([[middle, null]]);
  const open = [middle];
  for (const node of open) {
    if (outer.has(node)) {
      const way: number[] = [];
      for (let here = node; here !== middle; here = cameFrom.get(here)!) way.push(here);
      return way.reverse();
    }
    for (const { neighbour } of graph.get(node)!) {
      if (cameFrom.has(neighbour) || closed.has(neighbour)) continue;
      cameFrom.set(neighbour, node);
      open.push(neighbour);
    }
  }
  return null;
}
