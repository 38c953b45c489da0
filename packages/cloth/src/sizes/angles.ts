import { SAME_COORDINATE, type Segment } from '@seamwright/geometry';

/** The direction from a to b: degrees clockwise from the x axis, 0 … 360; whole where the segment was meant upright or level. */
export function directionAngle({ a, b }: Segment): number {
  const meant = (difference: number) => (Math.abs(difference) <= SAME_COORDINATE ? 0 : difference);
  return roundTheCircle((Math.atan2(meant(b.y - a.y), meant(b.x - a.x)) * 180) / Math.PI);
}

/** The direction of the line through a and b, either way: degrees, 0 … 180. */
export const lineAngle = (segment: Segment): number => directionAngle(segment) % 180;

/** The same direction in 0 … 360. */
export const roundTheCircle = (degrees: number): number => ((degrees % 360) + 360) % 360;
