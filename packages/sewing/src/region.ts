import { type Contacts, nobody } from './contact.ts';
import { WorkingMemory } from './working-memory.ts';

/** Some patches of a block, ascending. Regions that are sewn are connected. */
export type Region = readonly number[];

/** A mask of no patch; it has a place for {@link nobody}, too. */
export const emptyMask = (contacts: Contacts): Uint8Array => new Uint8Array(nobody(contacts) + 1);

/** A region as a mask over all patches, for quick asking. */
export function maskOf(contacts: Contacts, region: Region): Uint8Array {
  const mask = emptyMask(contacts);
  for (const p of region) mask[p] = 1;
  return mask;
}

const masks = new WorkingMemory(emptyMask);

/** Gives `use` the region as a mask, for as long as it runs. It may take patches of the region out of it. */
export const withMask = <T>(contacts: Contacts, region: Region, use: (mask: Uint8Array) => T): T =>
  masks.lend(contacts, (mask) => {
    for (const p of region) mask[p] = 1;
    try {
      return use(mask);
    } finally {
      for (const p of region) mask[p] = 0;
    }
  });

/** The connected parts of a region: each ascending, in order of their least patch. */
export function partsOf({ count, first, neighbour }: Contacts, region: Region, mask: Uint8Array): number[][] {
  const partOf = new Int32Array(count).fill(-1);
  const parts: number[][] = [];
  const open: number[] = [];
  for (const start of region) {
    if (partOf[start] !== -1) continue;
    partOf[start] = parts.length;
    open.push(start);
    for (let patch = open.pop(); patch !== undefined; patch = open.pop()) {
      for (let c = first[patch]!; c < first[patch + 1]!; c += 1) {
        const q = neighbour[c]!;
        if (mask[q] === 0 || partOf[q] !== -1) continue;
        partOf[q] = parts.length;
        open.push(q);
      }
    }
    parts.push([]);
  }
  // Dealt out in the region's own order, so that nothing needs sorting.
  for (const patch of region) parts[partOf[patch]!]!.push(patch);
  return parts;
}

/** The ranks of the edges along which patches of a region touch each other, ascending. */
export function ranksWithin(
  { first, neighbour, rank }: Contacts,
  region: Region,
  mask: Uint8Array,
): Int32Array {
  let count = 0;
  for (const p of region) {
    for (let c = first[p]!; c < first[p + 1]!; c += 1)
      if (p < neighbour[c]! && mask[neighbour[c]!] === 1) count += 1;
  }
  const ranks = new Int32Array(count);
  let at = 0;
  for (const p of region) {
    for (let c = first[p]!; c < first[p + 1]!; c += 1) {
      if (p < neighbour[c]! && mask[neighbour[c]!] === 1) {
        ranks[at] = rank[c]!;
        at += 1;
      }
    }
  }
  return ranks.sort();
}
