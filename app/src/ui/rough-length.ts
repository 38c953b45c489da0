import {
  formatInches,
  formatLength,
  type LengthUnit,
  MM_PER_INCH,
  SAME_COORDINATE,
} from '@seamwright/geometry';

/**
 * A length for reading, not for cutting: `about 2 13/16 in`, `about 7.2 cm`. To a sixteenth of an inch or a
 * millimetre, and `about` is left out where that is exact.
 *
 * @param about what stands for it where there is little room
 */
export function roughLength(inches: number, unit: LengthUnit, about = 'about'): string {
  const step = unit === 'in' ? 1 / 16 : 1 / MM_PER_INCH;
  const rounded = Math.round(inches / step) * step;
  const shown = unit === 'in' ? `${formatInches(rounded)} in` : formatLength(rounded, unit);
  return Math.abs(rounded - inches) <= SAME_COORDINATE ? shown : `${about} ${shown}`;
}
