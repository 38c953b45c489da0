import { boundingBox, commonParts, convexHull, type Polygon } from '@seamwright/geometry';
import { partsOutside } from '../placing/parts-outside.ts';

/** A part of the sewn block that has the same number of layers of fabric all over; clockwise, from the front. */
export interface LayerRegion {
  readonly polygon: Polygon;
  readonly layers: number;
}

/** The parts of the plane by how many of the layers, simple polygons, lie over them; one layer after the other is laid on. */
export function regionsOf(layers: readonly Polygon[]): readonly LayerRegion[] {
  let regions: readonly LayerRegion[] = [];
  for (const layer of layers) {
    let bare: readonly Polygon[] = [layer];
    const split = regions.flatMap((region): readonly LayerRegion[] => {
      const { polygon, layers: below } = region;
      if (areApart(polygon, layer)) return [region];
      const both = commonParts(polygon, layer);
      if (both.length === 0) return [region];
      bare = bare.flatMap((part) => without(part, polygon));
      return [
        ...both.map((part) => ({ polygon: part, layers: below + 1 })),
        ...without(polygon, layer).map((part) => ({ polygon: part, layers: below })),
      ];
    });
    regions = [...split, ...bare.map((polygon) => ({ polygon, layers: 1 }))];
  }
  return regions;
}

/** The regions with the most layers. */
export function thickest(regions: readonly LayerRegion[]): readonly LayerRegion[] {
  const most = Math.max(...regions.map(({ layers }) => layers));
  return regions.filter(({ layers }) => layers === most);
}

/** What of the polygon is not under the cover: outside of the cover's hull, or in one of its notches. */
function without(polygon: Polygon, cover: Polygon): readonly Polygon[] {
  if (areApart(polygon, cover)) return [polygon];
  const hull = convexHull(cover);
  const notches = notchesOf(cover, hull);
  return [...partsOutside(polygon, hull), ...notches.flatMap((notch) => commonParts(polygon, notch))];
}

/** Between neighbouring corners of the hull, the stretch of the boundary that runs inside of it. */
function notchesOf(polygon: Polygon, hull: Polygon): readonly Polygon[] {
  const places = hull.map((corner) => polygon.indexOf(corner)).sort((p, q) => p - q);
  return places.flatMap((place, i) => {
    const next = places[i + 1] ?? places[0]! + polygon.length;
    const stretch = Array.from(
      { length: next - place + 1 },
      (_, k) => polygon[(place + k) % polygon.length]!,
    );
    return stretch.length > 2 ? [stretch] : [];
  });
}

function areApart(p: Polygon, q: Polygon): boolean {
  const [a, b] = [boundingBox(p), boundingBox(q)];
  return a.maxX <= b.minX || b.maxX <= a.minX || a.maxY <= b.minY || b.maxY <= a.minY;
}
