import {
  checkLength,
  fail,
  formatSize,
  type LengthRange,
  type LengthUnit,
  MM_PER_INCH,
  ok,
  POINTS_PER_INCH,
  type Result,
  SAME_COORDINATE,
} from '@seamwright/geometry';

export const POINTS_PER_MM = POINTS_PER_INCH / MM_PER_INCH;

/** A sheet of paper, as a plan carries it. */
export interface Paper {
  /** As people call it. */
  readonly label: string;
  /** Points. */
  readonly width: number;
  readonly height: number;
  /** The same in the unit by which the paper is defined, as SVG's `width` and `height` take it. */
  readonly trueWidth: string;
  readonly trueHeight: string;
}

export type PaperName = 'letter' | 'legal' | 'tabloid' | 'a4' | 'a3';

/** A paper by its name, or a sheet of any size in inches. */
export type PaperChoice = PaperName | { readonly width: number; readonly height: number };

/** What is left blank at each edge of the sheet, inches. */
export interface Margins {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

/** Inches. Printers leave 4 to 4.2 mm blank, 1/4 in is safe (printer manuals; common practice). */
export const USUAL_MARGINS: Margins = { top: 0.25, right: 0.25, bottom: 0.25, left: 0.25 };

const inInches = (label: string, width: number, height: number): Paper => ({
  label,
  width: width * POINTS_PER_INCH,
  height: height * POINTS_PER_INCH,
  trueWidth: `${decimal(width)}in`,
  trueHeight: `${decimal(height)}in`,
});

const inMillimetres = (label: string, width: number, height: number): Paper => ({
  label,
  width: width * POINTS_PER_MM,
  height: height * POINTS_PER_MM,
  trueWidth: `${width}mm`,
  trueHeight: `${height}mm`,
});

/** As fine as files are written. */
const decimal = (value: number): string => `${Math.round(value * 1e6) / 1e6}`;

/**
 * Letter and Tabloid: ANSI/ASME Y14.1, sizes A (8.5 × 11 in) and B (11 × 17 in). Legal, 8.5 × 14 in, is in no standard for
 * drawings: common practice. A4, 210 × 297 mm, and A3, 297 × 420 mm: ISO 216.
 */
export const PAPERS: Readonly<Record<PaperName, Paper>> = {
  letter: inInches('Letter', 8.5, 11),
  legal: inInches('Legal', 8.5, 14),
  tabloid: inInches('Tabloid', 11, 17),
  a4: inMillimetres('A4', 210, 297),
  a3: inMillimetres('A3', 297, 420),
};

/** Sides of a sheet of one's own, inches: from a small card to a wide roll. */
export const PAPER_RANGE: LengthRange = { least: 4, most: 120 };

/** The paper that was chosen; a Problem when it has no such name, or a side that no sheet has. */
export function paperOf(choice: PaperChoice, unit: LengthUnit): Result<Paper> {
  if (typeof choice === 'string') {
    if (Object.hasOwn(PAPERS, choice)) return ok(PAPERS[choice]);
    const names = Object.keys(PAPERS);
    return fail(
      `There is no paper “${choice}”`,
      '',
      `Choose ${names.slice(0, -1).join(', ')} or ${names.at(-1)}`,
    );
  }
  const { width, height } = choice;
  for (const [name, side] of [
    ['width of the paper', width],
    ['height of the paper', height],
  ] as const) {
    const checked = checkLength(side, unit, PAPER_RANGE);
    if (!checked.ok) return { ok: false, problem: { ...checked.problem, where: name } };
  }
  return ok(inInches(formatSize(choice.width, choice.height, unit), width, height));
}

/** What margins may measure, inches; a sheet's half and more is for rolls. */
const MARGIN_RANGE: LengthRange = { least: 0, most: PAPER_RANGE.most };

export function checkMargins(margins: Margins, unit: LengthUnit): Result<Margins> {
  for (const edge of ['top', 'right', 'bottom', 'left'] as const) {
    const checked = checkLength(margins[edge], unit, MARGIN_RANGE);
    if (!checked.ok) return { ok: false, problem: { ...checked.problem, where: `${edge} margin` } };
  }
  return ok(margins);
}

/** Inches. On less there is no room beside the check squares and above them. */
const LEAST_ROOM = { width: 3.25, height: 4.5 };

/**
 * A Problem when the margins leave nothing of the sheet, or too little for anything.
 *
 * @param sheet points
 */
export function checkRoom(
  sheet: { readonly width: number; readonly height: number },
  { top, right, bottom, left }: Margins,
  unit: LengthUnit,
): Result<true> {
  const width = sheet.width / POINTS_PER_INCH - left - right;
  const height = sheet.height / POINTS_PER_INCH - top - bottom;
  if (width <= 0 || height <= 0)
    return fail(
      'The margins leave nothing of the sheet',
      'margins',
      'Make them smaller, or choose a larger paper',
    );
  // The sides themselves, typed in cm and shown rounded, have to be accepted.
  if (width >= LEAST_ROOM.width - SAME_COORDINATE && height >= LEAST_ROOM.height - SAME_COORDINATE)
    return ok(true);
  return fail(
    `Only ${formatSize(hundredths(width), hundredths(height), unit)} of the sheet can be printed on`,
    'paper and margins',
    `Choose a larger paper or smaller margins: the check squares and a foundation need ${formatSize(LEAST_ROOM.width, LEAST_ROOM.height, unit)}`,
  );
}

const hundredths = (value: number): number => Math.round(value * 100) / 100;
