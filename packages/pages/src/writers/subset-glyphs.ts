import { dataOf, type FontTables, measuresOf, placeOf } from './truetype.ts';

/** Some glyphs of a font, as three of its tables have them. */
export interface SubsetGlyphs {
  readonly count: number;
  /** Table `glyf`. */
  readonly outlines: Uint8Array;
  /** Table `loca`, format 1: where each outline begins, bytes. */
  readonly places: Uint8Array;
  /** Table `hmtx`: an advance and a left side bearing for each. */
  readonly measures: Uint8Array;
}

/**
 * The glyph that stands for a missing one (0), then those that are wanted, in their order, then those that they are put together from.
 *
 * Source of the layouts: OpenType specification 1.9, tables `glyf`, `hmtx` and `loca`.
 *
 * @param wanted numbers of glyphs in the font; one that is there twice is there twice in the result
 */
export function glyphsOf(data: DataView, tables: FontTables, wanted: readonly number[]): SubsetGlyphs {
  const outlineOf = outlinesOf(data, tables);
  const numbers = [0, ...wanted];
  const outlines: Uint8Array[] = [];
  // Parts of parts come to the end of the list in turn.
  for (let i = 0; i < numbers.length; i++) {
    const outline = outlineOf(numbers[i]!).slice();
    const out = dataOf(outline);
    for (const part of partsOf(out)) {
      const number = out.getUint16(part);
      let place = numbers.indexOf(number);
      if (place === -1) place = numbers.push(number) - 1;
      out.setUint16(part, place);
    }
    outlines.push(outline);
  }
  const measures = new Uint8Array(4 * numbers.length);
  numbers.map(measuresOf(data, tables)).forEach(({ advance, leftBearing }, i) => {
    dataOf(measures).setUint16(4 * i, advance);
    dataOf(measures).setInt16(4 * i + 2, leftBearing);
  });
  return { count: numbers.length, ...inARow(outlines), measures };
}

function inARow(outlines: readonly Uint8Array[]): Pick<SubsetGlyphs, 'outlines' | 'places'> {
  const places = new Uint8Array(4 * (outlines.length + 1));
  let length = 0;
  outlines.forEach((outline, i) => {
    length += 4 * Math.ceil(outline.length / 4);
    dataOf(places).setUint32(4 * (i + 1), length);
  });
  const row = new Uint8Array(length);
  outlines.forEach((outline, i) => {
    row.set(outline, dataOf(places).getUint32(4 * i));
  });
  return { outlines: row, places };
}

/** Where the numbers of the glyphs stand that an outline is put together from; none for one that is drawn. */
function partsOf(outline: DataView): readonly number[] {
  const parts: number[] = [];
  // Composite ones say that they have −1 contours.
  if (outline.byteLength === 0 || outline.getInt16(0) >= 0) return parts;
  for (let at = HEADER, more = true; more; ) {
    const flags = outline.getUint16(at);
    parts.push(at + 2);
    at += 4 + (flags & WORDS ? 4 : 2);
    at += flags & TWO_BY_TWO ? 8 : flags & TWO_SCALES ? 4 : flags & SCALE ? 2 : 0;
    more = (flags & MORE) !== 0;
  }
  return parts;
}

/** Contours and bounding box. */
const HEADER = 10;

const [WORDS, SCALE, MORE, TWO_SCALES, TWO_BY_TWO] = [0x1, 0x8, 0x20, 0x40, 0x80];

/** An outline's bytes; none for one with nothing to draw. */
function outlinesOf(data: DataView, tables: FontTables): (glyph: number) => Uint8Array {
  const halved = data.getInt16(placeOf(tables, 'head').offset + 50) === 0;
  const { offset: loca } = placeOf(tables, 'loca');
  const { offset: glyf } = placeOf(tables, 'glyf');
  const start = (glyph: number) =>
    halved ? 2 * data.getUint16(loca + 2 * glyph) : data.getUint32(loca + 4 * glyph);
  return (glyph) =>
    new Uint8Array(data.buffer, data.byteOffset + glyf + start(glyph), start(glyph + 1) - start(glyph));
}
