import {
  formatInches,
  formatLength,
  type LengthUnit,
  type Point,
  SAME_COORDINATE,
} from '@seamwright/geometry';

/** Inches: what is read off a ruler; exact places have a field of their own. */
const READ_TO = 1 / 32;

const toRead = (inches: number): number => Math.round(inches / READ_TO) * READ_TO;

const isExact = (inches: number, unit: LengthUnit): boolean =>
  unit === 'cm' || Math.abs(toRead(inches) - inches) <= SAME_COORDINATE;

const shown = (inches: number, unit: LengthUnit): number => (unit === 'in' ? toRead(inches) : inches);

/** A length as one reads it off a ruler: `4¼ in`, `about 6 1/32 in`. */
export const lengthWords = (inches: number, unit: LengthUnit): string =>
  `${isExact(inches, unit) ? '' : 'about '}${formatLength(shown(inches, unit), unit)}`;

/** A place as one reads it off two rulers, from the left and from the top: `3½, 0 in`. */
export function placeWords({ x, y }: Point, unit: LengthUnit): string {
  const first = unit === 'in' ? formatInches(shown(x, unit)) : formatLength(x, unit).replace(/ cm$/, '');
  const about = isExact(x, unit) && isExact(y, unit) ? '' : 'about ';
  return `${about}${first}, ${formatLength(shown(y, unit), unit)}`;
}
