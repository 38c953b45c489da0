import {
  type Box,
  compose,
  distance,
  POINTS_PER_INCH,
  type Polygon,
  SAME_COORDINATE,
  scaling,
  type Transform,
  transformPoint,
  transformPolygon,
} from '@seamwright/geometry';
import type { Foundation } from './foundation.ts';

/** How a foundation lies on the sheet: its top faces up; right, turned a quarter clockwise; down; or left. */
export type Turn = 'upright' | 'turned' | 'on its head' | 'turned back';

/** Degrees clockwise as seen on the sheet. */
export const DEGREES: Readonly<Record<Turn, number>> = {
  upright: 0,
  turned: 90,
  'on its head': 180,
  'turned back': 270,
};

/**
 * The other ways to turn a foundation by quarters: those in which it covers other parts of the sheet.
 *
 * @param bare nothing stands beyond the cutting line where it lies upright: a square does not need to be turned then
 */
export function otherTurns(foundation: Foundation, bare: boolean): readonly Turn[] {
  if (bare && isAlike(foundation, 'turned')) return [];
  return isAlike(foundation, 'on its head') ? ['turned'] : ['turned', 'on its head', 'turned back'];
}

/** Whether it covers the same when it is turned so. */
function isAlike({ cuttingLine, width, height }: Foundation, turn: Turn): boolean {
  const turned = placed({ width, height }, turn);
  return cuttingLine.every((corner) => {
    const there = transformPoint(turned, corner);
    return cuttingLine.some((other) => distance(there, other) < SAME_COORDINATE);
  });
}

/** Width and height of the foundation's cutting line on the sheet, points. */
export function sizeOnSheet({ width, height }: Foundation, turn: Turn): { width: number; height: number } {
  const [across, down] = DEGREES[turn] % 180 === 0 ? [width, height] : [height, width];
  return { width: written(across * POINTS_PER_INCH), height: written(down * POINTS_PER_INCH) };
}

/** As fine as files are written: 8 in that came out as 8.000000000000002 in still fit on a sheet with 8 in room. */
const written = (points: number): number => Math.round(points * 1e4) / 1e4;

/** The foundation's cutting line as it lies on the sheet, the corner of its upright rectangle at (0, 0). */
export const cuttingLineOnSheet = (foundation: Foundation, turn: Turn): Polygon<'page'> =>
  transformPolygon(sheetTransform(foundation, turn), foundation.cuttingLine);

/** Turns the foundation, its numbers' places with it, and moves the corner of its rectangle back to (0, 0). */
export const sheetTransform = (size: Size, turn: Turn): Transform<'print', 'page'> =>
  compose(placed(size, turn), TO_POINTS);

type Size = Pick<Foundation, 'width' | 'height'>;

const TO_POINTS = scaling<'print', 'page'>(POINTS_PER_INCH);

/** The same in inches. */
function placed({ width, height }: Size, turn: Turn): Transform<'print', 'print'> {
  switch (turn) {
    case 'upright':
      return { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };
    case 'turned':
      return { a: 0, b: 1, c: -1, d: 0, e: height, f: 0 };
    case 'on its head':
      return { a: -1, b: 0, c: 0, d: -1, e: width, f: height };
    case 'turned back':
      return { a: 0, b: -1, c: 1, d: 0, e: 0, f: width };
  }
}

/** Room above the cutting line for the word `cut`, points. */
export const CUT_WORD_ROOM = 10;

/** The room that a foundation of this size takes on the sheet: its upright rectangle and a strip above it. */
export const roomOf = ({ width, height }: { width: number; height: number }): Box<'page'> => ({
  minX: 0,
  minY: -CUT_WORD_ROOM,
  maxX: width,
  maxY: height,
});
