import type { Arrangement, Patch } from '@seamwright/arrangement';
import { contains, type Point } from '@seamwright/geometry';

/** The patch that holds a point of the block; undefined outside the block. */
export const patchAt = (arrangement: Arrangement, at: Point): Patch | undefined =>
  arrangement.patches.find(
    // An island lies wholly inside another patch's ring: the smallest that holds the point is meant.
    (patch) => contains(patch.polygon, at) !== 'outside' && !inHole(arrangement, patch, at),
  );

const inHole = (arrangement: Arrangement, patch: Patch, at: Point): boolean =>
  patch.holes.some(
    (ring) =>
      contains(
        ring.map((vertex) => arrangement.vertices[vertex]!.at),
        at,
      ) === 'inside',
  );
