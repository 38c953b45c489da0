import type { Contact, Touching } from '../contact.ts';
import type { Region } from '../region.ts';

/**
 * The patches of a region by themselves, renumbered by their places in it: what touches them from outside the region
 * counts as no patch. The work on one section then costs what the section is large, not what the block is.
 *
 * Edges, lines and vertices keep their numbers; `around` knows the vertices of the region's own seams only.
 */
export function touchingAlone(touching: Touching, region: Region): Touching {
  const numberOf = new Map(region.map((patch, i) => [patch, i]));
  const around: number[][] = [];
  const contacts = region.map((patch) =>
    touching.contacts[patch]!.flatMap((contact): Contact[] => {
      const neighbour = numberOf.get(contact.neighbour);
      if (neighbour === undefined) return [];
      const { start, end } = touching.alongLines[touching.rankOf[contact.edge]!]!;
      for (const vertex of [start, end]) {
        around[vertex] ??= touching.around[vertex]!.map((p) => numberOf.get(p) ?? -1);
      }
      return [{ ...contact, neighbour }];
    }),
  );
  return {
    ...touching,
    count: region.length,
    contacts,
    linesOf: region.map((patch) => touching.linesOf[patch]!),
    around,
  };
}
