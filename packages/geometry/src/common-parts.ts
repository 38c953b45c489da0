import { Clipper, ClipType, FillRule } from 'clipper2-ts';
import { fromPath, isSliver, tidied, toPath } from './grid.ts';
import { segmentCrossing } from './line.ts';
import type { Polygon, Space } from './point.ts';
import { edgesOf, isClockwise, reversed } from './polygon.ts';
import { OUTLINE_DECIMALS } from './tolerance.ts';

/**
 * What two simple polygons, either way round, have in common: simple polygons, clockwise, without corners on straight
 * runs; none where they are apart or only touch. (Parts of shapes without holes have no holes.)
 *
 * Corners are those of the polygons and crossings of their edges, to the rounding of doubles; parts that are on the
 * average narrower than {@link SAME_COORDINATE} are left out, so that edges that were meant to coincide do.
 *
 * Algorithm: B. R. Vatti, A generic solution to polygon clipping, Communications of the ACM 35(7), 1992, as in the
 * library clipper2-ts.
 */
export function commonParts<S extends Space = 'block'>(p: Polygon<S>, q: Polygon<S>): readonly Polygon<S>[] {
  const paths = Clipper.booleanOpD(
    ClipType.Intersection,
    [toPath(clockwise(p))],
    [toPath(clockwise(q))],
    FillRule.NonZero,
    OUTLINE_DECIMALS,
  );
  const crossings = edgesOf(p).flatMap(({ a, b }) =>
    edgesOf(q).flatMap(({ a: c, b: d }) => segmentCrossing(a, b, c, d)?.at ?? []),
  );
  const trueCorners = [...p, ...q, ...crossings];
  return paths
    .map(fromPath<S>)
    .filter((ring) => !isSliver(ring))
    .map((ring) => tidied(clockwise(ring), trueCorners));
}

const clockwise = <S extends Space>(ring: Polygon<S>): Polygon<S> =>
  isClockwise(ring) ? ring : reversed(ring);
