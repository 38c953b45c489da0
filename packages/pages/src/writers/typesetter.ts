import type { TextMark, Weight } from '../marks/model.ts';
import type { PageFonts } from './fonts.ts';
import { readTypeface, type Typeface } from './truetype.ts';

/** A text as it stands in a content stream. */
export interface SetText {
  /** The codes of its glyphs, a character for each byte, as they stand in a literal string. */
  readonly codes: string;
  /** In type of 1 point. */
  readonly width: number;
}

/** How one character is written: the font's name among the document's resources, and the code of the glyph there, hexadecimal. */
export interface SetCharacter {
  readonly font: string;
  readonly code: string;
}

/**
 * Texts in the codes of a document's fonts, each text and each character worked out once: the same few stand on every sheet.
 *
 * Nothing reorders or joins letters: the pages' fonts have only scripts that are written from left to right, letter beside letter.
 */
export class Typesetter {
  private readonly faces: Readonly<Record<Weight, Typeface>>;
  private readonly codes = { regular: new Map<string, string>(), semibold: new Map<string, string>() };
  private readonly texts = { regular: new Map<string, SetText>(), semibold: new Map<string, SetText>() };
  private readonly names: { regular?: string; semibold?: string } = {};

  /** @param setCharacter called once for each character of each font, so that the document has a glyph for it */
  constructor(
    fonts: PageFonts,
    private readonly setCharacter: (character: string, weight: Weight) => SetCharacter,
  ) {
    this.faces = { regular: readTypeface(fonts.regular), semibold: readTypeface(fonts.semibold) };
  }

  set({ content, weight }: Pick<TextMark, 'content' | 'weight'>): SetText {
    const known = this.texts[weight].get(content);
    if (known !== undefined) return known;
    let [codes, thousandths] = ['', 0];
    for (let i = 0; i < content.length; i++) {
      codes += this.codeOf(content[i]!, weight);
      thousandths += this.faces[weight].advance(content.charCodeAt(i));
    }
    const set = { codes, width: thousandths / 1000 };
    this.texts[weight].set(content, set);
    return set;
  }

  /** The font's name among the document's resources. */
  font(weight: Weight): string {
    if (this.names[weight] === undefined) this.codeOf(' ', weight);
    return this.names[weight]!;
  }

  private codeOf(character: string, weight: Weight): string {
    const known = this.codes[weight].get(character);
    if (known !== undefined) return known;
    const { font, code } = this.setCharacter(character, weight);
    this.names[weight] = font;
    const bytes = literal(code);
    this.codes[weight].set(character, bytes);
    return bytes;
  }
}

/**
 * Half as long as in hexadecimal digits. Brackets, the backslash and the carriage return, which would be read as a new line, are
 * escaped: ISO 32000-1, 7.3.4.2.
 */
const literal = (hexadecimal: string): string =>
  hexadecimal
    .replace(/../g, (byte) => String.fromCharCode(Number.parseInt(byte, 16)))
    .replace(/[()\\]/g, '\\$&')
    .replace(/\r/g, '\\r');
