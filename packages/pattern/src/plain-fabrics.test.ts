import { expect, it } from 'vitest';
import { PLAIN_FABRICS } from './plain-fabrics.ts';

/** CIE lightness L* of an sRGB colour, from 0 (black) to 100 (white): IEC 61966-2-1 and CIE 15. */
function lightness(colour: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  const luminance = 0.2126 * r + 0.7152 * g + 0.0722 * b;
  return luminance <= 216 / 24389 ? (luminance * 24389) / 27 : 116 * Math.cbrt(luminance) - 16;
}

it('plain fabrics are told apart in greys', () => {
  expect(lightness('#ffffff')).toBeCloseTo(100, 6);
  expect(lightness('#777777')).toBeCloseTo(50.03, 1);
  const greys = PLAIN_FABRICS.map(({ colour }) => lightness(colour)).sort((a, b) => a - b);
  for (let i = 1; i < greys.length; i++) expect(greys[i]! - greys[i - 1]!).toBeGreaterThan(8);
});
