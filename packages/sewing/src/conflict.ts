import { canAssemble, type Joinery } from './assemble.ts';
import type { Region } from './region.ts';
import type { Pin } from './types.ts';
import { willOf } from './will.ts';

/** Contacts that may be visited to find out whether one set of pins can hold; many sets are tried. */
const EFFORT_PER_SET = 1_000_000;

/** Sets of pins that are tried for a smaller conflict, after one was found by leaving out pins one by one. */
const SETS_TRIED = 200;

/**
 * The smallest set of pins that cannot hold together, although the block can be sewn without them. Of every set that is
 * named it is proved; what is too much to find out counts as possible.
 */
export const smallestConflict = (
  joinery: Joinery,
  region: Region,
  pins: readonly Pin[],
  largestSection: number,
): readonly Pin[] =>
  smallestSet(
    pins,
    (some) => canAssemble(joinery, region, willOf(some, largestSection), EFFORT_PER_SET) !== false,
    SETS_TRIED,
  );

/**
 * Takes up pins one by one, where for all at once it is too much to find out whether they can hold together: those that can
 * beside those before them are kept. Either some turn out to be impossible, or some stay undecided.
 *
 * @param effort contacts that may be visited for each pin
 */
export function oneByOne(
  joinery: Joinery,
  region: Region,
  pins: readonly Pin[],
  largestSection: number,
  effort: number,
): { readonly impossible: readonly Pin[]; readonly undecided: readonly Pin[] } {
  // Only where patches are to stay together can a cut be wrong; whatever else is wanted is soon decided.
  const together = pins.filter(({ kind }) => kind === 'together');
  const kept = pins.filter(({ kind }) => kind !== 'together');
  const undecided: Pin[] = [];
  for (const pin of together) {
    const some = [...kept, pin];
    const can = canAssemble(joinery, region, willOf(some, largestSection), Math.min(effort, EFFORT_PER_SET));
    if (can === false) return { impossible: some, undecided: [] };
    (can ? kept : undecided).push(pin);
  }
  return { impossible: [], undecided: undecided.length > 0 ? undecided : together };
}

/**
 * The smallest set of pins that cannot hold together, of some that cannot.
 *
 * Leaving out one pin after the other keeps only those that matter; then smaller sets are tried, by size, as far as
 * `setsTried` reaches.
 */
export function smallestSet(
  pins: readonly Pin[],
  holds: (some: readonly Pin[]) => boolean,
  setsTried: number,
): readonly Pin[] {
  let core = pins;
  for (const pin of pins) {
    const without = core.filter((p) => p !== pin);
    if (!holds(without)) core = without;
  }
  let tried = 0;
  for (let size = 1; size < core.length; size += 1) {
    for (const some of subsets(pins, size)) {
      tried += 1;
      if (tried > setsTried) return core;
      if (!holds(some)) return some;
    }
  }
  return core;
}

function* subsets<T>(items: readonly T[], size: number, from = 0): Generator<T[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (let i = from; i + size <= items.length; i += 1) {
    for (const rest of subsets(items, size - 1, i + 1)) yield [items[i]!, ...rest];
  }
}

/** Pins for letters that cannot hold together in a given division into sections: two letters for one, or one for two. */
export function letterConflict(
  sections: readonly Region[],
  pins: readonly Extract<Pin, { kind: 'letter' }>[],
): readonly Pin[] {
  const sectionOf = (pin: { patch: number }) => sections.findIndex((section) => section.includes(pin.patch));
  for (const [i, pin] of pins.entries()) {
    for (const other of pins.slice(0, i)) {
      const sameSection = sectionOf(pin) === sectionOf(other);
      if (sameSection !== (pin.letter === other.letter)) return [other, pin];
    }
  }
  return [];
}
