import { distance } from '@seamwright/geometry';
import { assemble, type Joinery } from '../assemble.ts';
import { type Assembly, isSewable, joinOf, leavesOf } from '../assembly.ts';
import type { Touching } from '../contact.ts';
import { stuckParts } from '../diagnosis/stuck-parts.ts';
import type { Region } from '../region.ts';
import { NO_WILL, type Will } from '../will.ts';
import {
  apart,
  deepest,
  deepestSlitsOf,
  OpenedBlock,
  pairsBeside,
  type Slit,
  slitJoinery,
  slitsOf,
  slitTouching,
} from './slit.ts';

/** How a block that straight seams do not suffice for is put together with seams left open for a while. */
export interface PartialAssembly {
  /** Sections and joins only; its joins leave out what is open. */
  readonly assembly: Assembly;
  /** The seams left open, one for each partial join; those of smaller units first. */
  readonly slits: readonly Slit[];
}

/** How many ways of leaving a seam open are compared in one stuck part of a block. */
const SLITS_COMPARED = 400;

/** Contacts that may be visited to find the fewest foundations with one choice of open seams. */
const EFFORT_PER_CHOICE = 1_000_000;

/** Choices of open seams of one stuck part that are compared by what they make. */
const CHOICES_COMPARED = 12;

/**
 * Puts a region together with partial seams where straight seams do not suffice; null where partial seams do not either (a
 * seam would have to be set in).
 *
 * A partial seam is one that is sewn half-way, from where it ends at another seam, and closed when all is there that lies on
 * both sides of it. While it is open nobody touches across it, and its vertices lie on the boundary; for all the rest it is as
 * if the region had a slit there. So what can be cut is cut; a part that is stuck gets a slit along one of its seams; and so on.
 * Slits only take contacts away, so whether partial seams suffice at all needs no search: all seams are opened as far as they
 * can be.
 *
 * Of the choices that need one slit for a stuck part, the one with the fewest foundations is taken, then the one with the
 * shortest open seam. Where one slit is not enough, the one that leaves the least stuck is taken first.
 */
export function assembleWithPartialSeams(
  joinery: Joinery,
  region: Region,
  will: Will = NO_WILL,
): PartialAssembly | null {
  if (!partialSeamsSuffice(joinery, region)) return null;
  return new PartialSearch(will).assembled(joinery, region, []);
}

/** Whether a region can be sewn with as many partial seams as there can be. */
const partialSeamsSuffice = ({ touching }: Joinery, region: Region): boolean =>
  leftByPartialSeams(touching, [region]).parts.length === 0;

/** Parts that partial seams do not help with, and who touches whom when all other seams are open that can be. */
export interface LeftOver {
  readonly touching: Touching;
  readonly parts: readonly Region[];
}

/** The parts of regions that cannot be sewn however many seams are left open; each keeps a seam that would have to be set in. */
export function leftByPartialSeams(touching: Touching, regions: readonly Region[]): LeftOver {
  const parts: Region[] = [];
  const open = [...regions].reverse();
  const block = new OpenedBlock(touching);
  for (let part = open.pop(); part !== undefined; part = open.pop()) {
    for (const stuck of stuckParts(block.touching, part)) {
      const slits = apart(deepestSlitsOf(block.touching, stuck));
      if (slits.length === 0) parts.push(stuck);
      else open.push(stuck);
      block.open(slits);
    }
  }
  return { touching: block.touching, parts };
}

class PartialSearch {
  constructor(private readonly will: Will) {}

  /** @param open the seams that are open round the region already */
  assembled(joinery: Joinery, region: Region, open: readonly Slit[]): PartialAssembly | null {
    const { assembly, sewable } = this.straight(joinery, region, open);
    return sewable ? { assembly, slits: [] } : this.mended(joinery, assembly, open);
  }

  /** The region with straight seams alone, as far as it goes. */
  private straight(joinery: Joinery, region: Region, open: readonly Slit[]) {
    const apart = open.flatMap((slit) => pairsBeside(joinery, slit));
    const will = { ...this.will, apart: [...this.will.apart, ...apart] };
    return assemble(joinery, region, { effort: EFFORT_PER_CHOICE, will });
  }

  /** An assembly with its stuck parts opened, and the others as good as they can be. */
  private mended(joinery: Joinery, assembly: Assembly, open: readonly Slit[]): PartialAssembly | null {
    if (isSewable(assembly)) return this.assembled(joinery, patchesOf(assembly), open);
    if (assembly.kind !== 'join') return this.opened(joinery, patchesOf(assembly), open);
    const [a, b] = assembly.units.map((unit) => this.mended(joinery, unit, open));
    if (a == null || b == null) return null;
    return { assembly: joinOf(assembly.line, [a.assembly, b.assembly]), slits: [...a.slits, ...b.slits] };
  }

  /** A part that straight seams cannot go on with, one of its seams left open. */
  private opened(joinery: Joinery, region: Region, open: readonly Slit[]): PartialAssembly | null {
    const tips = new Set(open.map(({ tip }) => tip));
    const slits = slitsOf(joinery.touching, region).filter(
      (slit) => !slit.open.some((edge) => tips.has(edge)),
    );
    const compared = slits.length <= SLITS_COMPARED ? slits : deepest(slits).slice(0, SLITS_COMPARED);
    const rated = compared.map((slit) => ({
      slit,
      left: stuckParts(slitTouching(joinery.touching, [slit]), region).reduce((sum, s) => sum + s.length, 0),
      length: openLength(joinery, slit),
    }));
    const enough = rated.filter(({ left }) => left === 0).sort((r, s) => r.length - s.length);
    if (enough.length > 0) {
      let best: PartialAssembly | null = null;
      for (const { slit } of enough.slice(0, CHOICES_COMPARED)) {
        const made = this.withSlit(joinery, region, open, slit);
        if (made !== null && (best === null || made.assembly.foundations < best.assembly.foundations))
          best = made;
      }
      return best;
    }
    rated.sort((r, s) => r.left - s.left || s.slit.open.length - r.slit.open.length || r.length - s.length);
    return rated[0] === undefined ? null : this.withSlit(joinery, region, open, rated[0].slit);
  }

  private withSlit(
    joinery: Joinery,
    region: Region,
    open: readonly Slit[],
    slit: Slit,
  ): PartialAssembly | null {
    const made = this.assembled(slitJoinery(joinery, [slit]), region, [...open, slit]);
    return made === null ? null : { assembly: made.assembly, slits: [...made.slits, slit] };
  }
}

const patchesOf = (assembly: Assembly): Region =>
  leavesOf(assembly)
    .flatMap(({ patches }) => patches)
    .sort((p, q) => p - q);

function openLength({ arrangement }: Joinery, { open }: Slit): number {
  return open.reduce((sum, edge) => {
    const { from, to } = arrangement.edges[edge]!;
    return sum + distance(arrangement.vertices[from]!.at, arrangement.vertices[to]!.at);
  }, 0);
}
