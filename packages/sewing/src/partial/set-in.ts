import { type Arrangement, type Finding, placeName, toldOneByOne } from '@seamwright/arrangement';
import type { Touching } from '../contact.ts';
import { interlocksOf } from '../diagnosis/interlocks.ts';
import { meanOf } from '../interlock.ts';
import type { Region } from '../region.ts';
import { leftByPartialSeams } from './assemble-partial.ts';

/**
 * The seams that would have to be set in, because neither straight nor partial seams sew what is round them: named, never
 * planned.
 */
export const setInFindings = (
  arrangement: Arrangement,
  touching: Touching,
  region: Region,
): readonly Finding[] =>
  toldOneByOne(
    leftByPartialSeams(touching, region).flatMap(({ touching: slit, part }) =>
      interlocksOf(arrangement, slit, part).map(({ ring, patches }): Finding => {
        const at = ring.corners.map((vertex) => arrangement.vertices[vertex]!.at);
        const where = placeName(meanOf(at), arrangement.outline);
        return {
          kind: 'set-in-seam',
          severity: 'caution',
          message:
            ring.kind === 'corner'
              ? `Sewn as drawn, a seam would have to be set in at ${where} (a Y-seam): it stops there at a corner, to be turned and sewn on.`
              : `Sewn as drawn, a seam would have to be set in round ${where} (a Y-seam): none of the seams there can be left open and closed later.`,
          at,
          lines: [],
          patches,
          repairs: [],
        };
      }),
    ),
  );
