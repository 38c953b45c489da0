import type { Arrangement } from '@seamwright/arrangement';
import { contactsOf, type Touching } from '../contact.ts';
import { patchesRound } from '../corners.ts';
import type { Region } from '../region.ts';
import type { ContactGraph, Link } from './labelled-graph.ts';
import { innerPatches, middleEdges, type Ring } from './rings.ts';
import type { Seams } from './seam-runs.ts';

/**
 * Patches. On the way out of a ring's middle, only so many of the nearest are looked at: the patches that hold each other are
 * close by, but that no smaller set exists farther out is then not proved.
 */
const LOOKED_AT = 400;

/** Who touches whom in a region, worked out where it is asked for. */
export class RegionGraph implements ContactGraph {
  private readonly patches: ReadonlySet<number>;
  private readonly known = new Map<number, readonly Link[]>();

  constructor(
    private readonly arrangement: Arrangement,
    private readonly touching: Touching,
    readonly region: Region,
  ) {
    this.patches = new Set(region);
  }

  get(patch: number): readonly Link[] {
    let links = this.known.get(patch);
    if (links === undefined) {
      links = contactsOf(this.touching, patch).filter(({ neighbour }) => this.patches.has(neighbour));
      this.known.set(patch, links);
    }
    return links;
  }

  /** Whether a patch lies on the region's boundary. */
  isOuter(patch: number): boolean {
    return this.get(patch).length < this.arrangement.patches[patch]!.border.length;
  }
}

/** The patches round a ring of seams, with all those in its middle taken for one node. */
export class Surroundings implements ContactGraph {
  /** The node that stands for the middle; no patch has its number. */
  readonly middle: number;
  /** The patches that touch the ring, be it in a corner, and the middle. */
  readonly collar: ReadonlySet<number>;
  private readonly known = new Map<number, readonly Link[]>();

  /** @param inside the patches in the ring's middle: {@link middleOf} */
  constructor(
    private readonly graph: RegionGraph,
    touching: Touching,
    seams: Seams,
    ring: Ring,
    readonly inside: ReadonlySet<number>,
  ) {
    this.middle = touching.count;
    const touched = patchesAt(touching, verticesAlong(touching, middleEdges(seams, ring)));
    this.collar = new Set([...touched.filter((p) => !inside.has(p)), this.middle]);
  }

  get(node: number): readonly Link[] {
    let links = this.known.get(node);
    if (links === undefined) {
      links = node === this.middle ? [...this.inside].flatMap((p) => this.linksOf(p)) : this.linksOf(node);
      links = links.filter(({ neighbour }) => neighbour !== node);
      this.known.set(node, links);
    }
    return links;
  }

  private linksOf(patch: number): readonly Link[] {
    return this.graph
      .get(patch)
      .map((link) => (this.inside.has(link.neighbour) ? { ...link, neighbour: this.middle } : link));
  }

  /** Who touches whom where the middle is seen as the patches that it is. */
  get asDrawn(): ContactGraph {
    return this.graph;
  }

  /** Whether the whole region is looked at. */
  get whole(): boolean {
    return this.graph.region.length <= LOOKED_AT;
  }

  /** Whether some nodes lie all round the middle, so that there is no way out of it but through them. */
  isEnclosedBy(nodes: ReadonlySet<number>): boolean {
    return this.wayOut(nodes) === null;
  }

  /**
   * The nodes on a shortest way from the middle out of the region, the middle left out; a set that encloses it holds one of
   * them.
   */
  wayOut(closed: ReadonlySet<number> = new Set()): number[] | null {
    const cameFrom = new Map<number, number>([[this.middle, this.middle]]);
    for (const [node] of cameFrom) {
      if (node !== this.middle && (this.graph.isOuter(node) || cameFrom.size > LOOKED_AT)) {
        const way: number[] = [];
        for (let here = node; here !== this.middle; here = cameFrom.get(here)!) way.push(here);
        return way.reverse();
      }
      for (const { neighbour } of this.get(node)) {
        if (!cameFrom.has(neighbour) && !closed.has(neighbour)) cameFrom.set(neighbour, node);
      }
    }
    return null;
  }
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

/** The patches round some vertices. */
export const patchesAt = (touching: Touching, vertices: readonly number[]): number[] => [
  ...new Set(vertices.flatMap((vertex) => [...patchesRound(touching, vertex)])),
];

function verticesAlong(touching: Touching, edges: readonly number[]): number[] {
  return edges.flatMap((edge) => {
    const rank = touching.rankOf[edge]!;
    return [touching.start[rank]!, touching.end[rank]!];
  });
}

/** All patches that are reached from some without crossing the walls. */
function filled(touching: Touching, from: ReadonlySet<number>, walls: ReadonlySet<number>): Set<number> {
  const fill = new Set(from);
  const open = [...from];
  for (let p = open.pop(); p !== undefined; p = open.pop()) {
    for (const { edge, neighbour } of contactsOf(touching, p)) {
      if (walls.has(edge) || fill.has(neighbour)) continue;
      fill.add(neighbour);
      open.push(neighbour);
    }
  }
  return fill;
}
