import type { Arrangement } from '@seamwright/arrangement';
import { distance } from '@seamwright/geometry';
import type { Touching } from '../contact.ts';
import { holdsWithout } from '../holds-without.ts';
import type { Region } from '../region.ts';
import { NO_WILL, type Will } from '../will.ts';
import { type TouchingAlone, touchingAlone } from './alone.ts';

/**
 * One section as its piecing orders are compared. Its patches are numbered 0 … n − 1 here; sets of them are masks, which
 * a search reads as "sewn so far" or, peeling, as "still there".
 */
export interface Piecing {
  readonly arrangement: Arrangement;
  /** For each number here, the patch of the block. */
  readonly patches: Region;
  readonly all: Region;
  readonly touching: TouchingAlone;
  readonly will: Will;
  /** For each patch, those that the maker wants sewn before it. */
  readonly earlier: ReadonlyMap<number, readonly number[]>;
  /** Lightness from 0, dark, to 1, light; NaN where it is not known. */
  readonly shade: Float64Array;
  /** Inches from the middle of the section. */
  readonly offMiddle: Float64Array;
}

/** @param shade lightness of a patch of the block, 0 … 1 */
export function piecingOf(
  arrangement: Arrangement,
  touching: Touching,
  region: Region,
  will: Will,
  shade: (patch: number) => number | undefined,
): Piecing {
  const hearts = region.map((p) => arrangement.patches[p]!.heart);
  const middle = { x: 0, y: 0 };
  for (const { x, y } of hearts) {
    middle.x += x / hearts.length;
    middle.y += y / hearts.length;
  }
  const ownWill = willWithin(region, will);
  const earlier = new Map<number, number[]>();
  for (const [patch, later] of ownWill.before) {
    for (const p of later) earlier.set(p, [...(earlier.get(p) ?? []), patch]);
  }
  return {
    arrangement,
    patches: region,
    all: region.map((_, i) => i),
    touching: touchingAlone(touching, region),
    will: ownWill,
    earlier,
    shade: Float64Array.from(region, (p) => shade(p) ?? Number.NaN),
    offMiddle: Float64Array.from(hearts, (heart) => distance(heart, middle)),
  };
}

/** What the maker wants of the order of these patches, by their numbers here; the rest plays no part in it. */
function willWithin(region: Region, { firsts, before }: Will): Will {
  if (firsts.size === 0 && before.size === 0) return NO_WILL;
  const numberOf = new Map(region.map((patch, i) => [patch, i]));
  const inside = (patches: Iterable<number>) => [...patches].flatMap((p) => numberOf.get(p) ?? []);
  return {
    ...NO_WILL,
    firsts: new Set(inside(firsts)),
    before: new Map(
      [...before].flatMap(([patch, later]) => {
        const number = numberOf.get(patch);
        return number === undefined ? [] : [[number, inside(later)] as const];
      }),
    ),
  };
}

/**
 * Whether `patch` can be taken off the connected set `left`, of which it is one of several; {@link peel} says why that
 * is all there is to know.
 */
export function comesOff({ touching, will }: Piecing, patch: number, left: Uint8Array): boolean {
  const { first, neighbour, slot } = touching;
  let line = -1;
  let edges = 0;
  for (let c = first[patch]!; c < first[patch + 1]!; c += 1) {
    if (left[neighbour[c]!] === 0) continue;
    if (edges > 0 && slot[c] !== line) return false;
    line = slot[c]!;
    edges += 1;
  }
  if (edges === 0 || will.firsts.has(patch)) return false;
  if (will.before.get(patch)?.some((later) => left[later] === 1)) return false;
  return edges === 1 || holdsWithout(touching, left, patch);
}
