import type { Arrangement } from '@seamwright/arrangement';
import { distance, identity, parameterOn, SAME_COORDINATE } from '@seamwright/geometry';
import type { SewingPlan } from '@seamwright/sewing';
import { matchPoints } from './match-marks.ts';
import { sectionRing } from './ring.ts';

/**
 * The numbers of a block's match points by vertex, 1 first: along the joins in working order, so that who makes a join
 * meets them in turn. A point has the same number on all foundations.
 */
export function matchNumbers(
  arrangement: Arrangement,
  { sections, joins }: Pick<SewingPlan, 'sections' | 'joins'>,
): ReadonlyMap<number, number> {
  const vertices = new Set(
    sections.flatMap((section) =>
      matchPoints(arrangement, sectionRing(arrangement, section, identity())).map(({ vertex }) => vertex),
    ),
  );
  const ordered = new Set<number>();
  for (const { line, seam, open } of joins)
    for (const { a, b } of open === undefined ? [seam] : [seam, open.seam]) {
      const slack = SAME_COORDINATE / distance(a, b);
      const along = [...vertices]
        .filter((vertex) => arrangement.vertices[vertex]!.lines.includes(line))
        .map((vertex) => ({ vertex, t: parameterOn(a, b, arrangement.vertices[vertex]!.at) }))
        .filter(({ t }) => t >= -slack && t <= 1 + slack)
        .sort((p, q) => p.t - q.t);
      for (const { vertex } of along) ordered.add(vertex);
    }
  for (const vertex of vertices) ordered.add(vertex);
  return new Map([...ordered].map((vertex, i) => [vertex, i + 1]));
}
