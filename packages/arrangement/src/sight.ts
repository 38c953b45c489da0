import {
  boundingBox,
  distance,
  type Point,
  pointAt,
  SAME_COORDINATE,
  segmentCrossing,
} from '@seamwright/geometry';
import { boxOf, indexBoxes } from './boxes.ts';
import type { Link } from './graph.ts';
import type { Place } from './incidence.ts';

/**
 * Looks ahead over a drawing: where the straight way on from `back` over `at` first meets one of the links that is not
 * on `line`; null when it meets none.
 *
 * @param links at least one
 */
export function sightOver(
  links: readonly Link[],
  places: readonly Place[],
): (back: Point, at: Point, line: number) => Point | null {
  const start = (link: Link) => places[link.from]!.at;
  const end = (link: Link) => places[link.to]!.at;
  const index = indexBoxes(
    links.map((link) => boxOf(start(link), end(link))),
    SAME_COORDINATE,
  );
  const { minX, minY, maxX, maxY } = boundingBox(places.map((place) => place.at));

  /** The first hit of the way from `at` to `far`, if it lies in the box round the first `share` of that way. */
  const firstWithin = (share: number, at: Point, far: Point, line: number): Point | null => {
    const box = boxOf(at, pointAt(at, far, share));
    let nearest: Point | null = null;
    for (const i of index.search(box.minX, box.minY, box.maxX, box.maxY).sort((p, q) => p - q)) {
      const link = links[i]!;
      if (link.line === line) continue;
      const hit = segmentCrossing(at, far, start(link), end(link));
      if (hit !== null && (nearest === null || distance(at, hit.at) < distance(at, nearest)))
        nearest = hit.at;
    }
    return nearest;
  };

  return (back, at, line) => {
    // Longer than any way across the drawing.
    const reach = Math.max(at.x - minX, maxX - at.x) + Math.max(at.y - minY, maxY - at.y) + 1;
    const far = pointAt(at, back, -reach / distance(at, back));
    // The next line is mostly near: a box round the whole way would hold much of the drawing.
    for (let share = 1 / Math.sqrt(links.length); share < 1; share *= 2) {
      const hit = firstWithin(share, at, far, line);
      if (hit !== null && distance(at, hit) <= share * reach) return hit;
    }
    return firstWithin(1, at, far, line);
  };
}
