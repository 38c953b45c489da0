import type { AlongLines } from '../along-lines.ts';
import type { Contacts, Touching } from '../contact.ts';
import { type Corners, patchesRound } from '../corners.ts';
import type { Region } from '../region.ts';

/** Who touches whom among the patches of one section, and the edges of the whole block along its lines. */
export type TouchingAlone = Contacts & AlongLines;

/**
 * The patches of a region by themselves, renumbered by their places in it: what touches them from outside the region
 * counts as no patch. The work on one section then costs what the section is large, not what the block is.
 *
 * Edges, lines and vertices keep their numbers. Contacts and corners are numbered anew; of the corners only those are left that
 * lie inside the region.
 */
export function touchingAlone(touching: Touching, region: Region): TouchingAlone {
  const numberOf = new Map(region.map((patch, i) => [patch, i]));
  const first = new Int32Array(region.length + 1);
  const kept: number[] = [];
  const slotOf = new Map<number, number>();
  region.forEach((patch, i) => {
    let free = kept.length;
    for (let c = touching.first[patch]!; c < touching.first[patch + 1]!; c += 1) {
      if (!numberOf.has(touching.neighbour[c]!)) continue;
      if (!slotOf.has(touching.slot[c]!)) {
        slotOf.set(touching.slot[c]!, free);
        free += 1;
      }
      kept.push(c);
    }
    first[i + 1] = kept.length;
  });
  const { edge, line, start, end, goesOn, rankOf } = touching;
  return {
    ...{ edge, line, start, end, goesOn, rankOf },
    count: region.length,
    first,
    neighbour: Int32Array.from(kept, (c) => numberOf.get(touching.neighbour[c]!)!),
    rank: Int32Array.from(kept, (c) => touching.rank[c]!),
    slot: Int32Array.from(kept, (c) => slotOf.get(touching.slot[c]!)!),
    slotAcross: Int32Array.from(kept, (c) => slotOf.get(touching.slotAcross[c]!)!),
    ...cornersAlone(touching, kept, numberOf),
  };
}

/** The corners after some contacts, as far as all patches round them have a number. */
function cornersAlone(
  touching: Touching,
  contacts: readonly number[],
  numberOf: ReadonlyMap<number, number>,
): Corners & Pick<Contacts, 'cornerAfter'> {
  const cornerOf = new Map([[-1, -1]]);
  const around: number[] = [];
  const aroundFirst = [0];
  const cornerAfter = Int32Array.from(contacts, (c) => {
    const vertex = touching.cornerAfter[c]!;
    let corner = cornerOf.get(vertex);
    if (corner === undefined) {
      const patches = Array.from(patchesRound(touching, vertex), (p) => numberOf.get(p) ?? -1);
      const inside = touching.outer[vertex] === 0 && !patches.includes(-1);
      corner = inside ? aroundFirst.length - 1 : -1;
      cornerOf.set(vertex, corner);
      if (inside) aroundFirst.push(around.push(...patches));
    }
    return corner;
  });
  return {
    cornerAfter,
    aroundFirst: Int32Array.from(aroundFirst),
    around: Int32Array.from(around),
    outer: new Uint8Array(aroundFirst.length - 1),
  };
}
