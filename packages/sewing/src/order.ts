import { type Arrangement, boundaryRing, cornersOfRing } from '@seamwright/arrangement';
import { contactsOf, runOf, type Touching } from './contact.ts';
import { chooseOrder, type OrderOptions } from './order/choose.ts';
import type { Region } from './region.ts';
import type { Section, SewLine } from './types.ts';

/**
 * A section sewn in the best piecing order, or a good one where that is too much to find; {@link chooseOrder} says what is
 * best.
 *
 * @param region patches that are good on one foundation, as the maker wants it; an Error when they are not
 */
export function sewSection(
  arrangement: Arrangement,
  touching: Touching,
  region: Region,
  letter: string,
  options: OrderOptions = {},
): Section {
  const chosen = chooseOrder(arrangement, touching, region, options);
  if (chosen === null) throw new Error('sewSection: the region is not good on one foundation');
  return { ...laidOut(arrangement, touching, chosen.order, letter), ...chosen };
}

/** Whether each patch after the first touches those before it, along one line. */
export function isGoodOrder(touching: Touching, order: readonly number[]): boolean {
  const sewn = new Set<number>();
  return order.every((patch, k) => {
    const contacts = contactsOf(touching, patch).filter(({ neighbour }) => sewn.has(neighbour));
    sewn.add(patch);
    return k === 0 || (contacts.length > 0 && contacts.every(({ line }) => line === contacts[0]!.line));
  });
}

/** What follows from the order of a section's patches: their sew lines, and the boundary. */
export function laidOut(
  arrangement: Arrangement,
  touching: Touching,
  order: readonly number[],
  letter: string,
): Pick<Section, 'letter' | 'order' | 'sewLines' | 'outline' | 'ring'> {
  const ring = boundaryRing(arrangement, new Set(order));
  return {
    letter,
    order,
    sewLines: sewLinesOf(arrangement, touching, order),
    outline: cornersOfRing(arrangement, ring),
    ring,
  };
}

/** For each patch but the first, the run along which it touches those before it. */
function sewLinesOf(arrangement: Arrangement, touching: Touching, order: readonly number[]): SewLine[] {
  const sewn = new Set(order.slice(0, 1));
  return order.slice(1).map((patch) => {
    const contacts = contactsOf(touching, patch).filter(({ neighbour }) => sewn.has(neighbour));
    sewn.add(patch);
    const { line } = contacts[0]!;
    return {
      patch,
      line,
      ...runOf(
        arrangement,
        line,
        contacts.map(({ edge }) => edge),
      ),
    };
  });
}
