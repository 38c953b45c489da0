import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pageFonts } from '../../test/fonts.ts';
import { readTypeface } from '../writers/truetype.ts';
import { CAP_HEIGHT, shortened, textWidth, wrapped } from './metrics.ts';

const WEIGHTS = ['regular', 'semibold'] as const;

test('the table of widths is the font’s own', () => {
  for (const weight of WEIGHTS) {
    const face = readTypeface(pageFonts[weight]);
    for (let code = 32; code < 127; code++)
      expect([code, textWidth(String.fromCharCode(code), 1000, weight)]).toEqual([code, face.advance(code)]);
    for (const character of '×·…–')
      expect([character, textWidth(character, 1000, weight)]).toEqual([
        character,
        face.advance(character.charCodeAt(0)),
      ]);
  }
});

/** Latin, Greek and Cyrillic as written today, dashes and quotes, fractions, arrows. */
const RANGES = [
  [0x20, 0x24f],
  [0x370, 0x3ff],
  [0x400, 0x4ff],
  [0x2010, 0x2027],
  [0x2150, 0x2151],
  [0x2153, 0x218f],
  [0x2190, 0x21ff],
] as const;

test('no character of these scripts is wider than it is taken for', () => {
  let checked = 0;
  for (const weight of WEIGHTS) {
    const face = readTypeface(pageFonts[weight]);
    for (const [first, last] of RANGES)
      for (let code = first; code <= last; code++) {
        if (!face.has(code)) continue;
        checked++;
        const missed = face.advance(code) - textWidth(String.fromCharCode(code), 1000, weight);
        expect([code, missed > 0]).toEqual([code, false]);
      }
  }
  expect(checked).toBeGreaterThan(1000);
});

test('capitals are as high as they are taken for', () => {
  // sCapHeight of the font's OS/2 table, version 2 and later, at byte 88 (OpenType specification 1.9).
  const bytes = pageFonts.regular;
  const data = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tables = Array.from({ length: data.getUint16(4) }, (_, i) => 12 + 16 * i);
  const os2 = tables.find((at) => String.fromCharCode(...bytes.subarray(at, at + 4)) === 'OS/2')!;
  expect(data.getInt16(data.getUint32(os2 + 8) + 88) / 1000).toBe(CAP_HEIGHT);
});

const phrase = fc
  .array(fc.string({ minLength: 1, maxLength: 12 }), { maxLength: 12 })
  .map((words) => words.join(' '));

test('shortened texts fit, and are the start of what they were', () => {
  fc.assert(
    fc.property(phrase, fc.double({ min: 12, max: 300, noNaN: true }), (text, width) => {
      const short = shortened(text, 10, 'regular', width);
      if (short === text) expect(textWidth(text, 10, 'regular')).toBeLessThanOrEqual(width);
      else {
        expect(textWidth(short, 10, 'regular')).toBeLessThanOrEqual(width);
        expect(short.endsWith('…')).toBe(true);
        expect(text.startsWith(short.slice(0, -1))).toBe(true);
      }
    }),
    { seed: 1 },
  );
});

test('wrapped texts fit in their lines, and lose nothing but at the end', () => {
  fc.assert(
    fc.property(
      phrase,
      fc.double({ min: 12, max: 300, noNaN: true }),
      fc.integer({ min: 1, max: 4 }),
      (text, width, lines) => {
        const result = wrapped(text, 10, 'semibold', width, lines);
        expect(result.length).toBeGreaterThanOrEqual(1);
        expect(result.length).toBeLessThanOrEqual(lines);
        for (const line of result) expect(textWidth(line, 10, 'semibold')).toBeLessThanOrEqual(width);
        if (result.every((line) => !line.endsWith('…'))) expect(result.join(' ')).toBe(text);
      },
    ),
    { seed: 2 },
  );
});
