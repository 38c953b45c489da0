import { glyphsOf } from './subset-glyphs.ts';
import { dataOf, placeOf, readTypeface, type TablePlace, tablesOf } from './truetype.ts';

/** Names that stay: the copyright notice and the PostScript name. */
const KEPT_NAMES: readonly number[] = [0, 6];

/**
 * A font with the glyphs of some characters, each with a glyph of its own, and with the tables that a PDF needs (ISO 32000-1, 9.9).
 *
 * The library makes a subset, too, but one with the measures, the places and the map of all the font's glyphs, byte by byte: for two and
 * a half thousand glyphs, that takes longer than the pages. Of a font that has no more than what is printed it keeps everything.
 *
 * Characters that the font has no glyph for are left out. Source of the layouts: OpenType specification 1.9, tables `cmap`, `head`, `hhea`,
 * `maxp`, `name` and `post` (format 3). Checksums are left out, the library writes its own.
 */
export function subsetFont(bytes: Uint8Array, characters: Iterable<string>): Uint8Array {
  const data = dataOf(bytes);
  const places = tablesOf(data);
  const face = readTypeface(bytes);
  const units = [...new Set(Array.from(characters, (character) => character.charCodeAt(0)))]
    .filter((unit) => face.has(unit))
    .sort((p, q) => p - q);
  const wanted = units.map((unit) => face.glyph(unit));
  const glyphs = glyphsOf(data, places, wanted);
  const copy = (tag: string) => bytesAt(data, placeOf(places, tag)).slice();
  return fontFile(data.getUint32(0), [
    ...(places.has('OS/2') ? [['OS/2', copy('OS/2')] as const] : []),
    ['cmap', mapOf(units)],
    ['glyf', glyphs.outlines],
    // Format 1: the places are written as they are, not halved.
    ['head', withNumber(copy('head'), 50, 1)],
    ['hhea', withNumber(copy('hhea'), 34, glyphs.count)],
    ['hmtx', glyphs.measures],
    ['loca', glyphs.places],
    ['maxp', withNumber(copy('maxp'), 4, glyphs.count)],
    ['name', fewNames(data, placeOf(places, 'name'))],
    ['post', withoutNames(copy('post'))],
  ]);
}

function fontFile(
  version: number,
  tables: readonly (readonly [tag: string, table: Uint8Array])[],
): Uint8Array {
  let offset = 12 + 16 * tables.length;
  const starts = tables.map(([, table]) => {
    const start = offset;
    offset = start + 4 * Math.ceil(table.length / 4);
    return start;
  });
  const font = new Uint8Array(offset);
  const out = dataOf(font);
  out.setUint32(0, version);
  out.setUint16(4, tables.length);
  tables.forEach(([tag, table], i) => {
    const record = 12 + 16 * i;
    for (let k = 0; k < tag.length; k++) out.setUint8(record + k, tag.charCodeAt(k));
    out.setUint32(record + 8, starts[i]!);
    out.setUint32(record + 12, table.length);
    font.set(table, starts[i]!);
  });
  return font;
}

const bytesAt = (data: DataView, { offset, length }: TablePlace): Uint8Array =>
  new Uint8Array(data.buffer, data.byteOffset + offset, length);

function withNumber(table: Uint8Array, at: number, value: number): Uint8Array {
  dataOf(table).setUint16(at, value);
  return table;
}

/** One map, of format 4 for Unicode (platform 3, encoding 1): the character `units[i]` has the glyph i + 1. */
function mapOf(units: readonly number[]): Uint8Array {
  // A segment for each character, they are few; the last one ends the list.
  const segments = units.length + 1;
  const subtable = 12;
  const length = 16 + 8 * segments;
  const table = new Uint8Array(subtable + length);
  const out = dataOf(table);
  [0, 1, 3, 1].forEach((value, i) => {
    out.setUint16(2 * i, value);
  });
  out.setUint32(8, subtable);
  const power = 2 ** Math.floor(Math.log2(segments));
  const header = [4, length, 0, 2 * segments, 2 * power, Math.log2(power), 2 * (segments - power)];
  header.forEach((value, i) => {
    out.setUint16(subtable + 2 * i, value);
  });
  const ends = subtable + 14;
  const starts = ends + 2 * segments + 2;
  const deltas = starts + 2 * segments;
  [...units, LAST_UNIT].forEach((unit, i) => {
    out.setUint16(ends + 2 * i, unit);
    out.setUint16(starts + 2 * i, unit);
    // Modulo 65536; the last segment has no glyph.
    out.setUint16(deltas + 2 * i, unit === LAST_UNIT ? 1 : i + 1 - unit);
  });
  return table;
}

const LAST_UNIT = 0xffff;

function fewNames(data: DataView, { offset }: TablePlace): Uint8Array {
  const strings = offset + data.getUint16(offset + 4);
  const records = Array.from({ length: data.getUint16(offset + 2) }, (_, i) => offset + 6 + 12 * i)
    .filter((record) => KEPT_NAMES.includes(data.getUint16(record + 6)))
    .map((record) => ({
      head: bytesAt(data, { offset: record, length: 8 }),
      text: bytesAt(data, {
        offset: strings + data.getUint16(record + 10),
        length: data.getUint16(record + 8),
      }),
    }));
  const start = 6 + 12 * records.length;
  const table = new Uint8Array(records.reduce((sum, { text }) => sum + text.length, start));
  const out = dataOf(table);
  out.setUint16(2, records.length);
  out.setUint16(4, start);
  let at = start;
  records.forEach(({ head, text }, i) => {
    const record = 6 + 12 * i;
    table.set(head, record);
    out.setUint16(record + 8, text.length);
    out.setUint16(record + 10, at - start);
    table.set(text, at);
    at += text.length;
  });
  return table;
}

/** Format 3: the header alone. */
function withoutNames(post: Uint8Array): Uint8Array {
  const table = post.slice(0, 32);
  dataOf(table).setUint32(0, 0x00030000);
  return table;
}
