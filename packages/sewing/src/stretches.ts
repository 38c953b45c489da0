import type { Touching } from './contact.ts';
import { isInside } from './corners.ts';

/** A stretch of one line within a region: ranks along the lines, from the first to the last. */
export interface Stretch {
  readonly first: number;
  readonly last: number;
  /** Whether both its ends lie on the region's boundary: whether it is a run right across. */
  readonly across: boolean;
}

/**
 * The stretches along which patches of a region touch each other, in the order of their lines. Each goes on for as long as
 * its line does, through vertices inside the region.
 *
 * @param ranks the edges inside the region, ascending
 */
export function stretchesOf(touching: Touching, ranks: Int32Array, mask: Uint8Array): Stretch[] {
  const { start, end, goesOn } = touching;
  const stretches: Stretch[] = [];
  for (let i = 0; i < ranks.length; i += 1) {
    const first = ranks[i]!;
    let last = first;
    while (goesOn[last] === 1 && ranks[i + 1] === last + 1 && isInside(touching, mask, end[last]!)) {
      last += 1;
      i += 1;
    }
    const across = !isInside(touching, mask, start[first]!) && !isInside(touching, mask, end[last]!);
    stretches.push({ first, last, across });
  }
  return stretches;
}
