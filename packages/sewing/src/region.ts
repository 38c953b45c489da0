import type { Contact, Touching } from './contact.ts';
import { WorkingMemory } from './working-memory.ts';

/** Some patches of a block, ascending. Regions that are sewn are connected. */
export type Region = readonly number[];

/** A region as a mask over all patches, for quick asking. */
export function maskOf(touching: Touching, region: Region): Uint8Array {
  const mask = new Uint8Array(touching.count);
  for (const p of region) mask[p] = 1;
  return mask;
}

const masks = new WorkingMemory((touching) => new Uint8Array(touching.count));

/** Gives `use` the region as a mask, for as long as it runs. It may take patches of the region out of it. */
export const withMask = <T>(touching: Touching, region: Region, use: (mask: Uint8Array) => T): T =>
  masks.lend(touching, (mask) => {
    for (const p of region) mask[p] = 1;
    try {
      return use(mask);
    } finally {
      for (const p of region) mask[p] = 0;
    }
  });

/**
 * The connected parts of a region when no way across the line `without` counts (none: all ways count). Each part
 * ascending, parts in order of their least patch.
 */
export function partsOf(touching: Touching, region: Region, mask: Uint8Array, without = -1): number[][] {
  const partOf = new Int32Array(touching.count).fill(-1);
  const parts: number[][] = [];
  const open: number[] = [];
  for (const start of region) {
    if (partOf[start] !== -1) continue;
    partOf[start] = parts.length;
    open.push(start);
    for (let patch = open.pop(); patch !== undefined; patch = open.pop()) {
      for (const { neighbour, line } of touching.contacts[patch]!) {
        if (line === without || mask[neighbour] === 0 || partOf[neighbour] !== -1) continue;
        partOf[neighbour] = parts.length;
        open.push(neighbour);
      }
    }
    parts.push([]);
  }
  // Dealt out in the region's own order, so that nothing needs sorting.
  for (const patch of region) parts[partOf[patch]!]!.push(patch);
  return parts;
}

/**
 * Whether a connected region stays connected without `patch`, whose contacts with it all lie on one line.
 *
 * Two contacts that follow each other along the line are connected round the vertex between them when every patch
 * there belongs to the region. Where that leaves one run of contacts, the rest holds together; where it does not,
 * the rest is searched.
 */
export function holdsWithout(touching: Touching, region: Region, mask: Uint8Array, patch: number): boolean {
  // Asked of every patch that may come off, so nothing is made anew here.
  let runs = 0;
  let first: Contact | undefined;
  let before: Contact | undefined;
  for (const contact of touching.contacts[patch]!) {
    if (mask[contact.neighbour] === 0) continue;
    if (before === undefined || !isJoinedBetween(touching, mask, patch, before, contact)) runs += 1;
    first ??= contact;
    before = contact;
  }
  // The last contact of the ring may go on in the first one.
  if (runs > 1 && isJoinedBetween(touching, mask, patch, before!, first!)) runs -= 1;
  if (runs <= 1) return true;
  const rest = region.filter((p) => p !== patch && mask[p] === 1);
  return withMask(touching, rest, (left) => partsOf(touching, rest, left).length === 1);
}

/** Whether two contacts of a patch follow each other, and all other patches round the vertex between them are in the mask. */
function isJoinedBetween(
  { sharedVertex, around }: Touching,
  mask: Uint8Array,
  patch: number,
  { edge }: Contact,
  next: Contact,
): boolean {
  const vertex = sharedVertex(edge, next.edge);
  if (vertex < 0) return false;
  for (const p of around[vertex]!) if (p !== patch && (p < 0 || mask[p] === 0)) return false;
  return true;
}
