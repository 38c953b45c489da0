import {
  add,
  commonParts,
  convexHull,
  distance,
  MITRE_REACH,
  type Point,
  type Polygon,
  reflectionAcross,
  type Segment,
  scale,
  subtract,
  transformPolygon,
} from '@seamwright/geometry';
import { partsOutside } from '../placing/parts-outside.ts';

/** A flat stretch of the fabric of one patch, by its index. */
export interface Layer {
  readonly patch: number;
  readonly polygon: Polygon;
}

/** Fabric that is turned over along a seam. */
export interface Fold {
  /** Inches at the size that is sewn. */
  readonly seam: Segment;
  /** Square to the seam, of length 1, to where what is turned over lies before. */
  readonly past: Point;
  /** Whether the fold goes on beyond the seam's first and second point, through the allowance there. */
  readonly goesOn: readonly [boolean, boolean];
  readonly allowance: number;
}

/** The layers, with what lies past the seam turned over it. */
export function folded(layers: readonly Layer[], { seam, past, goesOn, allowance }: Fold): readonly Layer[] {
  // As far as tips of an allowance reach.
  const reach = MITRE_REACH * allowance;
  const { a, b } = seam;
  const on = scale(subtract(b, a), reach / distance(a, b));
  const [from, to, out] = [goesOn[0] ? subtract(a, on) : a, goesOn[1] ? add(b, on) : b, scale(past, reach)];
  const strip = convexHull([from, to, add(from, out), add(to, out)]);
  const over = reflectionAcross(seam);
  return layers.flatMap((layer): readonly Layer[] => {
    const { patch, polygon } = layer;
    const turned = commonParts(polygon, strip);
    if (turned.length === 0) return [layer];
    return [...partsOutside(polygon, strip), ...turned.map((part) => transformPolygon(over, part))].map(
      (part) => ({ patch, polygon: part }),
    );
  });
}
