import { distanceToLine, type Point, SAME_COORDINATE } from '@seamwright/geometry';
import { type Link, opposite, originOf } from './graph.ts';

/** The walk round a face from its topmost, then leftmost place on. */
export function startAtTopLeft(walk: readonly number[], at: (half: number) => Point): number[] {
  const first = walk.reduce((best, half) => {
    const p = at(half);
    const q = at(best);
    return p.y < q.y || (p.y === q.y && p.x < q.x) ? half : best;
  });
  const i = walk.indexOf(first);
  return [...walk.slice(i), ...walk.slice(0, i)];
}

/** The ring without the places through which its boundary runs straight. */
export function turningCorners(
  walk: readonly number[],
  links: readonly Link[],
  at: (place: number) => Point,
): Point[] {
  const corners: Point[] = [];
  walk.forEach((half, i) => {
    const before = walk[(i + walk.length - 1) % walk.length]!;
    const here = at(originOf(links, half));
    const sameLine = links[before >> 1]!.line === links[half >> 1]!.line;
    const previous = at(originOf(links, before));
    const following = at(originOf(links, opposite(half)));
    if (sameLine && distanceToLine(here, previous, following) <= SAME_COORDINATE) return;
    corners.push(here);
  });
  return corners;
}

/**
 * The drawn lines round a face, one for each straight side, turned to a start of its own: the least of all turned
 * sequences. An edge that several lines were drawn along counts under the first of their names.
 */
export function signatureOf(walk: readonly number[], links: readonly Link[]): string {
  const sides = walk
    .filter((half, i) => {
      const before = walk[(i + walk.length - 1) % walk.length]!;
      return links[before >> 1]!.line !== links[half >> 1]!.line;
    })
    .map((half) => `${links[half >> 1]!.drawn[0]!} `);
  const least = [...sides].sort()[0] ?? '';
  // The least sequence starts with the least side: few are written out.
  const turned = sides.flatMap((side, i) =>
    side.startsWith(least) ? [[...sides.slice(i), ...sides.slice(0, i)].join('').slice(0, -1)] : [],
  );
  return turned.sort()[0] ?? '';
}
