import type { Drawing, DrawingPoint, PointId } from '@seamwright/arrangement';
import {
  checkSimple,
  fail,
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

/** Flat above and below: (1 + √2) sides wide and high. */
export const regularOctagon = (side: number): Result<Drawing> => {
  const slope = side / Math.SQRT2;
  const far = side + slope;
  const across = far + slope;
  return shape({ side }, [
    { x: slope, y: 0 },
    { x: far, y: 0 },
    { x: across, y: slope },
    { x: across, y: far },
    { x: far, y: across },
    { x: slope, y: across },
    { x: 0, y: far },
    { x: 0, y: slope },
  ]);
};

/** Standing on its tip, its left half the mirror image of its right; widest at `shoulder` inches below the top. */
export function kite(width: number, height: number, shoulder: number): Result<Drawing> {
  const checked = checkSizes({ width, height, shoulder });
  if (!checked.ok) return checked;
  if (shoulder >= height)
    return fail('The kite is widest at its tip or below', '', 'Give a shoulder that is less than the height');
  return drawingFromOutline([
    { x: width / 2, y: 0 },
    { x: width, y: shoulder },
    { x: width / 2, y: height },
    { x: 0, y: shoulder },
  ]);
}

/** The fewest and the most wedges that a circle is cut into. */
export const WEDGES = { least: 3, most: 60 } as const;

/**
 * One of `count` equal wedges of a circle, its round edge straight, its tip below. `radius` is the length of its two
 * long sides to the circle's middle; with an `inner` radius the tip is cut off straight, as for a blade of a plate.
 */
export function circleWedge(radius: number, count: number, inner = 0): Result<Drawing> {
  if (!Number.isInteger(count) || count < WEDGES.least || count > WEDGES.most)
    return fail(
      `A circle cannot be cut into ${count} of these wedges`,
      '',
      `Give a whole number from ${WEDGES.least} to ${WEDGES.most}`,
    );
  const checked = checkSizes({ radius });
  if (!checked.ok) return checked;
  if (!(inner >= 0 && inner < radius))
    return fail(
      'The inner radius does not lie within the circle',
      '',
      'Give one that is less than the radius',
    );
  const halfAngle = Math.PI / count;
  const [sin, cos] = [Math.sin(halfAngle), Math.cos(halfAngle)];
  const half = radius * sin;
  const tip = (radius - inner) * cos;
  return drawingFromOutline([
    { x: 0, y: 0 },
    { x: half * 2, y: 0 },
    ...(inner === 0
      ? [{ x: half, y: tip }]
      : [
          { x: half + inner * sin, y: tip },
          { x: half - inner * sin, y: tip },
        ]),
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
