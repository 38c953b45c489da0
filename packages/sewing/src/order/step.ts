import type { Piecing } from './piecing.ts';

/** Sewing one patch on to those before it. */
export interface Step {
  readonly line: number;
  /** On which side of the line, seen in its direction, the patch comes to lie: 1 right, −1 left (y down). */
  readonly side: 1 | -1;
  /** Both allowances lie under the newer patch; true when one of them belongs to a darker patch. */
  readonly showsThrough: boolean;
}

/** How `patch` is sewn to the patches of `sewn`; its contact with them lies on one line. */
export function stepOnto(piecing: Piecing, patch: number, sewn: Uint8Array): Step {
  const { touching, shade } = piecing;
  const { first, neighbour, rank } = touching;
  let least = Number.POSITIVE_INFINITY;
  let showsThrough = false;
  for (let c = first[patch]!; c < first[patch + 1]!; c += 1) {
    const q = neighbour[c]!;
    if (sewn[q] === 0) continue;
    least = Math.min(least, rank[c]!);
    if (shade[patch]! > shade[q]!) showsThrough = true;
  }
  const side = sideOf(piecing, patch, touching.edge[least]!);
  return { line: touching.line[least]!, side, showsThrough };
}

/** On which side of an edge's line, seen in the line's direction, the edge has the patch: 1 right, −1 left. */
export function sideOf({ arrangement, patches, touching }: Piecing, patch: number, edge: number): 1 | -1 {
  const { from, right } = arrangement.edges[edge]!;
  const start = touching.start[touching.rankOf[edge]!];
  return (right === patches[patch]) === (from === start) ? 1 : -1;
}
