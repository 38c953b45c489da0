import { distanceToLine, isOnSegment, segmentCrossing } from './line.ts';
import type { Polygon, Space } from './point.ts';
import { area, perimeter } from './polygon.ts';
import { fail, ok, type Result } from './result.ts';
import { SAME_COORDINATE } from './tolerance.ts';
import { distance } from './vector.ts';

/**
 * The polygon itself when it is a closed shape that can be worked with; otherwise what is wrong with it, and at
 * which corners (numbered from 1 in the order given).
 *
 * Refused: coordinates that are no finite numbers, fewer than three corners, two neighbouring corners in one
 * place, no area, edges that cross or touch each other (also a boundary that comes back to one of its corners or
 * folds back on itself). Two things are in one place when they are within {@link SAME_COORDINATE}. Both
 * directions are accepted, and corners on a straight run too.
 *
 * Compares all pairs of edges: made for outlines of at most some hundred corners.
 */
export function checkSimple<S extends Space = 'block'>(polygon: Polygon<S>): Result<Polygon<S>> {
  const badCorner = polygon.findIndex(({ x, y }) => !Number.isFinite(x) || !Number.isFinite(y));
  if (badCorner >= 0)
    return fail('A coordinate is not a number', `corner ${badCorner + 1}`, 'Give this corner a place again');
  if (polygon.length < 3)
    return fail(
      'The shape has fewer than three corners',
      cornerCount(polygon),
      'Draw at least three corners',
    );
  const count = polygon.length;
  for (let i = 0; i < count; i++) {
    const next = (i + 1) % count;
    if (distance(polygon[i]!, polygon[next]!) <= SAME_COORDINATE)
      return fail(
        'Two corners lie in the same place',
        `corners ${i + 1} and ${next + 1}`,
        'Move or remove one of them',
      );
  }
  if (isOneLine(polygon))
    return fail('The shape has no area', 'all corners lie on one line', 'Move a corner off this line');

  return findContact(polygon) ?? hasArea(polygon) ?? ok(polygon);
}

const cornerCount = (polygon: readonly unknown[]): string =>
  polygon.length === 0 ? 'it has none' : `it has ${polygon.length === 1 ? 'one' : 'two'}`;

function isOneLine<S extends Space>(polygon: Polygon<S>): boolean {
  const from = polygon[0]!;
  const farthest = polygon.reduce((best, p) => (distance(from, p) > distance(from, best) ? p : best));
  return polygon.every((p) => distanceToLine(p, from, farthest) <= SAME_COORDINATE);
}

/** A shape all of whose parts are thinner than {@link SAME_COORDINATE} holds no area that numbers could tell of. */
function hasArea<S extends Space>(polygon: Polygon<S>) {
  if (area(polygon) > (SAME_COORDINATE * perimeter(polygon)) / 2) return null;
  return fail('The shape has no area', '', 'Move its corners apart');
}

/** The first two edges that meet anywhere but in the corner between neighbours. */
function findContact<S extends Space>(polygon: Polygon<S>) {
  const count = polygon.length;
  const edgeName = (i: number) => `the edge from corner ${i + 1} to corner ${((i + 1) % count) + 1}`;
  for (let i = 0; i < count; i++) {
    const a = polygon[i]!;
    const b = polygon[(i + 1) % count]!;
    for (let corner = 0; corner < count; corner++) {
      if (corner === i || corner === (i + 1) % count) continue;
      const p = polygon[corner]!;
      if (!isOnSegment(p, a, b, SAME_COORDINATE)) continue;
      const meeting = [a, b].findIndex((end) => distance(end, p) <= SAME_COORDINATE);
      if (meeting >= 0)
        return fail(
          'The shape comes back to a corner that it has already passed',
          `corners ${[corner, (i + meeting) % count]
            .map((k) => k + 1)
            .sort((k, l) => k - l)
            .join(' and ')}`,
          'Move one of them',
        );
      return fail(
        'The shape touches itself',
        `corner ${corner + 1} lies on ${edgeName(i)}`,
        'Move this corner off the edge',
      );
    }
    for (let j = i + 2; j < count; j++) {
      if ((j + 1) % count === i) continue;
      const crossing = segmentCrossing(a, b, polygon[j]!, polygon[(j + 1) % count]!);
      if (crossing !== null)
        return fail(
          'The shape crosses itself',
          `${edgeName(i)} crosses ${edgeName(j)}`,
          'Move one of these corners',
        );
    }
  }
  return null;
}
