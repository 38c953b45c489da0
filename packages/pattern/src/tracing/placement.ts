import {
  type Box,
  boundingBox,
  checkLength,
  compose,
  distance,
  FARTHEST_POINT,
  fail,
  inverse,
  type LengthUnit,
  midpoint,
  ok,
  type Point,
  type Result,
  rotation,
  scaling,
  type Transform,
  transformPoint,
  translation,
} from '@seamwright/geometry';
import { PICTURE_WIDTH_RANGE } from './limits.ts';
import type { PicturePlace } from './tracing.ts';

/**
 * Where pictures lie on the block, and how they are moved, turned and scaled. Every function gives a new place; places of
 * the picture are pixels from its top left corner.
 */

/** A picture's size in pixels. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** From the picture's pixels to the block. */
export function pictureToBlock(
  { x, y, width, turn }: PicturePlace,
  size: PictureSize,
): Transform<'picture', 'block'> {
  const middle = translation<'picture'>(-size.width / 2, -size.height / 2);
  const scaled = compose(middle, scaling<'picture', 'block'>(width / size.width));
  // Angles are typed anticlockwise; the plane's own, with y down, run clockwise.
  return compose(compose(scaled, rotation<'block'>(-turn)), translation<'block'>(x, y));
}

/** The pixel of the picture that lies at a place of the block; it may be outside the picture. */
export const pixelAt = (place: PicturePlace, size: PictureSize, at: Point): Point<'picture'> =>
  transformPoint(inverse(pictureToBlock(place, size)), at);

/** The upright rectangle round the picture as it lies, inches. */
export function pictureBox(place: PicturePlace, size: PictureSize): Box {
  const t = pictureToBlock(place, size);
  const corners: readonly Point<'picture'>[] = [
    { x: 0, y: 0 },
    { x: size.width, y: 0 },
    { x: size.width, y: size.height },
    { x: 0, y: size.height },
  ];
  return boundingBox(corners.map((corner) => transformPoint(t, corner)));
}

/** Upright, as large as it can be within the box, in its middle; a very slender one is as narrow as pictures may be. */
export function fitPicture(size: PictureSize, { minX, minY, maxX, maxY }: Box): PicturePlace {
  const width = Math.min(maxX - minX, ((maxY - minY) * size.width) / size.height);
  return { x: (minX + maxX) / 2, y: (minY + maxY) / 2, width: possibleWidth(width), turn: 0 };
}

const possibleWidth = (width: number): number =>
  Math.min(Math.max(width, PICTURE_WIDTH_RANGE.least), PICTURE_WIDTH_RANGE.most);

/** Moved by so many inches to the right and down; it stays within reach of the block. */
export function movePicture<P extends PicturePlace>(place: P, dx: number, dy: number): P {
  return { ...place, x: withinReach(place.x + dx), y: withinReach(place.y + dy) };
}

const withinReach = (value: number): number => Math.min(Math.max(value, -FARTHEST_POINT), FARTHEST_POINT);

/** Another width; the corner from which it is measured, the top left of the rectangle round it, stays. */
export function widenPicture<P extends PicturePlace>(place: P, size: PictureSize, width: number): P {
  const before = pictureBox(place, size);
  const wider = { ...place, width };
  const after = pictureBox(wider, size);
  return movePicture(wider, before.minX - after.minX, before.minY - after.minY);
}

/** Turned about its middle, so that it lies at `degrees` anticlockwise from upright. */
export const turnPicture = <P extends PicturePlace>(place: P, degrees: number): P => ({
  ...place,
  turn: usualAngle(degrees),
});

/** The same angle above −180° and at most 180°. */
function usualAngle(degrees: number): number {
  const rest = degrees % 360;
  if (rest > 180) return rest - 360;
  return rest <= -180 ? rest + 360 : rest + 0;
}

/**
 * Scaled so that two of its pixels lie `inches` apart. The first stays where it is on the block. Refused: pixels nearer to
 * each other than one pixel, which are the same to whoever presses them; widths that no picture may have.
 */
export function scaleByTwo<P extends PicturePlace>(
  place: P,
  size: PictureSize,
  [first, second]: TwoPixels,
  inches: number,
  unit: LengthUnit = 'in',
): Result<P> {
  const apart = distance(first, second);
  if (apart < 1) return sameTwo();
  const width = (inches / apart) * size.width;
  const checked = checkLength(width, unit, PICTURE_WIDTH_RANGE);
  if (!checked.ok) {
    return fail(
      'The picture would become too small or too large to work with',
      '',
      'Check the distance, or choose two points that are farther apart',
    );
  }
  return ok(keeping(place, { ...place, width: checked.value }, size, first));
}

/**
 * Turned by the least angle after which two of its pixels lie level, or one above the other. The middle between them stays
 * where it is. Refused: pixels nearer to each other than one pixel.
 */
export function straighten<P extends PicturePlace>(
  place: P,
  size: PictureSize,
  [first, second]: TwoPixels,
  wanted: 'level' | 'upright',
): Result<P> {
  if (distance(first, second) < 1) return sameTwo();
  const t = pictureToBlock(place, size);
  const [a, b] = [transformPoint(t, first), transformPoint(t, second)];
  const angle = (Math.atan2(a.y - b.y, b.x - a.x) * 180) / Math.PI;
  const off = wanted === 'level' ? angle : angle - 90;
  // The line has no direction: half a turn more is as level.
  const least = off - 180 * Math.round(off / 180);
  const turned = turnPicture(place, place.turn - least);
  return ok(keeping(place, turned, size, midpoint(first, second)));
}

type TwoPixels = readonly [Point<'picture'>, Point<'picture'>];

const sameTwo = () => fail('The two points are one', '', 'Press on two points that are apart');

/** Moves the changed place so that one pixel lies where it lay before. */
function keeping<P extends PicturePlace>(
  before: PicturePlace,
  after: P,
  size: PictureSize,
  pixel: Point<'picture'>,
): P {
  const was = transformPoint(pictureToBlock(before, size), pixel);
  const is = transformPoint(pictureToBlock(after, size), pixel);
  return movePicture(after, was.x - is.x, was.y - is.y);
}

/**
 * The place after the block's frame was stretched from one box to another: the picture goes with the drawing on it. Where
 * width and height do not grow alike it cannot keep its proportions and the drawing too, and grows by the mean of both.
 */
export function stretchPicture<P extends PicturePlace>(place: P, from: Box, to: Box): P {
  const kx = (to.maxX - to.minX) / (from.maxX - from.minX);
  const ky = (to.maxY - to.minY) / (from.maxY - from.minY);
  return {
    ...place,
    x: withinReach(to.minX + (place.x - from.minX) * kx),
    y: withinReach(to.minY + (place.y - from.minY) * ky),
    width: possibleWidth(place.width * Math.sqrt(kx * ky)),
  };
}
