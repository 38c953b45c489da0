import {
  distance,
  distanceToLine,
  distanceToSegment,
  edgesOf,
  type Point,
  SAME_COORDINATE,
} from '@seamwright/geometry';
import type { Block } from './blocks.ts';

/**
 * By coordinates alone: where a seam ends inside a section's edge, on whichever side of it, but on the block's rim. In a
 * block whose sections are joined along whole edges these are all its match points but the corners.
 */
export function seamEndsOnJoins({
  arrangement,
  plan,
}: Block): readonly { letter: string; points: readonly Point[] }[] {
  const at = (vertex: number) => arrangement.vertices[vertex]!.at;
  const seams = arrangement.edges
    .filter(({ left, right }) => left >= 0 && right >= 0)
    .flatMap(({ from, to }) => [
      { end: at(from), other: at(to) },
      { end: at(to), other: at(from) },
    ]);
  const onRim = (p: Point) =>
    edgesOf(arrangement.outline).some(({ a, b }) => distanceToSegment(p, a, b) < SAME_COORDINATE);
  return plan.sections.map(({ letter, outline }) => {
    const ends = seams.filter(({ end, other }) =>
      edgesOf(outline).some(
        ({ a, b }) =>
          distanceToSegment(end, a, b) < SAME_COORDINATE && distanceToLine(other, a, b) > SAME_COORDINATE,
      ),
    );
    const points = [...new Set(ends.map(({ end }) => end))]
      .filter((end) => !onRim(end))
      .filter((end) => outline.every((corner) => distance(corner, end) > 0));
    return { letter, points };
  });
}
