import type { Point, Polygon } from './point.ts';
import { type Transform, transformPoint } from './transform.ts';
import { distance } from './vector.ts';

/** A way to lay one shape on another: moved, turned and perhaps turned over. */
export interface Motion {
  readonly transform: Transform;
  readonly mirrored: boolean;
}

/**
 * All ways in which a polygon can be laid on another so that no corner is farther than `within` (inches) from its place:
 * none where the two are not congruent. Every corner is tried as the place of the first one; unmirrored ways come first.
 */
export function* motionsOnto(shape: Polygon, image: Polygon, within: number): Generator<Motion> {
  const n = image.length;
  if (shape.length !== n || n < 2) return;
  for (const mirrored of [false, true]) {
    // A mirror image runs the other way round.
    const target = mirrored ? [...image].reverse() : image;
    for (let shift = 0; shift < n; shift += 1) {
      const at = (i: number) => target[(i + shift) % n]!;
      const transform = rigidMotion(shape[0]!, shape[1]!, at(0), at(1), mirrored);
      if (shape.every((p, i) => distance(transformPoint(transform, p), at(i)) <= within))
        yield { transform, mirrored };
    }
  }
}

/** The motion that carries a on to `toA` and the direction a → b on to `toA` → `toB`. */
function rigidMotion(a: Point, b: Point, toA: Point, toB: Point, mirrored: boolean): Transform {
  const from = Math.atan2(b.y - a.y, b.x - a.x);
  const to = Math.atan2(toB.y - toA.y, toB.x - toA.x);
  const angle = mirrored ? to + from : to - from;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [c, d] = mirrored ? [sin, -cos] : [-sin, cos];
  return { a: cos, b: sin, c, d, e: toA.x - cos * a.x - c * a.y, f: toA.y - sin * a.x - d * a.y };
}
