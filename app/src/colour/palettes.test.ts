import { describe, expect, test } from 'vitest';
import { lightnessOf } from './lightness.ts';
import { matchedByLightness } from './match-palette.ts';
import { paletteOfPixels } from './palette-of-pixels.ts';
import { PALETTES } from './palettes.ts';

describe('a palette for fabrics', () => {
  const greys = ['#333333', '#eeeeee', '#888888'];

  test('fabrics keep their order of lightness, from end to end of the palette', () => {
    for (const { colours } of PALETTES) {
      const light = matchedByLightness(greys, colours).map(({ colour }) => lightnessOf(colour));
      const all = colours.map(({ colour }) => lightnessOf(colour));
      expect(light[0]).toBe(Math.min(...all));
      expect(light[1]).toBe(Math.max(...all));
      expect(light[2]).toBeGreaterThan(light[0]!);
      expect(light[2]).toBeLessThan(light[1]!);
    }
  });

  test('more fabrics than colours are mixed, no two alike; one fabric takes the lightest', () => {
    const many = Array.from({ length: 9 }, (_, i) => `#${`${i}${i}`.repeat(3)}`);
    const matched = matchedByLightness(many, PALETTES[1]!.colours);
    expect(new Set(matched.map(({ colour }) => colour)).size).toBe(9);
    expect(matchedByLightness(['#777777'], PALETTES[0]!.colours)[0]!.name).toBe('Whitewash');
    expect(matchedByLightness([], PALETTES[0]!.colours)).toEqual([]);
  });
});

/** A picture of stripes: colour and number of pixels of each. */
const stripes = (...parts: readonly (readonly [number, number, number, number])[]) =>
  new Uint8ClampedArray(
    parts.flatMap(([r, g, b, n]) => Array.from({ length: n }, () => [r, g, b, 255]).flat()),
  );

describe('a palette from a picture', () => {
  test('a picture of few colours gives just those, lightest first', () => {
    const pixels = stripes([20, 40, 80, 500], [240, 230, 210, 300], [200, 60, 40, 4]);
    expect(paletteOfPixels(pixels, 6)).toEqual(['#f0e6d2', '#c83c28', '#142850']);
  });

  test('shades of one thing become one colour, and a small bright thing is not lost', () => {
    const shades = Array.from({ length: 40 }, (_, i) => [90 + i, 110 + i, 130 + i, 50] as const);
    const found = paletteOfPixels(stripes(...shades, [250, 200, 20, 30]), 2);
    expect(found).toHaveLength(2);
    expect(found[0]).toBe('#fac814');
    // The mean shade is (109.5, 129.5, 149.5).
    const [r, g, b] = [1, 3, 5].map((at) => Number.parseInt(found[1]!.slice(at, at + 2), 16));
    for (const [part, wanted] of [
      [r, 109.5],
      [g, 129.5],
      [b, 149.5],
    ] as const)
      expect(Math.abs(part! - wanted)).toBeLessThan(4);
  });

  test('what shows through has no colour', () => {
    expect(paletteOfPixels(new Uint8ClampedArray([255, 0, 0, 0, 0, 0, 255, 255]), 3)).toEqual(['#0000ff']);
    expect(paletteOfPixels(new Uint8ClampedArray(400), 3)).toEqual([]);
  });
});
