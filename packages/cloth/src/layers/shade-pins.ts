import type { Arrangement } from '@seamwright/arrangement';
import { type Pin, type Section, sectionForShades } from '@seamwright/sewing';
import { showThrough } from './show-through.ts';

/** What to ask of a section's order so that fewer dark allowances lie under lighter patches. */
export interface ShadeWish {
  readonly letter: string;
  /** Lighter patches with dark allowances under them: in the section's order, and in the better one. */
  readonly now: number;
  readonly better: number;
  /** `before` pins that lead to an order with no more than `better`; none where that is not below `now`. */
  readonly pins: readonly Pin[];
}

/**
 * Looks for an order of the section with fewer places where dark shows through, and for the fewest kinds of pins that lead
 * to it: at the seams that have to change, at all seams between light and dark, or, where neither is enough, from each patch
 * to the next.
 *
 * @param lightnessOf a patch's lightness from 0, dark, to 1, light; undefined where it is not known
 * @param least how much lighter a patch must be
 * @param pins the maker's; those that the section's order does not heed, or that are about others, are left out of account
 */
export function shadePins(
  arrangement: Arrangement,
  section: Pick<Section, 'letter' | 'order'>,
  lightnessOf: (patch: number) => number | undefined,
  least: number,
  pins: readonly Pin[] = [],
): ShadeWish {
  const kept = pins.filter((pin) => isHeeded(pin, section.order));
  const count = ({ order }: Pick<Section, 'order'>) =>
    showThrough(arrangement, { sections: [{ ...section, order } as Section] }, lightnessOf, least).length;
  const best = sectionForShades(arrangement, section, lightnessOf, kept);
  const [now, better] = [count(section), count(best)];
  const { letter } = section;
  if (better >= now) return { letter, now, better: now, pins: [] };
  const wishes = lightFirst(arrangement, best.order, lightnessOf, least);
  const leads = (more: readonly Pin[]) =>
    count(sectionForShades(arrangement, section, () => undefined, [...kept, ...more])) <= better;
  const changed = wishes.filter((pin) => !isHeeded(pin, section.order));
  const found = [changed, wishes].find(leads) ?? chain(best.order);
  return { letter, now, better, pins: found };
}

/** At each seam between a light and a dark patch at which the order sews the light one first: that it does. */
function lightFirst(
  { edges }: Arrangement,
  order: readonly number[],
  lightnessOf: (patch: number) => number | undefined,
  least: number,
): readonly Pin[] {
  const place = new Map(order.map((patch, k) => [patch, k]));
  const pins = new Map<string, Pin>();
  for (const { left, right } of edges) {
    const [l, r] = [lightnessOf(left), lightnessOf(right)];
    if (l === undefined || r === undefined || Math.abs(l - r) <= least) continue;
    const [patch, than] = l > r ? [left, right] : [right, left];
    const [first, second] = [place.get(patch), place.get(than)];
    if (first !== undefined && second !== undefined && first < second)
      pins.set(`${patch} ${than}`, { kind: 'before', patch, than });
  }
  return [...pins.values()];
}

const chain = (order: readonly number[]): readonly Pin[] =>
  order.slice(1).map((than, k) => ({ kind: 'before', patch: order[k]!, than }));

/** Whether the pin says something of the order, and the order does it. */
function isHeeded(pin: Pin, order: readonly number[]): boolean {
  if (pin.kind === 'first') return order[0] === pin.patch;
  if (pin.kind !== 'before') return false;
  const [first, second] = [order.indexOf(pin.patch), order.indexOf(pin.than)];
  return first >= 0 && first < second;
}
