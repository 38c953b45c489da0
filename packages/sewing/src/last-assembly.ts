import { patchesOfPin } from '@seamwright/arrangement';
import type { AssemblyResult } from './assemble.ts';
import { type Assembly, joinOf, sectionOf, stuckAt } from './assembly.ts';
import type { Region } from './region.ts';
import { type Renumbering, renumbering, type Touched } from './renumbering.ts';
import type { Pin } from './types.ts';

/** All that an assembly depends on besides who touches whom. */
export interface Wanted {
  readonly pins: readonly Pin[];
  /** Everything else, as one word. */
  readonly how: string;
}

/** What the last plan came to, in the numbers of the block that is planned now. */
export interface Recalled extends AssemblyResult {
  /** The piecing orders of its sections. */
  readonly orders: readonly (readonly number[])[];
}

/**
 * What the last plan came to, for the next plan of a block of which only places have changed: while a line is dragged, who
 * touches whom on which line mostly stays as it is, and all that sewability depends on is that.
 * (The numbers of patches and lines may change meanwhile: they follow from places.)
 *
 * Lengths and shapes, which decide among assemblies and orders that are equally good otherwise, may have changed: what is
 * recalled holds, but need not be the very assembly, nor the orders, that a plan of its own would choose.
 */
export class LastAssembly {
  private last: { block: Touched; wanted: Wanted; result: Recalled } | null = null;

  recall(block: Touched, wanted: Wanted): Recalled | null {
    const { last } = this;
    if (last === null || last.wanted.how !== wanted.how) return null;
    const now = renumbering(last.block, block);
    if (now === null || !arePinsOf(last.wanted.pins, wanted.pins, now)) return null;
    const { assembly, orders } = last.result;
    return {
      ...last.result,
      assembly: renumbered(assembly, now),
      orders: orders.map((order) => order.map((p) => now.patches[p]!)),
    };
  }

  keep(block: Touched, wanted: Wanted, result: Recalled): void {
    this.last = { block, wanted, result };
  }
}

const arePinsOf = (before: readonly Pin[], pins: readonly Pin[], { patches }: Renumbering): boolean =>
  before.length === pins.length &&
  before.every((pin, i) => {
    const there = pins[i]!;
    const [own, others] = [patchesOfPin(pin), patchesOfPin(there)];
    return (
      pin.kind === there.kind &&
      (pin.kind !== 'letter' || there.kind !== 'letter' || pin.letter === there.letter) &&
      own.every((p, k) => patches[p] === others[k])
    );
  });

function renumbered(assembly: Assembly, now: Renumbering): Assembly {
  switch (assembly.kind) {
    case 'section':
      return sectionOf(renumberedRegion(assembly.patches, now));
    case 'stuck':
      return stuckAt(renumberedRegion(assembly.patches, now));
    case 'join': {
      const [a, b] = assembly.units;
      return joinOf(now.lines[assembly.line]!, [renumbered(a, now), renumbered(b, now)]);
    }
  }
}

/** Patches of a region stand in the order of their numbers. */
const renumberedRegion = (region: Region, { patches }: Renumbering): Region =>
  region.map((p) => patches[p]!).sort((p, q) => p - q);
