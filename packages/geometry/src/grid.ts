import type { PathD } from 'clipper2-ts';
import type { Point, Polygon, Space } from './point.ts';
import { area, perimeter, withoutFlatCorners } from './polygon.ts';
import { OUTLINE_ROUNDING, SAME_COORDINATE } from './tolerance.ts';
import { distance } from './vector.ts';

/** To and from the library that lays polygons on each other on a grid of {@link OUTLINE_DECIMALS} decimals. */

export const toPath = <S extends Space>(ring: Polygon<S>): PathD => ring.map(({ x, y }) => ({ x, y }));

export const fromPath = <S extends Space>(path: PathD): Polygon<S> => path.map(({ x, y }) => ({ x, y }));

/** Whether the ring is on the average narrower than {@link SAME_COORDINATE}: the same line written twice, no shape. */
export const isSliver = <S extends Space>(ring: Polygon<S>): boolean =>
  area(ring) <= (SAME_COORDINATE * perimeter(ring)) / 2;

/**
 * The ring with the true corners in place of those rounded to the grid, without corners on straight runs, and
 * starting at the first of the true corners that it has.
 */
export function tidied<S extends Space>(ring: Polygon<S>, trueCorners: readonly Point<S>[]): Polygon<S> {
  const exact = ring
    .map((p) => trueCorners.find((corner) => distance(corner, p) <= OUTLINE_ROUNDING) ?? p)
    // Twice in a row, a corner would seem to lie on a straight run both times.
    .filter((p, i, all) => distance(p, all[(i + 1) % all.length]!) > OUTLINE_ROUNDING);
  const bent = withoutFlatCorners(exact, OUTLINE_ROUNDING);
  const first = trueCorners.map((corner) => bent.indexOf(corner)).find((place) => place >= 0) ?? 0;
  return [...bent.slice(first), ...bent.slice(0, first)];
}
