import type { Joinery } from './assemble.ts';
import { smallestSet } from './conflict.ts';
import { assembleWithPartialSeams, type PartialAssembly } from './partial/assemble-partial.ts';
import type { Region } from './region.ts';
import type { Pin } from './types.ts';
import { willOf } from './will.ts';

/** Sets of pins that are tried for a smaller conflict: each is a search of its own for seams to leave open. */
const SETS_TRIED = 20;

/** A block put together with partial seams, and the pins that it heeds. */
export interface PinnedPartialAssembly extends PartialAssembly {
  readonly pins: readonly Pin[];
  /** Pins that are left out: no way was found to heed them. Not every way to leave seams open is tried, so it is no proof. */
  readonly undecided: readonly Pin[];
}

/** Puts a region together with partial seams as the maker wants it; null where partial seams do not suffice. */
export function assemblePinned(
  joinery: Joinery,
  region: Region,
  pins: readonly Pin[],
  largestSection: number,
): PinnedPartialAssembly | null {
  const made = (some: readonly Pin[]) =>
    assembleWithPartialSeams(joinery, region, willOf(some, largestSection));
  let kept = pins;
  const undecided: Pin[] = [];
  let assembly = made(kept);
  while (assembly === null && kept.length > 0 && made([]) !== null) {
    const clash = smallestSet(kept, (some) => made(some) !== null, SETS_TRIED);
    undecided.push(...clash);
    kept = kept.filter((pin) => !clash.includes(pin));
    assembly = made(kept);
  }
  return assembly === null ? null : { ...assembly, pins: kept, undecided };
}
