import type { Joinery } from '../assemble.ts';
import { nobody, type Touching } from '../contact.ts';
import { seamsOf } from '../diagnosis/seam-runs.ts';
import type { Region } from '../region.ts';

/**
 * A seam of a region left open from the region's boundary inwards: it is sewn from where it ends at another seam up to half of
 * the edge `tip`, and the rest is closed when what lies on both sides of it is there.
 */
export interface Slit {
  readonly line: number;
  /** The edge that is sewn half-way. */
  readonly tip: number;
  /** The edges left open altogether, from the tip outwards; one at least. */
  readonly open: readonly number[];
  /** The vertices of the open edges, from the tip outwards: the last is where the seam leaves the region. */
  readonly vertices: readonly number[];
}

/**
 * All ways of leaving one seam of a region open: seams that leave it at one end and end at another seam at the other, open up to
 * each of their inner edges. (A seam that leaves it at both ends is a straight cut and needs no slit; one that leaves it at neither
 * could not be closed.)
 */
export const slitsOf = (touching: Touching, region: Region): Slit[] =>
  seamsToOpen(touching, region).flatMap((seam) =>
    seam.inwards.slice(1).map((_, i): Slit => slitUpTo(seam, i + 1)),
  );

/**
 * Of each seam of a region the slit that is open farthest. The others are not written down: together they take a space that grows
 * with the square of a seam's length.
 */
export const deepestSlitsOf = (touching: Touching, region: Region): Slit[] =>
  seamsToOpen(touching, region).flatMap((seam) =>
    seam.inwards.length < 2 ? [] : [slitUpTo(seam, seam.inwards.length - 1)],
  );

/** A seam that can be left open: its edges and vertices from the region's boundary inwards. */
interface SeamToOpen {
  readonly line: number;
  readonly inwards: readonly number[];
  readonly places: readonly number[];
}

const seamsToOpen = (touching: Touching, region: Region): SeamToOpen[] =>
  seamsOf(touching, region).runs.flatMap(({ line, edges, vertices, blocked }) => {
    if (blocked[0] === blocked[1]) return [];
    return {
      line,
      inwards: blocked[0] ? [...edges].reverse() : edges,
      places: blocked[0] ? [...vertices].reverse() : vertices,
    };
  });

/** The slit whose tip is the edge at a place of the seam. */
const slitUpTo = ({ line, inwards, places }: SeamToOpen, tip: number): Slit => ({
  line,
  tip: inwards[tip]!,
  open: inwards.slice(0, tip).reverse(),
  vertices: places.slice(0, tip + 1).reverse(),
});

/** Of each seam's slits the one that is open farthest: what cannot be sewn with it cannot be sewn with the others. */
export function deepest(slits: readonly Slit[]): Slit[] {
  return slits.filter(
    (slit, i) => slits[i + 1]?.line !== slit.line || slits[i + 1]!.open.length <= slit.open.length,
  );
}

/**
 * Of some slits as many, from the first on, as meet nowhere inside the region: two that do would cut off what lies between them.
 * (Once one is open, the other is cut by it, and what goes on beyond may be opened in its turn.)
 */
export function apart(slits: readonly Slit[]): Slit[] {
  const taken = new Set<number>();
  return slits.filter(({ vertices }) => {
    const inner = vertices.slice(0, -1);
    if (inner.some((vertex) => taken.has(vertex))) return false;
    for (const vertex of inner) taken.add(vertex);
    return true;
  });
}

/** A block of which more and more seams are left open: across them nobody touches, and their vertices lie on a boundary. */
export class OpenedBlock {
  /** Who touches whom now; it changes as seams are opened. */
  readonly touching: Touching;

  constructor(touching: Touching) {
    this.touching = {
      ...touching,
      neighbour: touching.neighbour.slice(),
      contactAt: touching.contactAt.slice(),
      outer: touching.outer.slice(),
    };
  }

  open(slits: readonly Slit[]): void {
    const { neighbour, contactAt, outer, rankOf, twin } = this.touching;
    for (const { open, vertices } of slits) {
      for (const edge of open) {
        const rank = rankOf[edge]!;
        const contact = contactAt[rank]!;
        neighbour[contact] = nobody(this.touching);
        neighbour[twin[contact]!] = nobody(this.touching);
        contactAt[rank] = -1;
      }
      for (const vertex of vertices) outer[vertex] = 1;
    }
  }
}

/** Who touches whom while some seams are open. */
export function slitTouching(touching: Touching, slits: readonly Slit[]): Touching {
  const block = new OpenedBlock(touching);
  block.open(slits);
  return block.touching;
}

/** A block as the search sees it while some seams are open. */
export function slitJoinery({ arrangement, touching, crossings }: Joinery, slits: readonly Slit[]): Joinery {
  const onSlit = new Set(slits.flatMap((slit) => slit.vertices));
  return {
    arrangement,
    touching: slitTouching(touching, slits),
    // Round a vertex on an open seam the patches need not all be joined: it proves nothing.
    crossings: crossings.filter(({ vertex }) => !onSlit.has(vertex)),
  };
}

/** The pairs of patches that a slit keeps on different foundations: those on its two sides, half sewn or not at all. */
export function pairsBeside({ arrangement }: Joinery, { tip, open }: Slit): (readonly [number, number])[] {
  return [tip, ...open].map((edge) => {
    const { left, right } = arrangement.edges[edge]!;
    return [left, right] as const;
  });
}
