import { contactsOf } from '../contact.ts';
import type { Piecing } from './piecing.ts';
import { sideOf } from './step.ts';
import type { StepCosts } from './step-costs.ts';

/** Patches. Sets of them are the bits of whole numbers of 32, without the sign. */
export const SETS_UP_TO = 31;

/** The edges of one patch on one line. */
interface Seam {
  /** The set of patches that it touches along them. */
  readonly neighbours: number;
  /** The set of patches that reach beyond the fold. */
  readonly beyond: number;
  /** Touching all these neighbours, it bridges nothing; touching some of them it may. */
  readonly unbroken: boolean;
  /** The patch lies on both sides of the line. */
  readonly bothSides: boolean;
}

/** {@link StepCosts} and {@link comesOff} for sets as bits, which are many times faster to ask. */
export class SetSteps {
  /** For each patch, the set of those to which it is no jump. */
  readonly near: readonly number[];
  private readonly seams: readonly (readonly Seam[])[];
  private readonly neighbours: readonly number[];
  private readonly darker: readonly number[];
  /** For each patch, those that must come off before it; with itself, it never does. */
  private readonly heldBy: readonly number[];
  private readonly mayBeFirst: number;
  private readonly mask: Uint8Array;

  constructor(
    private readonly piecing: Piecing,
    private readonly costs: StepCosts,
  ) {
    const { all, touching, will, shade } = piecing;
    this.near = all.map((p) => setOf(all.filter((q) => !costs.isJump(p, q))));
    this.seams = all.map((p) => {
      const lines = new Set(contactsOf(touching, p).map(({ line }) => line));
      return [...lines].map((line) => this.seamOn(p, line));
    });
    this.neighbours = this.seams.map((seams) => seams.reduce((set, { neighbours }) => set | neighbours, 0));
    this.darker = all.map((p) => setOf(all.filter((q) => shade[p]! > shade[q]!)));
    this.heldBy = all.map((p) => setOf([...(will.before.get(p) ?? []), ...(will.firsts.has(p) ? [p] : [])]));
    this.mayBeFirst = setOf(all.filter((p) => costs.mayBeFirst(p)));
    this.mask = new Uint8Array(all.length);
  }

  private seamOn(patch: number, line: number): Seam {
    const { touching } = this.piecing;
    const contacts = contactsOf(touching, patch).filter((contact) => contact.line === line);
    const ranks = contacts.map(({ edge }) => touching.rankOf[edge]!).sort((r, s) => r - s);
    const sides = new Set(contacts.map(({ edge }) => sideOf(this.piecing, patch, edge)));
    const side = sides.has(1) ? 1 : -1;
    return {
      neighbours: setOf(contacts.map(({ neighbour }) => neighbour)),
      beyond: setOf(this.costs.farSides.reachingBeyond({ line, side })),
      unbroken: ranks.every((rank, i) => i === 0 || touching.end[ranks[i - 1]!] === touching.start[rank]),
      bothSides: sides.size > 1,
    };
  }

  /** The cost of taking `patch` off the connected set, without that of a jump; Infinity where it does not come off. */
  ofTaking(patch: number, set: number): number {
    if ((this.heldBy[patch]! & set) !== 0) return Number.POSITIVE_INFINITY;
    const rest = set & ~(1 << patch);
    let touched = 0;
    let seam: Seam | undefined;
    for (const s of this.seams[patch]!) {
      const here = s.neighbours & rest;
      if (here === 0) continue;
      if (seam !== undefined) return Number.POSITIVE_INFINITY;
      touched = here;
      seam = s;
    }
    if (seam === undefined || !this.isConnected(rest, touched)) return Number.POSITIVE_INFINITY;

    const some = touched !== seam.neighbours && !isSingle(touched);
    if (some || !seam.unbroken || seam.bothSides) {
      for (const p of this.piecing.all) this.mask[p] = (rest >> p) & 1;
      return this.costs.ofStep(patch, this.mask);
    }
    const { showThrough, uncleanFolds } = this.costs.weights;
    return (
      ((this.darker[patch]! & touched) !== 0 ? showThrough : 0) +
      ((seam.beyond & rest) !== 0 ? uncleanFolds : 0)
    );
  }

  /** Whether some patches of a set hang together within it. */
  private isConnected(set: number, some: number): boolean {
    if (isSingle(some)) return true;
    let reached = some & -some;
    for (let fresh = reached; fresh !== 0; ) {
      const p = 31 - Math.clz32(fresh);
      const found = this.neighbours[p]! & set & ~reached;
      reached |= found;
      if ((some & ~reached) === 0) return true;
      fresh = (fresh & ~(1 << p)) | found;
    }
    return false;
  }

  /**
   * No way to take all of a set off but one patch costs less. Of those whose cost is unavoidable one at most escapes it:
   * the first of the order, which is never taken off.
   */
  atLeast(set: number): number {
    let forced = 0;
    let escapes = 0;
    for (let rest = set; rest !== 0; rest &= rest - 1) {
      const p = 31 - Math.clz32(rest & -rest);
      const neighbours = this.neighbours[p]! & set;
      if (neighbours === 0 || (neighbours & ~this.darker[p]!) !== 0) continue;
      forced += 1;
      if (((this.mayBeFirst >> p) & 1) === 1) escapes = 1;
    }
    return (forced - escapes) * this.costs.weights.showThrough;
  }
}

const isSingle = (set: number): boolean => (set & (set - 1)) === 0;

export const setOf = (patches: readonly number[]): number => patches.reduce((set, p) => set | (1 << p), 0);
