import type { Arrangement } from '@seamwright/arrangement';
import {
  compose,
  distance,
  type Segment,
  type Space,
  STRAIGHT_WITHIN,
  type Transform,
} from '@seamwright/geometry';
import { matchMarks, matchPoints, onOutline, tick } from './match-marks.ts';
import { type RingVertex, sectionRing } from './ring.ts';
import type { Bounds } from './run-ons.ts';
import { lettersOf, type Template } from './templates.ts';

/** A tick across the allowance, and the sections that have something to match there. */
export interface MatchMark<S extends Space = 'block'> extends Segment<S> {
  /** Some or all of those for which the foundation is printed, in their order. */
  readonly letters: readonly string[];
}

/**
 * The match marks of all sections that are sewn on prints of one foundation, carried back to where it is laid out.
 * Marks of two sections at one point are one mark.
 *
 * Copies are alike within {@link STRAIGHT_WITHIN}, so a point that is carried back is put on the outline again, and
 * twice that distance tells one point from another.
 *
 * @param enlarge from the block as drawn to the space of `ring` and `bounds`
 * @param ring the boundary of the section that is laid out
 */
export function sharedMarks(
  arrangement: Arrangement,
  template: Template,
  enlarge: Transform,
  ring: readonly RingVertex[],
  bounds: Bounds,
): readonly MatchMark[] {
  const [first, ...labels] = lettersOf(template);
  const marks = matchMarks(arrangement, template.section, ring, bounds).map((mark) => ({
    ...mark,
    letters: [first!],
  }));
  const samePoint = 2 * STRAIGHT_WITHIN * enlarge.a;
  for (const [i, { section, toTemplate }] of template.copies.entries()) {
    const label = labels[i]!;
    const carried = sectionRing(arrangement, section, compose(toTemplate, enlarge));
    for (const { at } of matchPoints(arrangement, section, carried)) {
      const foot = onOutline(bounds.outline, at);
      const near = marks.filter(({ a }) => distance(a, foot.at) <= samePoint);
      const [known] = near.sort((p, q) => distance(p.a, foot.at) - distance(q.a, foot.at));
      if (known === undefined) marks.push({ ...tick(foot.at, foot.onward, bounds), letters: [label] });
      else if (known.letters.at(-1) !== label) known.letters.push(label);
    }
  }
  return marks;
}
