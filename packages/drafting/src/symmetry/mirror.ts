import type { Point, Transform } from '@seamwright/geometry';
import { toward } from '../angles.ts';

/** The mirror image across the line through `through` at an angle, degrees, 0 level, 90 upright (see angles.ts). */
export function mirrorAcross(angle: number, through: Point): Transform {
  // 2·d·dᵀ − 1 for the axis' direction d has cos 2φ and sin 2φ in it: taken so, the axes of a square are exact.
  const { x: a, y: b } = toward(2 * angle);
  return {
    a,
    b,
    c: b,
    d: -a,
    e: through.x - a * through.x - b * through.y,
    f: through.y - b * through.x + a * through.y,
  };
}
