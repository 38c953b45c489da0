import { type Point, rotation, transformPoint } from '@seamwright/geometry';

/*
 * Angles as makers type and read them: degrees, 0 level to the right, growing anticlockwise as seen, as on a protractor:
 * 45 rises to the right, 90 is upright, 135 rises to the left.
 */

/** The unit vector in the direction of an angle, degrees; quarter turns are exact. */
export const toward = (angle: number): Point => transformPoint(rotation(-angle), { x: 1, y: 0 });

/** The direction in which one walks from one place to another, degrees, 0 … 360 without 360; 0 when they are one place. */
export function angleFrom(from: Point, to: Point): number {
  const degrees = (Math.atan2(from.y - to.y, to.x - from.x) * 180) / Math.PI;
  return (degrees + 360) % 360;
}

/** The place at a distance (inches) and an angle (degrees) from another. */
export function placeByMeasure(from: Point, distance: number, angle: number): Point {
  const { x, y } = toward(angle);
  return { x: from.x + x * distance, y: from.y + y * distance };
}
