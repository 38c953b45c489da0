import type { Arrangement } from '@seamwright/arrangement';
import {
  area,
  contains,
  distance,
  distanceToSegment,
  edgesOf,
  middleOfCorners,
  type Point,
  type Polygon,
  scale,
} from '@seamwright/geometry';
import type { LayerRegion } from './layer-regions.ts';

/** A place of the sewn block where many layers lie. */
export interface BulkPlace {
  readonly layers: number;
  /** The middle of where the most lie, inches at the size that is sewn. */
  readonly at: Point;
  /** The patches that meet within an allowance of it, by index. */
  readonly patches: readonly number[];
}

/**
 * The thickest place near each point where seams meet or end, the thickest first; of those with as many layers, the larger.
 *
 * @param regions of `bulkMap`, with the same allowance and scale
 */
export function bulkPlaces(
  regions: readonly LayerRegion[],
  { vertices, patches }: Arrangement,
  allowance: number,
  size = 1,
): readonly BulkPlace[] {
  const corners = vertices.map(({ at }) => scale(at, size));
  const most = new Map<number, { readonly layers: number; readonly at: Point; readonly area: number }>();
  for (const { polygon, layers } of regions) {
    if (layers === 1) continue;
    const at = middleOfCorners(polygon);
    const corner = nearest(corners, at);
    const before = most.get(corner);
    const size = area(polygon);
    if (before === undefined || layers > before.layers || (layers === before.layers && size > before.area))
      most.set(corner, { layers, at, area: size });
  }
  return [...most.values()]
    .sort((p, q) => q.layers - p.layers || q.area - p.area)
    .map(({ layers, at }) => {
      const drawn = scale(at, 1 / size);
      const near = patches.filter(({ polygon }) => isNear(polygon, drawn, allowance / size));
      return { layers, at, patches: near.map(({ index }) => index) };
    });
}

function isNear(polygon: Polygon, at: Point, reach: number): boolean {
  return (
    contains(polygon, at) !== 'outside' ||
    edgesOf(polygon).some(({ a, b }) => distanceToSegment(at, a, b) <= reach)
  );
}

function nearest(points: readonly Point[], at: Point): number {
  let [best, least] = [0, Number.POSITIVE_INFINITY];
  points.forEach((point, i) => {
    const away = distance(point, at);
    if (away < least) [best, least] = [i, away];
  });
  return best;
}
