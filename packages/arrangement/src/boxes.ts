import type { Box, Point } from '@seamwright/geometry';
import Flatbush from 'flatbush';

/**
 * An index of upright rectangles, each widened by `margin`, to search for those that a rectangle touches.
 *
 * @param boxes at least one
 */
export function indexBoxes(boxes: readonly Box[], margin = 0): Flatbush {
  const index = new Flatbush(boxes.length);
  for (const { minX, minY, maxX, maxY } of boxes) {
    index.add(minX - margin, minY - margin, maxX + margin, maxY + margin);
  }
  index.finish();
  return index;
}

/** The smallest upright rectangle round two points. */
export const boxOf = (a: Point, b: Point): Box => ({
  minX: Math.min(a.x, b.x),
  minY: Math.min(a.y, b.y),
  maxX: Math.max(a.x, b.x),
  maxY: Math.max(a.y, b.y),
});
