import { type Arrangement, type Finding, placeOn, say, toldOneByOne } from '@seamwright/arrangement';
import type { Touching } from '../contact.ts';
import { type Interlock, interlocksOf } from '../diagnosis/interlocks.ts';
import { meanOf } from '../interlock.ts';
import type { Region } from '../region.ts';
import { leftByPartialSeams } from './assemble-partial.ts';

/**
 * The seams that would have to be set in, because neither straight nor partial seams sew what is round them: named, never
 * planned.
 */
export function setInFindings(
  arrangement: Arrangement,
  touching: Touching,
  regions: readonly Region[],
): readonly Finding[] {
  const left = leftByPartialSeams(touching, regions);
  const interlocks = left.parts.flatMap((part) => interlocksOf(arrangement, left.touching, part));
  return toldOneByOne(interlocks.map((interlock) => findingOf(arrangement, interlock)));
}

function findingOf(arrangement: Arrangement, { ring, patches }: Interlock): Finding {
  const at = ring.corners.map((vertex) => arrangement.vertices[vertex]!.at);
  const where = placeOn(meanOf(at), arrangement.outline);
  return {
    kind: 'set-in-seam',
    severity: 'caution',
    message:
      ring.kind === 'corner'
        ? say`Sewn as drawn, a seam would have to be set in at ${where} (a Y-seam): it stops there at a corner, to be turned and sewn on.`
        : say`Sewn as drawn, a seam would have to be set in round ${where} (a Y-seam): none of the seams there can be left open and closed later.`,
    at,
    lines: [],
    patches,
    repairs: [],
  };
}
