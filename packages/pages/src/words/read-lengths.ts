import { formatLength, formatSize, type LengthUnit, SAME_COORDINATE } from '@seamwright/geometry';

/** What a ruler is read to. */
const SIXTEENTHS = 16;

/** The finest marks on an inch ruler: what has one is said as it is. */
const SIXTY_FOURTHS = 64;

const toNearest = (inches: number, parts: number): number => Math.round(inches * parts) / parts;

const isSame = (p: number, q: number): boolean => Math.abs(p - q) < SAME_COORDINATE;

/** A length beside a seam, to the nearest sixteenth of an inch, `≈` before what is not one; or to a tenth of a millimetre. */
export function besideSeam(inches: number, unit: LengthUnit): string {
  if (unit !== 'in') return formatLength(inches, unit);
  const rounded = toNearest(inches, SIXTEENTHS);
  const text = formatLength(rounded, unit);
  return isSame(rounded, inches) ? text : `≈ ${text}`;
}

/**
 * A size that is only read, not cut by: `4½ × 5¼ in`, `≈ 6 11/16 × 6 11/16 in` where no ruler has it, to the nearest sixteenth;
 * or to a tenth of a millimetre.
 */
export function readSize(width: number, height: number, unit: LengthUnit): string {
  const inches = [width, height];
  if (unit !== 'in' || inches.every((side) => isSame(toNearest(side, SIXTY_FOURTHS), side)))
    return formatSize(width, height, unit);
  const [across, down] = inches.map((side) => toNearest(side, SIXTEENTHS));
  return `≈ ${formatSize(across!, down!, unit)}`;
}
