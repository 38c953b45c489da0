import type { Drawing } from '@seamwright/arrangement';
import { cross, midpoint, type Point, subtract } from '@seamwright/geometry';
import { outlineOf } from './checks.ts';

/** The block's centre: the centre of area of its outline, the middle of every regular shape. */
export function centreOf(drawing: Drawing): Point {
  const outline = outlineOf(drawing);
  const origin = outline[0]!;
  let doubledArea = 0;
  let x = 0;
  let y = 0;
  for (let i = 1; i + 1 < outline.length; i++) {
    const u = subtract(outline[i]!, origin);
    const v = subtract(outline[i + 1]!, origin);
    const weight = cross(u, v);
    doubledArea += weight;
    x += (u.x + v.x) * weight;
    y += (u.y + v.y) * weight;
  }
  // An outline without area is refused everywhere; its first edge has a middle all the same.
  if (doubledArea === 0) return midpoint(origin, outline[1] ?? origin);
  return { x: origin.x + x / (3 * doubledArea), y: origin.y + y / (3 * doubledArea) };
}
