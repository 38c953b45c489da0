import { fail, formatLength, MM_PER_INCH, ok, type Result } from '@seamwright/geometry';
import { type Printer, percent, SCALED_REMEDY } from './correction.ts';
import { PRINTER_RANGE } from './printer-range.ts';

/** What the maker measured on a check page; what was not measured is left out. */
export interface Measured {
  /** The smaller square's width and height, inches. */
  readonly oneInchAcross?: number;
  readonly oneInchDown?: number;
  /** The larger square's, millimetres. */
  readonly fiftyMmAcross?: number;
  readonly fiftyMmDown?: number;
  /** The long rulers, inches. */
  readonly rulerAcross?: RulerMeasure;
  readonly rulerDown?: RulerMeasure;
}

export interface RulerMeasure {
  /** How long the page says that it is. */
  readonly printed: number;
  readonly measured: number;
}

/** Inches (half a millimetre): how far two readings of a ruler by eye may differ (common practice). */
const READING = 0.5 / MM_PER_INCH;

/** Nobody measures a square so wrong: a number beyond is of another square, or in another unit. */
const BELIEVABLE = { least: 0.5, most: 2 };

/** One length on the check page, inches. */
interface Reading extends RulerMeasure {
  readonly what: string;
}

/**
 * What a printer makes of 1 across the sheet and down, from what its check page measures.
 *
 * The factor of each direction is the one that leaves the smallest squared errors in inches (least squares through 0): a
 * long length counts more than a short one, as an eye is as far off on either.
 *
 * A Problem when a direction has no measure, a measure is none, two of one direction disagree by more than reading a
 * ruler explains, or the page came out beyond 90 to 110 %: then it was scaled, and no correction helps.
 */
export function printerFrom(measured: Measured): Result<Pick<Printer, 'across' | 'down'>> {
  const across = factorOf('across', [
    square('1 in', 1, measured.oneInchAcross),
    square('50 mm', 50 / MM_PER_INCH, inInches(measured.fiftyMmAcross)),
    ruler(measured.rulerAcross),
  ]);
  if (!across.ok) return across;
  const down = factorOf('down', [
    square('1 in', 1, measured.oneInchDown),
    square('50 mm', 50 / MM_PER_INCH, inInches(measured.fiftyMmDown)),
    ruler(measured.rulerDown),
  ]);
  return down.ok ? ok({ across: across.value, down: down.value }) : down;
}

const inInches = (millimetres: number | undefined): number | undefined =>
  millimetres === undefined ? undefined : millimetres / MM_PER_INCH;

const square = (side: string, printed: number, measured: number | undefined): Reading | null =>
  measured === undefined ? null : { what: `the square of ${side}`, printed, measured };

const ruler = (reading: RulerMeasure | undefined): Reading | null =>
  reading === undefined ? null : { what: 'the long ruler', ...reading };

function factorOf(direction: 'across' | 'down', all: readonly (Reading | null)[]): Result<number> {
  const readings = all.filter((reading) => reading !== null);
  const [first] = readings;
  if (first === undefined)
    return fail(
      `Nothing was measured ${direction} the sheet`,
      direction,
      'Measure a check square in both directions: printers are not off alike across and down',
    );
  for (const { what, printed, measured } of readings) {
    const factor = measured / printed;
    // Written so that NaN fails, too.
    if (!(factor >= BELIEVABLE.least && factor <= BELIEVABLE.most))
      return fail(
        `${shown(measured, what)} is no measure of ${what}`,
        direction,
        'Measure from the middle of one line to the middle of the line opposite, and type what the ruler shows',
      );
  }
  const apart = readings.find(
    ({ printed, measured }) =>
      Math.abs(measured / printed - first.measured / first.printed) >
      READING / printed + READING / first.printed,
  );
  if (apart !== undefined)
    return fail(
      `Two lengths disagree: ${first.what} came out at ${percent(first.measured / first.printed)}, ${apart.what} at ${percent(apart.measured / apart.printed)}`,
      direction,
      'Measure both once more',
    );
  const sum = (of: (reading: Reading) => number) => readings.reduce((total, one) => total + of(one), 0);
  const factor = sum(({ printed, measured }) => printed * measured) / sum(({ printed }) => printed ** 2);
  if (factor < PRINTER_RANGE.least || factor > PRINTER_RANGE.most)
    return fail(`The page came out at ${percent(factor)}`, direction, SCALED_REMEDY);
  return ok(factor);
}

/** In the unit in which it was measured. */
const shown = (inches: number, what: string): string => {
  if (!Number.isFinite(inches)) return 'That';
  return what.endsWith('mm')
    ? `${Math.round(inches * MM_PER_INCH * 100) / 100} mm`
    : formatLength(Math.round(inches * 1e4) / 1e4, 'in');
};
