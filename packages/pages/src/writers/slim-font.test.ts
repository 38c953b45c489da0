import { expect, test } from 'vitest';
import { pageFonts } from '../../test/fonts.ts';
import { slimFont } from './slim-font.ts';
import { dataOf, readTypeface, tablesOf } from './truetype.ts';

const WEIGHTS = ['regular', 'semibold'] as const;

test.each(WEIGHTS)('a slim font has the same characters, as wide: %s', (weight) => {
  const [whole, slim] = [readTypeface(pageFonts[weight]), readTypeface(slimFont(pageFonts[weight]))];
  const units = Array.from({ length: 0xffff }, (_, unit) => unit);
  const unlike = units.filter(
    (unit) => slim.has(unit) !== whole.has(unit) || slim.advance(unit) !== whole.advance(unit),
  );
  expect(unlike).toEqual([]);
  expect(units.filter((unit) => slim.has(unit)).length).toBeGreaterThan(1000);
});

test.each(WEIGHTS)('its outlines are the same, and it has no names of glyphs: %s', (weight) => {
  const [whole, slim] = [pageFonts[weight], slimFont(pageFonts[weight])];
  const tableOf = (bytes: Uint8Array, tag: string) => {
    const { offset, length } = tablesOf(dataOf(bytes)).get(tag)!;
    return bytes.subarray(offset, offset + length);
  };
  for (const tag of ['glyf', 'loca', 'hmtx', 'head', 'hhea', 'maxp'])
    expect(Buffer.compare(tableOf(slim, tag), tableOf(whole, tag))).toBe(0);
  const post = tableOf(slim, 'post');
  // OpenType specification 1.9, post: format 3 is the header of 32 bytes alone.
  expect([post.length, dataOf(post).getUint32(0)]).toEqual([32, 0x00030000]);
  expect(slim.length).toBeLessThan(whole.length / 1.5);
});

test('its names are the copyright notice and the PostScript name', () => {
  const slim = slimFont(pageFonts.regular);
  const { offset, length } = tablesOf(dataOf(slim)).get('name')!;
  const text = new TextDecoder('utf-16be').decode(slim.subarray(offset, offset + length));
  expect(text).toContain('SourceSans3-Regular');
  // As the package's LICENSE.md has it.
  expect(text).toContain('Adobe');
  expect(text).not.toContain('Open Font License');
});
