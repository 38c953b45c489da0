import { oklabOf } from './lightness.ts';

/** Below it a colour looks grey rather than of a hue (from memory of how such colours look). */
const GREY = 0.03;

/** Degrees of OKLab's hue at which each ends, round the circle from pink (read off sRGB's own colours). */
const HUES: readonly (readonly [upTo: number, word: string])[] = [
  [15, 'pink'],
  [40, 'red'],
  [75, 'orange'],
  [115, 'yellow'],
  [165, 'green'],
  [215, 'teal'],
  [275, 'blue'],
  [325, 'violet'],
  [360, 'pink'],
];

const LIGHTNESSES: readonly (readonly [upTo: number, word: string])[] = [
  [0.35, 'Deep'],
  [0.5, 'Dark'],
  [0.68, 'Middle'],
  [0.85, 'Light'],
  [Infinity, 'Pale'],
];

/** A name for each of some colours, no two the same: `Dark blue`, `Pale grey`, `Pale grey 2`. */
export function wordsForColours(colours: readonly string[]): readonly string[] {
  const used = new Map<string, number>();
  return colours.map((colour) => {
    const { l, a, b } = oklabOf(colour);
    const hue = ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360;
    const tone = Math.hypot(a, b) < GREY ? 'grey' : HUES.find(([upTo]) => hue <= upTo)![1];
    const words = `${LIGHTNESSES.find(([upTo]) => l <= upTo)![1]} ${tone}`;
    const count = (used.get(words) ?? 0) + 1;
    used.set(words, count);
    return count === 1 ? words : `${words} ${count}`;
  });
}
