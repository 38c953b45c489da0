import { fail, ok, type Result } from '@seamwright/geometry';

/** Degrees: more than a full turn either way is a slip of the keys. */
const FULL_TURN = 360;

const EXAMPLES = 'Type degrees such as 45 or 22.5';

/** `45`, `22.5`, `22,5`, `-30`, `67 1/2`, each alone or followed by ° or deg. The groups: sign, number, fraction. */
const ANGLE =
  /^([-−])?\s*(?:(\d+(?:[.,]\d*)?|[.,]\d+)?(?:\s*(\d+)\s*[/⁄]\s*(\d+)|([½¼¾⅓⅔]))?)\s*(?:°|deg(?:rees?)?)?$/i;

const GLYPHS: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
};

/** The angle that the maker typed, degrees. Refused, in a sentence: what is no angle, more than a full turn. */
export function parseAngle(text: string): Result<number> {
  const typed = text.trim();
  if (typed === '') return fail('No angle is given', '', EXAMPLES);
  const degrees = readAngle(typed);
  if (degrees === null) return fail(`“${typed.slice(0, 40)}” is not an angle`, '', EXAMPLES);
  if (Math.abs(degrees) > FULL_TURN)
    return fail(`${typed.slice(0, 40)} is more than a full turn`, '', 'Type degrees from −360 to 360');
  return ok(degrees);
}

function readAngle(typed: string): number | null {
  const found = ANGLE.exec(typed);
  if (found === null) return null;
  const [, sign, whole, over, under, glyph] = found;
  if (whole === undefined && over === undefined && glyph === undefined) return null;
  const fraction =
    over !== undefined ? Number(over) / Number(under) : glyph !== undefined ? GLYPHS[glyph]! : 0;
  const degrees = Number((whole ?? '0').replace(',', '.')) + fraction;
  if (!Number.isFinite(degrees)) return null;
  return (sign === undefined ? degrees : -degrees) + 0;
}

/** Degrees for reading, to a tenth: `45°`, `about 33.7°`. */
export function angleWords(degrees: number): string {
  const shown = Math.round(degrees * 10) / 10;
  const exact = Math.abs(shown - degrees) <= EXACT_TO;
  return `${exact ? '' : 'about '}${shown}°`;
}

/** Degrees: what is nearer than this is a rounding of sums, and no other angle. */
const EXACT_TO = 1e-6;
