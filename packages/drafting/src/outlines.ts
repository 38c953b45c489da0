import type { Drawing, DrawingPoint, PointId } from '@seamwright/arrangement';
import {
  checkSimple,
  isClockwise,
  type Point,
  type Polygon,
  type Result,
  reversed,
} from '@seamwright/geometry';
import { checkLengths, passes } from './checks.ts';
import { checkSizes, sizeOf } from './size.ts';

/**
 * A drawing of this outline and no splits. The corners may come either way round; they are kept clockwise on the
 * screen, the first stays first. Inches.
 *
 * Refused: what `checkSimple` refuses, and outlines wider or higher than the largest block.
 */
export function drawingFromOutline(outline: Polygon): Result<Drawing> {
  // In the order given: the message counts the corners.
  const simple = checkSimple(outline);
  if (!simple.ok) return simple;
  const corners = isClockwise(outline) ? outline : reversed(outline);
  const points: Record<PointId, DrawingPoint> = {};
  const ids = corners.map(({ x, y }, i) => {
    const id = `p${i + 1}`;
    points[id] = { id, x, y };
    return id;
  });
  return passes({ points, outline: ids, splits: [] }, () => checkSizes(sizeOf(corners)), checkLengths());
}

export const square = (side: number): Result<Drawing> => shape({ side }, rectangleCorners(side, side));

export const rectangle = (width: number, height: number): Result<Drawing> =>
  shape({ width, height }, rectangleCorners(width, height));

/** Two corners at the sides, flat above and below: 2 sides wide, √3 sides high. */
export const regularHexagon = (side: number): Result<Drawing> => {
  const high = (Math.sqrt(3) / 2) * side;
  return shape({ side }, [
    { x: side / 2, y: 0 },
    { x: side * 1.5, y: 0 },
    { x: side * 2, y: high },
    { x: side * 1.5, y: high * 2 },
    { x: side / 2, y: high * 2 },
    { x: 0, y: high },
  ]);
};

/** Point up: one side wide, √3/2 sides high. */
export const equilateralTriangle = (side: number): Result<Drawing> => {
  const high = (Math.sqrt(3) / 2) * side;
  return shape({ side }, [
    { x: side / 2, y: 0 },
    { x: side, y: high },
    { x: 0, y: high },
  ]);
};

/** The right angle at the bottom left; `width` and `height` are the two sides that form it. */
export const rightTriangle = (width: number, height: number): Result<Drawing> =>
  shape({ width, height }, [
    { x: 0, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ]);

/** The angles of the diamonds that quilts are made of: six or eight of them meet in a star. */
export type DiamondAngle = 60 | 45;

/** Four equal sides, standing on a sharp point; `degrees` is the angle of its sharp points. */
export function diamond(side: number, degrees: DiamondAngle): Result<Drawing> {
  const halfAngle = (degrees / 2) * (Math.PI / 180);
  const halfWidth = side * Math.sin(halfAngle);
  const halfHeight = side * Math.cos(halfAngle);
  return shape({ side }, [
    { x: halfWidth, y: 0 },
    { x: halfWidth * 2, y: halfHeight },
    { x: halfWidth, y: halfHeight * 2 },
    { x: 0, y: halfHeight },
  ]);
}

/** Sizes are checked before the shape is made of them, so that the message is about what was typed. */
function shape(sizes: Readonly<Record<string, number>>, corners: readonly Point[]): Result<Drawing> {
  const checked = checkSizes(sizes);
  return checked.ok ? drawingFromOutline(corners) : checked;
}

const rectangleCorners = (width: number, height: number): readonly Point[] => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];
