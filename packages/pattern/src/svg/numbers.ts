import { MM_PER_INCH, POINTS_PER_INCH, PX_PER_INCH } from '@seamwright/geometry';

/** A number as SVG and CSS write it; neither `NaN`, `Infinity` nor hexadecimal. */
const NUMBER = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?`;

const ONE_LENGTH = new RegExp(`^\\s*(${NUMBER})\\s*([a-zA-Z]*|%)\\s*$`);
const NEXT_NUMBER = new RegExp(`[\\s,]*(${NUMBER})`, 'y');
/** What may stand between, before and after numbers. */
export const ONLY_SEPARATORS = /^[\s,]*$/;

/** CSS pixels in one of each unit. Source: W3C CSS Values, "absolute lengths"; no unit means user units, i.e. px. */
const PX_PER_UNIT: Readonly<Record<string, number>> = {
  '': 1,
  px: 1,
  in: PX_PER_INCH,
  pc: PX_PER_INCH / 6,
  pt: PX_PER_INCH / POINTS_PER_INCH,
  cm: (PX_PER_INCH * 10) / MM_PER_INCH,
  mm: PX_PER_INCH / MM_PER_INCH,
};

/**
 * A length in CSS pixels; null when it is no number, has a unit that depends on letters (em, ex) or an unknown one.
 *
 * @param whole what 100 % is, in CSS pixels; null when there is nothing that it could be a part of
 */
export function parsePx(text: string, whole: number | null): number | null {
  const match = ONE_LENGTH.exec(text);
  if (match === null) return null;
  const unit = match[2]!.toLowerCase();
  const factor = unit === '%' ? (whole === null ? undefined : whole / 100) : PX_PER_UNIT[unit];
  const px = Number(match[1]) * (factor ?? Number.NaN);
  return Number.isFinite(px) ? px : null;
}

/** Numbers separated by white space or commas, or by nothing where SVG allows it (`1-2`); null when anything else is there. */
export function parseNumbers(text: string): number[] | null {
  const numbers: number[] = [];
  NEXT_NUMBER.lastIndex = 0;
  let end = 0;
  for (let match = NEXT_NUMBER.exec(text); match !== null; match = NEXT_NUMBER.exec(text)) {
    numbers.push(Number(match[1]));
    end = NEXT_NUMBER.lastIndex;
  }
  return ONLY_SEPARATORS.test(text.slice(end)) && numbers.every(Number.isFinite) ? numbers : null;
}
