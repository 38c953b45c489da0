import type { Region } from './region.ts';
import type { Pin } from './types.ts';

/** The maker's pins and limits in the form that the search asks them. Letters are for naming only. */
export interface Will {
  /** No section has more patches than this. */
  readonly largestSection: number;
  /** Patches that are the first of their sections. */
  readonly firsts: ReadonlySet<number>;
  /** For a patch, those that must not be sewn before it. */
  readonly before: ReadonlyMap<number, readonly number[]>;
  readonly together: readonly (readonly [number, number])[];
  readonly apart: readonly (readonly [number, number])[];
}

export const NO_WILL: Will = willOf([]);

export function willOf(pins: readonly Pin[], largestSection = Number.POSITIVE_INFINITY): Will {
  const before = new Map<number, number[]>();
  for (const pin of pins) {
    if (pin.kind !== 'before') continue;
    const later = before.get(pin.patch);
    if (later === undefined) before.set(pin.patch, [pin.than]);
    else later.push(pin.than);
  }
  return {
    largestSection,
    firsts: new Set(pins.flatMap((pin) => (pin.kind === 'first' ? [pin.patch] : []))),
    before,
    together: pins.flatMap((pin) => (pin.kind === 'together' ? [pin.patches] : [])),
    apart: pins.flatMap((pin) => (pin.kind === 'apart' ? [pin.patches] : [])),
  };
}

/** Whether a set of patches may share a section as far as its members go (its orders are another question). */
export function mayBeSection({ largestSection, firsts, apart }: Will, region: Region): boolean {
  if (region.length > largestSection) return false;
  if (apart.length === 0 && firsts.size <= 1) return true;
  const has = new Set(region);
  if (apart.some(([p, q]) => has.has(p) && has.has(q))) return false;
  let first = 0;
  for (const p of firsts) if (has.has(p)) first += 1;
  return first <= 1;
}

/** Whether a cut leaves together what the maker wants together. */
export function mayCut({ together }: Will, part: Region): boolean {
  if (together.length === 0) return true;
  const has = new Set(part);
  return together.every(([p, q]) => has.has(p) === has.has(q));
}
