import type { Contacts } from './contact.ts';
import { isInside } from './corners.ts';
import { emptyMask } from './region.ts';
import { WorkingMemory } from './working-memory.ts';

/**
 * Whether a connected region stays connected without `patch`, one of its patches, whose contacts with it all lie on one line.
 *
 * Two contacts that follow each other along the line are connected round the corner between them when every patch
 * there belongs to the region. Where that leaves one run of contacts, the rest holds together; where it does not,
 * the rest is searched.
 */
export function holdsWithout(contacts: Contacts, mask: Uint8Array, patch: number): boolean {
  // Asked of every patch that may come off, so nothing is made anew here.
  const { first, neighbour } = contacts;
  const from = first[patch]!;
  const last = first[patch + 1]! - 1;
  let runs = 0;
  let inside = false;
  for (let c = from; c <= last; c += 1) {
    const before = inside;
    inside = mask[neighbour[c]!] === 1;
    if (inside && !(before && isJoinedAfter(contacts, mask, c - 1))) runs += 1;
  }
  // The last contact of the ring may go on in the first one.
  if (runs > 1 && inside && mask[neighbour[from]!] === 1 && isJoinedAfter(contacts, mask, last)) runs -= 1;
  return runs <= 1 || neighboursMeet(contacts, mask, patch);
}

const isJoinedAfter = (contacts: Contacts, mask: Uint8Array, contact: number): boolean => {
  const corner = contacts.cornerAfter[contact]!;
  return corner >= 0 && isInside(contacts, mask, corner);
};

interface Walk {
  /** Marks the patches that were reached; empty between walks. */
  readonly reached: Uint8Array;
  readonly open: Int32Array;
}

const walks = new WorkingMemory(
  (contacts): Walk => ({ reached: emptyMask(contacts), open: new Int32Array(contacts.count) }),
);

/** Whether from one neighbour of a patch within the mask all others are reached without it. */
const neighboursMeet = (contacts: Contacts, mask: Uint8Array, patch: number): boolean =>
  walks.lend(contacts, ({ reached, open }) => {
    const { first, neighbour } = contacts;
    // Neighbours are marked so that they can be counted off as they are reached.
    const SOUGHT = 2;
    let [from, to, sought] = [0, 0, 0];
    for (let c = first[patch]!; c < first[patch + 1]!; c += 1) {
      const q = neighbour[c]!;
      if (mask[q] === 0 || reached[q] === SOUGHT) continue;
      reached[q] = SOUGHT;
      sought += 1;
      open[0] = q;
    }
    reached[open[0]!] = 1;
    [to, sought] = [1, sought - 1];
    for (; from < to && sought > 0; from += 1) {
      const p = open[from]!;
      for (let c = first[p]!; c < first[p + 1]!; c += 1) {
        const q = neighbour[c]!;
        if (mask[q] === 0 || reached[q] === 1 || q === patch) continue;
        if (reached[q] === SOUGHT) sought -= 1;
        reached[q] = 1;
        open[to] = q;
        to += 1;
      }
    }
    for (let i = 0; i < to; i += 1) reached[open[i]!] = 0;
    for (const q of neighbour.subarray(first[patch]!, first[patch + 1]!)) reached[q] = 0;
    return sought === 0;
  });
