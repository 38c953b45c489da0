/**
 * Just enough of a TrueType file to know which characters it can draw and how wide they are.
 *
 * Source of the layouts: OpenType specification 1.9, tables `head`, `hhea`, `hmtx` and `cmap` (format 4).
 */
export interface Typeface {
  /** Whether the character (one UTF-16 unit) has a glyph of its own. */
  has(unit: number): boolean;
  /** Its glyph's number in the font; 0, the missing-glyph box, when there is none. */
  glyph(unit: number): number;
  /** Advance width in thousandths of the type size; of the missing-glyph box when there is no glyph. */
  advance(unit: number): number;
}

/** What was read, as long as the bytes are kept: their maps of characters are long, and every page is set in the same. */
const read = new WeakMap<Uint8Array, Typeface>();

/** Throws a RangeError when the bytes are no TrueType font with a Unicode character map: a bug of the caller. */
export function readTypeface(bytes: Uint8Array): Typeface {
  const known = read.get(bytes);
  if (known !== undefined) return known;
  const face = typefaceOf(bytes);
  read.set(bytes, face);
  return face;
}

function typefaceOf(bytes: Uint8Array): Typeface {
  const data = dataOf(bytes);
  const tables = tablesOf(data);
  const unitsPerEm = data.getUint16(placeOf(tables, 'head').offset + 18);
  const glyphs = glyphMap(data, placeOf(tables, 'cmap').offset);
  const measure = measuresOf(data, tables);
  const glyph = (unit: number) => glyphs.get(unit) ?? 0;
  return {
    glyph,
    has: (unit) => glyph(unit) !== 0,
    advance: (unit) => (measure(glyph(unit)).advance * 1000) / unitsPerEm,
  };
}

/** What the table `hmtx` says of a glyph, font units. */
export function measuresOf(
  data: DataView,
  tables: FontTables,
): (glyph: number) => { readonly advance: number; readonly leftBearing: number } {
  const long = data.getUint16(placeOf(tables, 'hhea').offset + 34);
  const { offset } = placeOf(tables, 'hmtx');
  return (glyph) => {
    // Glyphs past the last long record share its advance, and have a short one each.
    const record = offset + 4 * Math.min(glyph, long - 1);
    const bearing = glyph < long ? record + 2 : offset + 4 * long + 2 * (glyph - long);
    return { advance: data.getUint16(record), leftBearing: data.getInt16(bearing) };
  };
}

export const dataOf = (bytes: Uint8Array): DataView =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** Where a table lies in the file, bytes. */
export interface TablePlace {
  readonly offset: number;
  readonly length: number;
}

/** A file's tables by their tags. */
export type FontTables = ReadonlyMap<string, TablePlace>;

export function tablesOf(data: DataView): FontTables {
  const tables = new Map<string, TablePlace>();
  const count = data.getUint16(4);
  for (let i = 0; i < count; i++) {
    const record = 12 + 16 * i;
    const tag = String.fromCharCode(...[0, 1, 2, 3].map((k) => data.getUint8(record + k)));
    tables.set(tag, { offset: data.getUint32(record + 8), length: data.getUint32(record + 12) });
  }
  return tables;
}

/** Where a table lies that every font has. Throws a RangeError where this one has not. */
export function placeOf(tables: FontTables, tag: string): TablePlace {
  const table = tables.get(tag);
  if (table === undefined) throw new RangeError(`The font has no table ${tag}`);
  return table;
}

/** Glyphs by characters, of the first Unicode subtable of format 4. */
function glyphMap(data: DataView, cmap: number): ReadonlyMap<number, number> {
  const count = data.getUint16(cmap + 2);
  for (let i = 0; i < count; i++) {
    const record = cmap + 4 + 8 * i;
    const platform = data.getUint16(record);
    const encoding = data.getUint16(record + 2);
    const subtable = cmap + data.getUint32(record + 4);
    const unicode = platform === 0 || (platform === 3 && encoding === 1);
    if (unicode && data.getUint16(subtable) === 4) return segmentMap(data, subtable);
  }
  throw new RangeError('The font has no Unicode character map of format 4');
}

function segmentMap(data: DataView, subtable: number): ReadonlyMap<number, number> {
  const glyphs = new Map<number, number>();
  const doubledCount = data.getUint16(subtable + 6);
  const ends = subtable + 14;
  const starts = ends + doubledCount + 2;
  const deltas = starts + doubledCount;
  const ranges = deltas + doubledCount;
  for (let s = 0; s < doubledCount; s += 2) {
    const range = data.getUint16(ranges + s);
    const delta = data.getUint16(deltas + s);
    const end = data.getUint16(ends + s);
    for (let code = data.getUint16(starts + s); code <= end && code !== 0xffff; code++) {
      const listed =
        range === 0 ? code : data.getUint16(ranges + s + range + 2 * (code - data.getUint16(starts + s)));
      const glyph = range !== 0 && listed === 0 ? 0 : (listed + delta) & 0xffff;
      if (glyph !== 0) glyphs.set(code, glyph);
    }
  }
  return glyphs;
}
