import { type Arrangement, boundaryRing, cornersOfRing } from '@seamwright/arrangement';
import { distance } from '@seamwright/geometry';
import { runOf, type Touching } from './contact.ts';
import { peelNearby } from './peel.ts';
import { maskOf, type Region } from './region.ts';
import type { Section, SewLine } from './types.ts';
import { NO_WILL, type Will } from './will.ts';

/**
 * A section sewn in a piecing order that does not jump about: read backwards, each patch is taken off beside the one
 * taken before where that is possible, and far from the middle before near it.
 *
 * @param region patches that are good on one foundation, as the maker wants it
 */
export function sewSection(
  arrangement: Arrangement,
  touching: Touching,
  region: Region,
  letter: string,
  { will = NO_WILL }: { will?: Will } = {},
): Section {
  const hearts = region.map((p) => arrangement.patches[p]!.heart);
  const middle = hearts.reduce(
    (sum, p) => ({ x: sum.x + p.x / hearts.length, y: sum.y + p.y / hearts.length }),
    { x: 0, y: 0 },
  );
  const rank = (p: number) => distance(arrangement.patches[p]!.heart, middle);
  const { taken, core } = peelNearby(touching, region, rank, will);
  if (core.length !== 1) throw new Error('sewSection: the region is not good on one foundation');
  return sectionInOrder(arrangement, touching, [core[0]!, ...[...taken].reverse()], letter);
}

/** The section whose patches are sewn in this order, which must be a good one. */
export function sectionInOrder(
  arrangement: Arrangement,
  touching: Touching,
  order: readonly number[],
  letter: string,
): Section {
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
  const sewn = maskOf(touching, order.slice(0, 1));
  return order.slice(1).map((patch) => {
    const contacts = touching.contacts[patch]!.filter(({ neighbour }) => sewn[neighbour] === 1);
    sewn[patch] = 1;
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
