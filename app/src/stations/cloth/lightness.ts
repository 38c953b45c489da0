/**
 * How light a colour looks, from 0, black, to 1, white: L* of CIELAB ÷ 100 (CIE 15; the colour is sRGB, IEC 61966-2-1).
 *
 * @param colour `#rrggbb`
 */
export function lightness(colour: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => linear(Number.parseInt(colour.slice(at, at + 2), 16) / 255)) as [
    number,
    number,
    number,
  ];
  const luminance = 0.2126 * r + 0.7152 * g + 0.0722 * b;
  return (luminance > (6 / 29) ** 3 ? 116 * Math.cbrt(luminance) - 16 : luminance * (29 / 3) ** 3) / 100;
}

const linear = (value: number): number =>
  value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
