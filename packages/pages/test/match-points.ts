import type { Edge } from '@seamwright/arrangement';
import { distance, distanceToSegment, edgesOf, type Point, SAME_COORDINATE } from '@seamwright/geometry';
import type { Block } from './blocks.ts';

/**
 * By coordinates alone: where a seam between two patches of other sections touches the inside of a section's edge. In a
 * block whose sections are joined along whole edges these are all its match points but the corners.
 */
export function seamEndsOnOthers({
  arrangement,
  plan,
}: Block): readonly { letter: string; points: readonly Point[] }[] {
  return plan.sections.map(({ letter, order, outline }) => {
    const own = new Set(order);
    const foreign = ({ left, right }: Edge) => left >= 0 && right >= 0 && !own.has(left) && !own.has(right);
    const ends = arrangement.edges.filter(foreign).flatMap(({ from, to }) => [from, to]);
    const points = [...new Set(ends)]
      .map((v) => arrangement.vertices[v]!.at)
      .filter((at) => edgesOf(outline).some(({ a, b }) => distanceToSegment(at, a, b) < SAME_COORDINATE))
      .filter((at) => outline.every((corner) => distance(corner, at) > 0));
    return { letter, points };
  });
}
