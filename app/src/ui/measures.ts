import type { Drawing } from '@seamwright/arrangement';
import {
  formatInches,
  formatLength,
  type LengthUnit,
  type Point,
  SAME_COORDINATE,
  subtract,
} from '@seamwright/geometry';
import { blockBounds } from '../canvas/bounds.ts';

/** Inches: what is read off a ruler; exact places have a field of their own. */
const READ_TO = 1 / 32;

const toRead = (inches: number): number => Math.round(inches / READ_TO) * READ_TO;

const isExact = (inches: number, unit: LengthUnit): boolean =>
  unit === 'cm' || Math.abs(toRead(inches) - inches) <= SAME_COORDINATE;

const shown = (inches: number, unit: LengthUnit): number => (unit === 'in' ? toRead(inches) : inches);

/** A length as one reads it off a ruler: `4¼ in`, `about 6 1/32 in`. */
export const lengthWords = (inches: number, unit: LengthUnit): string =>
  `${isExact(inches, unit) ? '' : 'about '}${formatLength(shown(inches, unit), unit)}`;

/** The corner that places are measured from: the block's left and top edge. */
export function originOf(drawing: Drawing): Point {
  const { minX, minY } = blockBounds(drawing);
  return { x: minX, y: minY };
}

/** A place as one reads it off two rulers, from the block's left and from its top: `3½, 0 in`. */
export function placeWords(at: Point, origin: Point, unit: LengthUnit): string {
  const { x, y } = subtract(at, origin);
  const first = unit === 'in' ? formatInches(shown(x, unit)) : formatLength(x, unit).replace(/ cm$/, '');
  const about = isExact(x, unit) ? '' : 'about ';
  return `${about}${first}, ${about === '' ? lengthWords(y, unit) : formatLength(shown(y, unit), unit)}`;
}
