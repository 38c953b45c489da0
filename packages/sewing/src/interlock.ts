import {
  type Arrangement,
  type Finding,
  type Message,
  placeOn,
  type Said,
  say,
  TOLD_ONE_BY_ONE,
  thePatches,
  toldOneByOne,
} from '@seamwright/arrangement';
import type { Point, Segment } from '@seamwright/geometry';
import type { Touching } from './contact.ts';
import { FULL_DIAGNOSIS, type Interlock, interlocksOf } from './diagnosis/interlocks.ts';
import { stuckParts } from './diagnosis/stuck-parts.ts';
import type { Region } from './region.ts';

/**
 * What stands in the way of straight seams: a finding for each windmill and each corner, told in a quilter's words, with
 * the ring of seams and the smallest set of patches that hold each other.
 *
 * @param regions connected parts of the block, such as those that the plan could not go on with
 */
export function interlockedFindings(
  arrangement: Arrangement,
  touching: Touching,
  regions: readonly Region[],
): readonly Finding[] {
  const found: Finding[] = [];
  for (const part of regions.flatMap((region) => stuckParts(touching, region))) {
    const rings = Math.max(0, TOLD_ONE_BY_ONE - found.length);
    for (const interlock of interlocksOf(arrangement, touching, part, { ...FULL_DIAGNOSIS, rings }))
      if (!isIsland(arrangement, interlock)) found.push(findingOf(arrangement, interlock));
  }
  return toldOneByOne(found);
}

/** Whether a corner is one of an island, which the arrangement tells of. */
const isIsland = ({ patches }: Arrangement, { ring, patches: held }: Interlock): boolean =>
  ring.kind === 'corner' &&
  held.some((p) => patches[p]!.holes.some((hole) => hole.includes(ring.corners[0]!)));

function findingOf(arrangement: Arrangement, interlock: Interlock): Finding {
  const { ring, seams, patches, smallest } = interlock;
  const place = (vertex: number): Point => arrangement.vertices[vertex]!.at;
  const at = ring.corners.map(place);
  const drawn = ring.seams.flatMap(({ run }) =>
    seams.runs[run]!.edges.flatMap((edge) => arrangement.edges[edge]!.drawn),
  );
  return {
    kind: 'interlocked',
    severity: 'error',
    message: say`${messageOf(interlock, placeOn(meanOf(at), arrangement.outline))}${smallest ? '' : NOT_PROVED}`,
    at,
    lines: [...new Set(drawn)].sort(),
    patches,
    ring: ring.seams.map(({ run, end }): Segment => {
      const { vertices } = seams.runs[run]!;
      const [first, last] = [place(vertices[0]!), place(vertices.at(-1)!)];
      return end === 1 ? { a: first, b: last } : { a: last, b: first };
    }),
    repairs: [],
  };
}

const NOT_PROVED = ' Perhaps fewer patches already hold each other here.';

const MEND = 'Let one of them run straight on to the next line or to the edge.';

function messageOf({ ring, patches }: Interlock, where: Said): Message {
  const count = ring.seams.length;
  const held = say`${thePatches(patches)} hold each other`;
  if (ring.kind === 'ring')
    return say`${count} seams chase each other round ${where}: each ends on the next, so whichever is sewn last, another is in its way, and ${held}. ${MEND}`;
  if (count === 2)
    return say`A seam turns a corner at ${where}, so one patch would have to be set into the other. Let one of its two sides run straight on to the next line or to the edge.`;
  return say`${count} seams meet at ${where} and none runs straight through, so the last of them would turn a corner, and ${held}. ${MEND}`;
}

/** The mean of some points: where a ring of seams is said to be. */
export const meanOf = (points: readonly Point[]): Point => ({
  x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
  y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
});
