import type { Ink, Mark } from '../marks/model.ts';

/**
 * The darkest that anything is printed on a sheet that is sewn in, washed away or looked through: half of black. Toner and ink rub
 * off on fabric and show through pale prints, so there is to be as little as can still be seen.
 */
const DARKEST_LINE = 0.55;
const DARKEST_TEXT = 0.65;

/** No paler: 30 % breaks up on a home printer, letters under a half cannot be read in a poor light. */
const PALEST_LINE = 0.3;
const PALEST_TEXT = 0.5;

/** The mark in light ink: what was darker stays darker; lines keep their widths, by which they are told apart, words are set thinner. */
export function inLightInk(mark: Mark): Mark {
  if (mark.kind === 'text')
    return { ...mark, weight: 'regular', ink: between(mark.ink, PALEST_TEXT, DARKEST_TEXT) };
  const { stroke, fill } = mark;
  return {
    ...mark,
    ...(stroke && { stroke: { ...stroke, ink: between(stroke.ink, PALEST_LINE, DARKEST_LINE) } }),
    ...(fill !== undefined && { fill: between(fill, PALEST_LINE, DARKEST_LINE) }),
  };
}

/** From palest to darkest as `ink` goes from the palest grey there is to black. */
const between = (ink: Ink, palest: Ink, darkest: Ink): Ink =>
  palest + (Math.max(ink - PALEST_LINE, 0) / (1 - PALEST_LINE)) * (darkest - palest);
