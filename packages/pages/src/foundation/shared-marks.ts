import type { Arrangement } from '@seamwright/arrangement';
import {
  distance,
  type Point,
  type Polygon,
  type Segment,
  type Space,
  STRAIGHT_WITHIN,
} from '@seamwright/geometry';
import { type MatchPoint, matchCorners, matchPoints, onOutline } from './match-marks.ts';
import { type RingVertex, sectionRing } from './ring.ts';
import { lettersOf, type Template } from './templates.ts';

/** A match point on a foundation, for all sections that are sewn on prints of it and have something to match there. */
export interface MatchMark<S extends Space = 'block'> extends Segment<S> {
  /** Some or all of those for which the foundation is printed, in their order. */
  readonly letters: readonly string[];
  /** The number of the block's match point that each of them has there. */
  readonly numbers: readonly number[];
}

/** The match points of a foundation. */
export interface MatchMarks<S extends Space = 'block'> {
  /** Inside an edge: from the outline across the allowance, square to the edge. */
  readonly ticks: readonly MatchMark<S>[];
  /** At corners, which have no tick: from the corner along the edge that is matched. */
  readonly corners: readonly MatchMark<S>[];
}

/** A match point inside an edge, before it has its tick. */
export interface SharedPoint extends Omit<MatchMark, 'a' | 'b'> {
  readonly at: Point;
  /** The way of the outline there, walked clockwise on the screen. */
  readonly onward: Point;
}

/** The match points of a foundation, whatever its size. */
export interface SharedPoints {
  readonly inside: readonly SharedPoint[];
  readonly corners: readonly MatchMark[];
}

/**
 * The match points of all sections that are sewn on prints of one foundation, carried back to where it is laid out, inches on the
 * block as drawn. Those of two sections at one point are one.
 *
 * Copies are alike within {@link STRAIGHT_WITHIN}, so a point that is carried back is put on the outline again, and
 * twice that distance tells one point from another.
 *
 * @param numbers of the block's match points by vertex
 * @param ring the boundary of the section that is laid out
 */
export function sharedPoints(
  arrangement: Arrangement,
  numbers: ReadonlyMap<number, number>,
  template: Template,
  ring: readonly RingVertex[],
): SharedPoints {
  const inside = new Set(numbers.keys());
  const letters = lettersOf(template);
  const rings = [
    { letter: letters[0]!, ring },
    ...template.copies.map(({ section, toTemplate }, i) => ({
      letter: letters[i + 1]!,
      ring: sectionRing(arrangement, section, toTemplate),
    })),
  ];
  const merged = (pointsOf: (ring: readonly RingVertex[]) => readonly MatchPoint[]) => {
    const marks: Merged[] = [];
    for (const one of rings) merge(marks, one.letter, pointsOf(one.ring), numbers, template.section.outline);
    return marks;
  };
  return {
    inside: merged((one) => matchPoints(arrangement, one)).map(({ at, onward, letters, numbers }) => ({
      at,
      onward,
      letters,
      numbers,
    })),
    corners: merged((one) => matchCorners(one, inside)).map(({ at, along, ...mark }) => ({
      letters: mark.letters,
      numbers: mark.numbers,
      a: at,
      b: distance(at, along.from) < distance(at, along.to) ? along.to : along.from,
    })),
  };
}

interface Merged extends SharedPoint {
  readonly along: MatchPoint['along'];
  readonly letters: string[];
  readonly numbers: number[];
}

/** How far two points may be apart that are one. */
const SAME_POINT = 2 * STRAIGHT_WITHIN;

/** Adds one section's points to the marks: each to the mark that is nearest, if it is the same point, no two to one mark. */
function merge(
  marks: Merged[],
  letter: string,
  points: readonly MatchPoint[],
  numbers: ReadonlyMap<number, number>,
  outline: Polygon,
): void {
  const feet = points.map((point) => ({ ...point, ...onOutline(outline, point.at) }));
  const pairs = feet
    .flatMap((foot) => marks.map((mark) => ({ foot, mark, apart: distance(mark.at, foot.at) })))
    .filter(({ apart }) => apart <= SAME_POINT)
    .sort((p, q) => p.apart - q.apart);
  const paired = new Set<MatchPoint>();
  for (const { foot, mark } of pairs)
    if (!paired.has(foot) && mark.letters.at(-1) !== letter) {
      paired.add(foot);
      mark.letters.push(letter);
      mark.numbers.push(numbers.get(foot.vertex)!);
    }
  for (const foot of feet)
    if (!paired.has(foot)) marks.push({ ...foot, letters: [letter], numbers: [numbers.get(foot.vertex)!] });
}
