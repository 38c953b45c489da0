import { cross, dot, type Point, type Polygon, subtract } from '@seamwright/geometry';

/**
 * How far a shape reaches from a centre towards a side of the piece over it, while the piece is turned about that
 * centre by up to `turn` either way: the maximum over τ in [−turn, turn] of the shape's support function
 * h(n turned by τ), exact.
 *
 * Derivation. A corner v (from the centre) lies at |v|·cos(δ − τ) in the direction n turned by τ, δ being the angle
 * between v and n. Cosine falls on both sides of 0, so over the interval the corner comes nearest at τ = δ, where it
 * reaches |v|, when δ ≤ turn; otherwise at the end of the interval on its side: |v|·cos(δ − turn) = a·cos(turn) +
 * b·sin(turn), with a = v·n and b = |v × n|. A maximum over corners and a maximum over τ may change places, so the
 * largest of these is the answer; corners inside the hull never decide.
 *
 * @param direction n, of length 1
 * @param turn radians, 0 … π/4
 */
export function reach(shape: Polygon, centre: Point, direction: Point, turn: number): number {
  const [cos, sin, tan] = [Math.cos(turn), Math.sin(turn), Math.tan(turn)];
  let farthest = Number.NEGATIVE_INFINITY;
  for (const corner of shape) {
    const v = subtract(corner, centre);
    const a = dot(v, direction);
    const b = Math.abs(cross(v, direction));
    farthest = Math.max(farthest, a > 0 && b <= a * tan ? Math.hypot(a, b) : a * cos + b * sin);
  }
  return farthest;
}

/**
 * How far a piece may be turned about the centre, either way, before a corner of the shape crosses its side at
 * `distance` in the direction n: radians; π where none ever does, 0 where one is past it already.
 *
 * Turned towards the corner v by τ, n meets it at |v|·cos(δ − τ) (see {@link reach}), which grows until τ = δ. It
 * comes to `distance` first at τ = δ − arccos(distance ÷ |v|), and never where |v| ≤ distance.
 */
export function turnUntil(shape: Polygon, centre: Point, direction: Point, distance: number): number {
  let least = Math.PI;
  for (const corner of shape) {
    const v = subtract(corner, centre);
    const a = dot(v, direction);
    const b = Math.abs(cross(v, direction));
    const size = Math.hypot(a, b);
    if (a > distance) return 0;
    if (size > distance) least = Math.min(least, Math.atan2(b, a) - Math.acos(distance / size));
  }
  return Math.max(0, least);
}
