import { fail, ok, type Result } from './result.ts';
import { LARGEST_ALLOWANCE, LARGEST_SIZE, SAME_COORDINATE, SMALLEST_SIZE } from './tolerance.ts';

/**
 * Lengths as the maker types and reads them. Inside the program a length is a plain number of inches.
 */

/** 1 in = 25.4 mm exactly: the yard of 0.9144 m, from 1 July 1959, in an addendum to NBS Circular 572. */
export const MM_PER_INCH = 25.4;

/** 1 pt = 1/72 in in PDF user space with UserUnit 1: ISO 32000-1, table 30. */
export const POINTS_PER_INCH = 72;

/** 96 px = 1 in: W3C CSS Values and Units, absolute lengths. */
export const PX_PER_INCH = 96;

/** The unit in which lengths are shown, and the one that is meant where the maker types none. */
export type LengthUnit = 'in' | 'cm';

/** Which lengths are accepted, both ends included, inches. */
export interface LengthRange {
  readonly least: number;
  readonly most: number;
}

/** The finished size of a block. */
export const SIZE_RANGE: LengthRange = { least: SMALLEST_SIZE, most: LARGEST_SIZE };

/** The seam allowance; none at all is allowed, for templates that are cut by eye. */
export const ALLOWANCE_RANGE: LengthRange = { least: 0, most: LARGEST_ALLOWANCE };

/** Each unit's length in inches, as a ratio of whole numbers so that lengths of a few digits are rounded once, at the end. */
const UNITS: readonly { readonly names: readonly string[]; readonly inches: readonly [bigint, bigint] }[] = [
  { names: ['in', 'in.', 'inch', 'inches', '"'], inches: [1n, 1n] },
  { names: ['ft', 'ft.', 'foot', 'feet', "'"], inches: [12n, 1n] },
  { names: ['yd', 'yd.', 'yard', 'yards'], inches: [36n, 1n] },
  { names: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'], inches: [10n, 254n] },
  { names: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'], inches: [100n, 254n] },
  { names: ['m', 'metre', 'metres', 'meter', 'meters'], inches: [10_000n, 254n] },
];

/** The fractions that have a character of their own, in Unicode's blocks Latin-1 and Number Forms. */
const VULGAR_FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅐': '1/7',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅑': '1/9',
  '⅒': '1/10',
};

/** Longer texts are no lengths; the bound keeps a pasted page from being searched. */
const LONGEST_TEXT = 40;

/**
 * The length that the maker typed, in inches: `6`, `6.5`, `6,5`, `1/4`, `6 1/2`, `6-1/2`, `6½`, each alone (then
 * in `defaultUnit`) or followed by in, ″, ft, ′, yd, mm, cm or m; also `5′ 6½″`. A comma is a decimal comma.
 *
 * Up to 13 digits the value is the exact one rounded once to a double: `152.4mm` is 6 and not 6 give or take. With more, numerator
 * and denominator may be rounded before they are divided, and the last place of the value may be off. Refused, each with one Problem: what is no length, a length below 0, one outside `range`.
 */
export function parseLength(text: string, defaultUnit: LengthUnit, range?: LengthRange): Result<number> {
  const typed = text.trim();
  if (typed === '') return fail('No length is given', '', EXAMPLES);
  if (typed.length > LONGEST_TEXT) return fail(`${quoted(typed)} is not a length`, '', EXAMPLES);
  const plain = normalise(typed);
  if (/^-/.test(plain) && readInches(plain.slice(1).trim(), defaultUnit) !== null)
    return fail(`${quoted(typed)} is less than nothing`, '', 'Type a length without a minus sign');
  const inches = readInches(plain, defaultUnit);
  if (inches === null) return fail(`${quoted(typed)} is not a length`, '', EXAMPLES);
  return range === undefined ? ok(inches) : checkLength(inches, defaultUnit, range);
}

/**
 * The same check for a length that comes from a file and not from a field: inches, finite, within `range`; one that
 * differs from a bound by less than {@link SAME_COORDINATE} is that bound. The Problem names the bounds in `unit`.
 */
export function checkLength(inches: number, unit: LengthUnit, range: LengthRange): Result<number> {
  if (!Number.isFinite(inches)) return fail('The length is not a number', '', EXAMPLES);
  const bound = (value: number) => formatLength(value, unit);
  // The bound itself, typed in cm and shown rounded, has to be accepted again.
  if (inches < range.least - SAME_COORDINATE)
    return fail(`${bound(inches)} is too small`, '', `Type at least ${bound(range.least)}`);
  if (inches > range.most + SAME_COORDINATE)
    return fail(`${bound(inches)} is too large`, '', `Type at most ${bound(range.most)}`);
  return ok(Math.min(Math.max(inches, range.least), range.most));
}

const EXAMPLES = 'Type a length such as 2 3/8, 2.375 or 6cm';

const quoted = (text: string): string =>
  text.length <= LONGEST_TEXT ? `“${text}”` : `“${text.slice(0, LONGEST_TEXT)}…”`;

/** One spelling for what can be typed in several: plain quotes, slashes, hyphens, points, spaces, small letters. */
const normalise = (text: string): string =>
  text
    .replace(/[¼-¾⅐-⅞]/g, (glyph) => (glyph in VULGAR_FRACTIONS ? ` ${VULGAR_FRACTIONS[glyph]}` : glyph))
    .replace(/[⁄∕]/g, '/')
    .replace(/[‐‑‒–−]/g, '-')
    .replace(/[′’ʹ]/g, "'")
    .replace(/[″”“ʺ]/g, '"')
    .replace(/''/g, '"')
    .replace(/,/g, '.')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();

/** The number: `6`, `6.5`, `.5`, `1/4`, `6 1/2`, `6-1/2`. The groups: decimal, whole, numerator, denominator. */
const NUMBER = String.raw`(?:(\d+\.?\d*|\.\d+)|(?:(\d+)[ -])?(\d+) ?\/ ?(\d+))`;
const UNIT = String.raw`([a-z]+\.?|"|')`;
const ONE_LENGTH = new RegExp(`^${NUMBER} ?${UNIT}?$`);
const FEET_AND_INCHES = /^(\d+) ?(?:'|ft\.?|feet|foot)[ -]?(\d.*|\.\d.*)$/;

type Ratio = readonly [bigint, bigint];

function readInches(text: string, defaultUnit: LengthUnit): number | null {
  const feetFirst = FEET_AND_INCHES.exec(text);
  const ratio =
    feetFirst === null
      ? readOne(text, defaultUnit)
      : sum([BigInt(feetFirst[1]!) * 12n, 1n], readInchPart(feetFirst[2]!));
  return ratio === null ? null : Number(ratio[0]) / Number(ratio[1]);
}

/** What follows the feet is inches, whatever the default, and below one foot. */
function readInchPart(text: string): Ratio | null {
  const unit = ONE_LENGTH.exec(text)?.[5];
  if (unit !== undefined && !UNITS[0]!.names.includes(unit)) return null;
  const ratio = readOne(text, 'in');
  return ratio !== null && ratio[0] < 12n * ratio[1] ? ratio : null;
}

const sum = (a: Ratio, b: Ratio | null): Ratio | null =>
  b === null ? null : [a[0] * b[1] + b[0] * a[1], a[1] * b[1]];

function readOne(text: string, defaultUnit: LengthUnit): Ratio | null {
  const match = ONE_LENGTH.exec(text);
  if (match === null) return null;
  const [, decimal, whole, numerator, denominator, unitName = defaultUnit] = match;
  const unit = UNITS.find(({ names }) => names.includes(unitName));
  if (unit === undefined) return null;
  const count = decimal === undefined ? mixed(whole, numerator!, denominator!) : fromDecimal(decimal);
  return count === null ? null : [count[0] * unit.inches[0], count[1] * unit.inches[1]];
}

function fromDecimal(text: string): Ratio {
  const [before = '', after = ''] = text.split('.');
  return [BigInt(before + after), 10n ** BigInt(after.length)];
}

/** A fraction, or a whole and a proper fraction: `1 7/4` is more likely a slip of the finger than a length. */
function mixed(whole: string | undefined, numerator: string, denominator: string): Ratio | null {
  const [n, d] = [BigInt(numerator), BigInt(denominator)];
  if (d === 0n || (whole !== undefined && n >= d)) return null;
  return [BigInt(whole ?? '0') * d + n, d];
}

/** The denominators of the marks on an inch ruler. */
const RULER_DENOMINATORS: readonly number[] = [2, 4, 8, 16, 32, 64];

/**
 * Inches as a quilter writes them, without the unit: `6`, `2⅜`, `2 3/16`. A value that is no such fraction
 * (within {@link SAME_COORDINATE}) comes as a decimal of at most four places.
 */
export function formatInches(value: number, denominators: readonly number[] = RULER_DENOMINATORS): string {
  if (value < 0) return negative(formatInches(-value, denominators));
  return mixedNumber(value, denominators) ?? decimals(value, 4);
}

/** A value that is not negative as a whole and a fraction; null where it is no such fraction. */
function mixedNumber(value: number, denominators: readonly number[]): string | null {
  const whole = Math.floor(value + SAME_COORDINATE);
  const part = value - whole;
  if (Math.abs(part) <= SAME_COORDINATE) return `${whole}`;
  for (const denominator of [...denominators].sort((k, l) => k - l)) {
    const numerator = Math.round(part * denominator);
    if (Math.abs(part - numerator / denominator) > SAME_COORDINATE) continue;
    const fraction = `${numerator}/${denominator}`;
    const glyph = Object.keys(VULGAR_FRACTIONS).find((g) => VULGAR_FRACTIONS[g] === fraction);
    if (whole === 0) return glyph ?? fraction;
    return glyph === undefined ? `${whole} ${fraction}` : `${whole}${glyph}`;
  }
  return null;
}

/** A length in inches as it is shown: `2⅜ in`, or `6.03 cm` to a tenth of a millimetre. */
export const formatLength = (inches: number, unit: LengthUnit): string =>
  unit === 'in' ? `${formatInches(inches)} in` : `${decimals((inches * MM_PER_INCH) / 10, 2)} cm`;

/** A width and a height in inches, the unit once: `6 × 7½ in`, `15.24 × 19.05 cm`. */
export const formatSize = (width: number, height: number, unit: LengthUnit): string =>
  `${formatLength(width, unit).slice(0, -unit.length - 1)} × ${formatLength(height, unit)}`;

/**
 * A length in inches that is to be cut, above 0: as {@link formatLength} writes it, but rounded up where it has to be rounded,
 * so that nobody cuts less than was worked out (but for {@link SAME_COORDINATE}). 4¼ in, 10.795 cm, is `10.8 cm`.
 */
export function formatCutLength(inches: number, unit: LengthUnit): string {
  const up = (value: number, places: number) =>
    decimals(Math.ceil(value * 10 ** places) / 10 ** places, places);
  const least = inches - SAME_COORDINATE;
  return unit === 'in'
    ? `${mixedNumber(inches, RULER_DENOMINATORS) ?? up(least, 4)} in`
    : `${up((least * MM_PER_INCH) / 10, 2)} cm`;
}

/** A width and a height in inches that are to be cut, the unit once, each as {@link formatCutLength} writes it. */
export const formatCutSize = (width: number, height: number, unit: LengthUnit): string =>
  `${formatCutLength(width, unit).slice(0, -unit.length - 1)} × ${formatCutLength(height, unit)}`;

function decimals(value: number, places: number): string {
  if (value < 0) return negative(decimals(-value, places));
  return value.toFixed(places).replace(/\.?0+$/, '');
}

/** With a true minus sign; nothing less than nothing is shown as −0. */
const negative = (shown: string): string => (shown === '0' ? shown : `−${shown}`);
