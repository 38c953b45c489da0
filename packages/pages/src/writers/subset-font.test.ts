import { expect, test } from 'vitest';
import { pageFonts } from '../../test/fonts.ts';
import { subsetFont } from './subset-font.ts';
import { dataOf, placeOf, readTypeface, tablesOf } from './truetype.ts';

const WEIGHTS = ['regular', 'semibold'] as const;

/** Letters, fractions, letters that are put together from parts, one with nothing to draw. */
const CHARACTERS = [...'Boat A1 ⅜×½ äÉǻΩд()\\'];

/** A table of the font, bytes. */
function tableOf(bytes: Uint8Array, tag: string): Uint8Array {
  const { offset, length } = placeOf(tablesOf(dataOf(bytes)), tag);
  return bytes.subarray(offset, offset + length);
}

/**
 * What is drawn for a glyph: its own bytes, or of each part how it is placed and what is drawn for it. Read anew, from the
 * OpenType specification 1.9, `glyf`, and by other steps than the writer's.
 */
function drawn(bytes: Uint8Array, glyph: number): unknown {
  const long = dataOf(tableOf(bytes, 'head')).getInt16(50) === 1;
  const loca = dataOf(tableOf(bytes, 'loca'));
  const [start, end] = [glyph, glyph + 1].map((k) =>
    long ? loca.getUint32(4 * k) : 2 * loca.getUint16(2 * k),
  );
  const outline = tableOf(bytes, 'glyf').subarray(start, end);
  if (outline.length === 0) return 'nothing';
  const data = dataOf(outline);
  // What is left over to a multiple of four bytes is no part of it.
  if (data.getInt16(0) !== -1) return Buffer.from(outline).toString('hex').replace(/0+$/, '');
  const parts: unknown[] = [];
  let [at, flags] = [10, 0x20];
  while (flags & 0x20) {
    flags = data.getUint16(at);
    const numbers =
      (flags & 0x1 ? 4 : 2) + [0x8, 0x40, 0x80].reduce((sum, bit, k) => sum + (flags & bit ? 2 << k : 0), 0);
    const placed = Buffer.from(outline.subarray(at + 4, at + 4 + numbers)).toString('hex');
    parts.push([flags, placed, drawn(bytes, data.getUint16(at + 2))]);
    at += 4 + numbers;
  }
  return parts;
}

test.each(WEIGHTS)(
  'a subset has the characters that were asked for, as wide and drawn alike, and no other: %s',
  (weight) => {
    const whole = pageFonts[weight];
    const subset = subsetFont(whole, CHARACTERS);
    const [all, some] = [readTypeface(whole), readTypeface(subset)];
    const units = Array.from({ length: 0xffff }, (_, unit) => unit);
    const had = units.filter((unit) => some.has(unit)).map((unit) => String.fromCharCode(unit));
    expect(had).toEqual([...new Set(CHARACTERS)].sort());
    for (const character of CHARACTERS) {
      const unit = character.charCodeAt(0);
      expect(some.advance(unit)).toBe(all.advance(unit));
      expect(drawn(subset, some.glyph(unit))).toEqual(drawn(whole, all.glyph(unit)));
    }
    expect(drawn(subset, 0)).toEqual(drawn(whole, 0));
    expect(drawn(whole, all.glyph('ǻ'.charCodeAt(0)))).toBeInstanceOf(Array);
    expect(subset.length).toBeLessThan(whole.length / 20);
  },
);

test('each character has a glyph of its own, and what the font lacks is left out', () => {
  // The font draws a space that does not break with the glyph of the space.
  const [space, unbroken] = [0x20, 0xa0];
  const whole = readTypeface(pageFonts.regular);
  expect(whole.glyph(unbroken)).toBe(whole.glyph(space));
  const some = readTypeface(subsetFont(pageFonts.regular, ['\u0020', '\u00a0', '船']));
  expect(some.has('船'.charCodeAt(0))).toBe(false);
  expect([space, unbroken].map((unit) => some.glyph(unit))).toEqual([1, 2]);
});

test('a subset of no characters has the glyph for what is missing', () => {
  const none = subsetFont(pageFonts.regular, []);
  expect(dataOf(tableOf(none, 'maxp')).getUint16(4)).toBe(1);
  expect(drawn(none, 0)).toEqual(drawn(pageFonts.regular, 0));
});

test('it has no names of glyphs, and of its own the copyright notice and the PostScript name', () => {
  const subset = subsetFont(pageFonts.regular, CHARACTERS);
  const post = tableOf(subset, 'post');
  // OpenType specification 1.9, post: format 3 is the header of 32 bytes alone.
  expect([post.length, dataOf(post).getUint32(0)]).toEqual([32, 0x00030000]);
  const text = new TextDecoder('utf-16be').decode(tableOf(subset, 'name'));
  expect(text).toContain('SourceSans3-Regular');
  // As the package's LICENSE.md has it.
  expect(text).toContain('Adobe');
  expect(text).not.toContain('Open Font License');
});

test('its tables lie where it says, one after the other, and are sorted by their tags', () => {
  const subset = subsetFont(pageFonts.semibold, CHARACTERS);
  const tables = [...tablesOf(dataOf(subset))];
  // OpenType specification 1.9, table directory: records in ascending order, tables on multiples of four bytes.
  expect(tables.map(([tag]) => tag)).toEqual(tables.map(([tag]) => tag).sort());
  let end = 12 + 16 * tables.length;
  for (const [, { offset, length }] of tables) {
    expect(offset).toBe(end);
    end = offset + 4 * Math.ceil(length / 4);
  }
  expect(end).toBe(subset.length);
});
