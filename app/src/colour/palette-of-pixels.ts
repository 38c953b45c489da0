import { differenceEuclidean, type Oklab } from 'culori/fn';
import { hexOf, lightnessOf, oklabOf } from './lightness.ts';

/** Rounds after which colours hardly move any more. */
const ROUNDS = 12;

/** Bits of red, green and blue that are looked at: colours that differ by less are one. */
const BITS = 5;

/** A colour of a picture, and how many of its pixels have it. */
interface Counted {
  readonly lab: Oklab;
  readonly count: number;
}

const distance = differenceEuclidean('oklab');

/**
 * The colours that say most of a picture, lightest first: Lloyd's k-means (1982) in OKLab, where distances are as the eye
 * sees them. It begins with the commonest colour and then the ones farthest from all before (Gonzalez, 1985), so the same
 * picture always gives the same colours, and a small bright thing is not lost in a large dull one.
 *
 * @param pixels red, green, blue, opacity of each, 0 to 255; those that show through are left out
 * @returns `#rrggbb`; fewer than `count` where the picture has fewer
 */
export function paletteOfPixels(pixels: Uint8ClampedArray, count: number): readonly string[] {
  const colours = countedColours(pixels);
  let centres = firstCentres(colours, count);
  for (let round = 0; round < ROUNDS; round += 1) {
    const groups: Counted[][] = centres.map(() => []);
    for (const colour of colours) groups[nearest(centres, colour.lab)]!.push(colour);
    centres = groups.map((group, i) => (group.length === 0 ? centres[i]! : mean(group)));
  }
  return [...new Set(centres.map(hexOf))].sort((a, b) => lightnessOf(b) - lightnessOf(a));
}

function countedColours(pixels: Uint8ClampedArray): readonly Counted[] {
  const shift = 8 - BITS;
  const found = new Map<number, { r: number; g: number; b: number; count: number }>();
  for (let i = 0; i + 3 < pixels.length; i += 4) {
    const [r, g, b, opacity] = [pixels[i]!, pixels[i + 1]!, pixels[i + 2]!, pixels[i + 3]!];
    if (opacity < 128) continue;
    const key = ((r >> shift) << (2 * BITS)) | ((g >> shift) << BITS) | (b >> shift);
    const one = found.get(key) ?? { r: 0, g: 0, b: 0, count: 0 };
    found.set(key, { r: one.r + r, g: one.g + g, b: one.b + b, count: one.count + 1 });
  }
  const hex = (sum: number, n: number) =>
    Math.round(sum / n)
      .toString(16)
      .padStart(2, '0');
  return [...found.values()].map(({ r, g, b, count }) => ({
    lab: oklabOf(`#${hex(r, count)}${hex(g, count)}${hex(b, count)}`),
    count,
  }));
}

function firstCentres(colours: readonly Counted[], count: number): readonly Oklab[] {
  const left = [...colours].sort((a, b) => b.count - a.count);
  const centres = left.slice(0, 1).map(({ lab }) => lab);
  while (centres.length < Math.min(count, left.length)) {
    const apart = ({ lab }: Counted) => Math.min(...centres.map((centre) => distance(centre, lab)));
    centres.push(left.reduce((best, one) => (apart(one) > apart(best) ? one : best)).lab);
  }
  return centres;
}

function nearest(centres: readonly Oklab[], lab: Oklab): number {
  const far = centres.map((centre) => distance(centre, lab));
  return far.indexOf(Math.min(...far));
}

function mean(group: readonly Counted[]): Oklab {
  const total = group.reduce((sum, { count }) => sum + count, 0);
  const of = (part: 'l' | 'a' | 'b') =>
    group.reduce((sum, one) => sum + one.lab[part] * one.count, 0) / total;
  return { mode: 'oklab', l: of('l'), a: of('a'), b: of('b') };
}
