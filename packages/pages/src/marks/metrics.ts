import type { Point, Polygon } from '@seamwright/geometry';
import type { TextMark, Weight } from './model.ts';

/**
 * How wide a text is, without the font file: the layout is computed where no file can be read (on every edit, in
 * the browser). Advance widths of Source Sans 3 in thousandths of the type size; `metrics.test.ts` reads them
 * back from the font.
 */

/** Characters 32 … 126. */
// biome-ignore format: a table
const ASCII: Readonly<Record<Weight, readonly number[]>> = {
  regular: [
    200,289,426,497,497,824,609,249,303,303,418,497,249,311,249,350,497,497,497,497,497,497,497,497,497,497,249,
    249,497,497,497,425,847,544,588,571,615,527,494,617,652,263,480,579,486,727,647,664,566,664,569,534,536,645,
    515,786,513,476,539,303,350,303,497,500,542,504,553,456,555,496,292,504,544,246,247,495,255,829,547,542,555,
    555,347,419,338,544,467,719,446,467,425,303,241,303,497,
  ],
  semibold: [
    200,315,482,513,513,841,639,275,324,324,438,513,275,322,275,344,513,513,513,513,513,513,513,513,513,513,275,
    275,513,513,513,444,875,558,597,576,625,538,510,628,663,282,494,597,502,745,657,674,582,674,592,545,546,655,
    536,800,541,501,540,324,344,324,513,500,549,516,563,462,564,507,317,520,558,262,263,522,271,843,560,549,564,
    564,373,431,361,556,495,748,481,495,443,324,255,324,513,
  ],
};

/** The other characters that the pages' own words use. */
const OTHERS: Readonly<Record<Weight, Readonly<Record<string, number>>>> = {
  regular: { '×': 497, '·': 249, '…': 948, '–': 480 },
  semibold: { '×': 513, '·': 275, '…': 964, '–': 480 },
};

/** An accent makes some letters a little wider: ď, ľ, Ư. */
const ACCENT = 30;

/**
 * Fractions, other scripts and everything else: as wide as the widest, so that a text is not wider than it was
 * taken for.
 */
const WIDE = 870;
const WIDE_CAPITAL = 1000;

/** Height of capitals and figures as a share of the type size. */
export const CAP_HEIGHT = 0.66;

/**
 * Points. Right for what the pages' own words use; for other characters an upper bound in the Latin, Greek and
 * Cyrillic of today, a guess beyond.
 */
export function textWidth(content: string, size: number, weight: Weight): number {
  const plain = ASCII[weight];
  let thousandths = 0;
  for (let i = 0; i < content.length; i++) {
    const advanced = plain[content.charCodeAt(i) - 32] ?? OTHERS[weight][content[i]!];
    // Nearly all texts have known characters throughout; the others are looked at with more care.
    if (advanced === undefined) return widthOfAny(content, size, weight);
    thousandths += advanced;
  }
  return (thousandths * size) / 1000;
}

function widthOfAny(content: string, size: number, weight: Weight): number {
  let thousandths = 0;
  for (const character of content.normalize('NFC')) thousandths += advance(character, weight);
  return (thousandths * size) / 1000;
}

function advance(character: string, weight: Weight): number {
  const known = OTHERS[weight][character];
  if (known !== undefined) return known;
  const plain = ASCII[weight][character.normalize('NFD').charCodeAt(0) - 32];
  if (plain === undefined) return character === character.toLowerCase() ? WIDE : WIDE_CAPITAL;
  return character.length === 1 && character.charCodeAt(0) < 127 ? plain : plain + ACCENT;
}

/**
 * The corners of the rectangle that the text's capitals and figures fill, from the start of the base line.
 *
 * @param beside points by which the rectangle is longer at either end
 */
export function textCorners(
  { content, size, weight, anchor, at, angle }: TextMark,
  beside = 0,
): Polygon<'page'> {
  const length = textWidth(content, size, weight);
  const start = (anchor === 'start' ? 0 : anchor === 'middle' ? -length / 2 : -length) - beside;
  const width = length + 2 * beside;
  const radians = (angle * Math.PI) / 180;
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
  const rise = CAP_HEIGHT * size;
  const corner = (u: number, v: number): Point<'page'> => ({
    x: at.x + u * cos - v * sin,
    y: at.y + u * sin + v * cos,
  });
  return [corner(start, 0), corner(start + width, 0), corner(start + width, -rise), corner(start, -rise)];
}

/** The text, cut at a character and ended by `…` when it is wider than `width` points. */
export function shortened(content: string, size: number, weight: Weight, width: number): string {
  if (textWidth(content, size, weight) <= width) return content;
  const characters = [...content];
  while (characters.length > 0 && textWidth(`${characters.join('').trimEnd()}…`, size, weight) > width)
    characters.pop();
  return `${characters.join('').trimEnd()}…`;
}

/** The text in at most `lines` lines no wider than `width`, broken between words; the last is shortened. */
export function wrapped(
  content: string,
  size: number,
  weight: Weight,
  width: number,
  lines: number,
): readonly string[] {
  const done: string[] = [];
  let rest = content;
  while (done.length + 1 < lines && textWidth(rest, size, weight) > width) {
    const words = rest.split(' ');
    let count = 1;
    while (count < words.length && textWidth(words.slice(0, count + 1).join(' '), size, weight) <= width)
      count++;
    done.push(shortened(words.slice(0, count).join(' '), size, weight, width));
    rest = words.slice(count).join(' ');
    if (rest === '') return done;
  }
  return [...done, shortened(rest, size, weight, width)];
}
