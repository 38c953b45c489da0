import type { Arrangement } from '@seamwright/arrangement';
import type { Segment } from '@seamwright/geometry';

/** A patch beside another, and the stretches of seam between them. */
export interface Neighbour {
  readonly patch: number;
  readonly seams: readonly Segment[];
}

/** The patches that share a seam with this one, in the order of its boundary. */
export function neighboursOf({ patches, edges, vertices }: Arrangement, patch: number): Neighbour[] {
  const found = new Map<number, Segment[]>();
  for (const edge of patches[patch]!.border) {
    const { from, to, left, right } = edges[edge]!;
    const other = left === patch ? right : left;
    if (other < 0) continue;
    const seam = { a: vertices[from]!.at, b: vertices[to]!.at };
    found.set(other, [...(found.get(other) ?? []), seam]);
  }
  return [...found].map(([other, seams]) => ({ patch: other, seams }));
}
