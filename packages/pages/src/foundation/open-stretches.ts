import {
  distance,
  distanceToLine,
  edgesOf,
  parameterOn,
  pointAt,
  SAME_COORDINATE,
  type Segment,
  type Space,
  STRAIGHT_WITHIN,
} from '@seamwright/geometry';
import type { Section, SewingPlan } from '@seamwright/sewing';

/** What of a plan tells where seams are left open. */
type Sewn = Pick<SewingPlan, 'sections' | 'joins'>;

/** A part of a section's outline along which a partial seam is left open: from where the sewing stops outwards. */
export interface OpenStretch<S extends Space = 'block'> extends Segment<S> {
  /**
   * The unit that the section is sewn to by the partial seam, where the sewing stops at `a`; null where all of the seam that
   * the section has part in is left open.
   */
  readonly sewnTo: string | null;
  /** The unit that is sewn on before the stretch is closed. */
  readonly until: string;
}

/**
 * What the partial seams of a plan leave open along one section, inches on the block as drawn; none where it has no part in
 * any.
 *
 * A partial seam lies on one line and stops inside an edge of the sections that it joins, so what of the outline lies along it is
 * told by coordinates, within {@link STRAIGHT_WITHIN} as for every straight seam.
 */
export function openStretches({ sections, joins }: Sewn, section: Section): readonly OpenStretch[] {
  const lettersOf = new Map(sections.map(({ letter }) => [letter, new Set([letter])]));
  for (const { units, makes } of joins)
    lettersOf.set(makes, new Set(units.flatMap((unit) => [...lettersOf.get(unit)!])));
  const otherThanOwn = (units: readonly [string, string]) =>
    lettersOf.get(units[0])!.has(section.letter) ? units[1] : units[0];

  return joins.flatMap(({ units, open }) => {
    if (open === undefined) return [];
    const { seam, closedAfter } = open;
    const until = otherThanOwn(joins[closedAfter]!.units);
    return stretchesAlong(section, seam).map(({ from, to, stops }) => ({
      a: pointAt(seam.a, seam.b, from),
      b: pointAt(seam.a, seam.b, to),
      sewnTo: stops ? otherThanOwn(units) : null,
      until,
    }));
  });
}

/** Letters of the sections that have part in a partial seam. */
export function besideOpenSeams(plan: Sewn): ReadonlySet<string> {
  // Most plans leave none open, and to look along every section for nothing takes seconds for thousands of them.
  if (plan.joins.every(({ open }) => open === undefined)) return new Set();
  const beside = plan.sections.filter((section) => openStretches(plan, section).length > 0);
  return new Set(beside.map(({ letter }) => letter));
}

/** Where the outline lies along a seam, as parameters on it; `stops` where it goes on beyond the seam's first point. */
function stretchesAlong(
  { outline }: Section,
  { a, b }: Segment,
): readonly { from: number; to: number; stops: boolean }[] {
  const least = SAME_COORDINATE / distance(a, b);
  return edgesOf(outline).flatMap((edge) => {
    const ends = [edge.a, edge.b];
    if (ends.some((end) => distanceToLine(end, a, b) > STRAIGHT_WITHIN)) return [];
    const [s, t] = ends.map((end) => parameterOn(a, b, end)) as [number, number];
    const [low, high] = [Math.min(s, t), Math.max(s, t)];
    const [from, to] = [Math.max(0, low), Math.min(1, high)];
    return to - from > least ? [{ from, to, stops: low < -least }] : [];
  });
}
