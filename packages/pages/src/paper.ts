import {
  checkLength,
  fail,
  formatLength,
  type LengthRange,
  type LengthUnit,
  MM_PER_INCH,
  ok,
  POINTS_PER_INCH,
  type Result,
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
  const [across, down] = [width, height].map((side) => formatLength(side, unit));
  return ok(inInches(`${across} × ${down}`, width, height));
}
