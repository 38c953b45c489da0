import { useMode as enable, formatHex, modeLrgb, modeOklab, modeRgb, type Oklab } from 'culori/fn';

enable(modeRgb);
enable(modeLrgb);
const toOklab = enable(modeOklab);

/** A colour by how light it looks and what hue it leans to: OKLab (Ottosson, 2020; CSS Color 4, 9.2). */
export function oklabOf(colour: string): Oklab {
  const found = toOklab(colour);
  if (found === undefined) throw new RangeError(`“${colour}” is no colour`);
  return found;
}

/** How light a colour looks: 0 is black, 1 white. */
export const lightnessOf = (colour: string): number => oklabOf(colour).l;

/** The grey that looks as light as a colour, `#rrggbb`. */
export const greyOf = (colour: string): string => hexOf({ l: lightnessOf(colour), a: 0, b: 0 });

/** As it is kept: `#rrggbb`; what no screen shows becomes the nearest by each of red, green and blue. */
export const hexOf = (lab: Omit<Oklab, 'mode'>): string => formatHex({ mode: 'oklab', ...lab });
