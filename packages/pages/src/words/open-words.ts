import { distance, edgesOf, pointAt, type Segment } from '@seamwright/geometry';
import type { OpenStretch } from '../foundation/open-stretches.ts';
import { textMark } from '../marks/marks.ts';
import { textCorners, textWidth } from '../marks/metrics.ts';
import type { TextMark } from '../marks/model.ts';
import { placeWord } from './edge-words.ts';
import { edgeBeside, type Surroundings } from './match-words.ts';

/** Points: sizes that are tried, and between the outline and the words. */
const SIZES: readonly number[] = [7, 6, 5.5];
const GAP = 2.5;

/** More letters of a unit than these would not fit along an edge; what is between the first and the last is `…`. */
const MOST_LETTERS = 8;

/** A unit's name, or its first letters and the last where it is long. */
export const shortUnit = (unit: string): string =>
  unit.length <= MOST_LETTERS ? unit : `${unit.slice(0, MOST_LETTERS - 3)}…${unit.slice(-1)}`;

/**
 * `open until E is on` along each stretch that a partial seam leaves open: in the allowance where there is room, else inside the
 * outline, else `open` alone; where even that is too long, it runs past the end of the stretch, over what is there. Where the
 * room ends before the word would, there is none.
 */
export function openWords(
  section: string,
  stretches: readonly OpenStretch<'page'>[],
  around: Surroundings,
): readonly TextMark[] {
  const placed: TextMark[] = [];
  for (const stretch of stretches) {
    const own = placed.flatMap((text) => edgesOf(textCorners(text)));
    const text = wordsAlong(section, stretch, around, own);
    if (text) placed.push(text);
  }
  return placed;
}

function wordsAlong(
  section: string,
  { until, ...stretch }: OpenStretch<'page'>,
  { outline, outside, inside, bandTakesWord, room }: Surroundings,
  placed: readonly Segment<'page'>[],
): TextMark | null {
  const edges = [walked(stretch, outline)];
  const sides = [
    ...(bandTakesWord ? [{ side: 'outside', obstacles: [...outside, ...placed] } as const] : []),
    { side: 'inside', obstacles: [...inside, ...placed] } as const,
  ];
  for (const word of [`open until ${shortUnit(until)} is on`, 'open'])
    for (const { side, obstacles } of sides)
      for (const size of SIZES) {
        const found = placeWord({ word, size, gap: GAP, room, edges, side, obstacles });
        if (found) return textMark('label', section, word, found.at, found.look);
      }
  const longer = [
    walked(lengthened(stretch, textWidth('open', SIZES.at(-1)!, 'regular') + 2 * GAP), outline),
  ];
  for (const { side } of sides) {
    const word = { word: 'open', size: SIZES.at(-1)!, gap: GAP, room, edges: longer, side, obstacles: [] };
    const found = placeWord(word);
    if (found) return textMark('label', section, 'open', found.at, found.look);
  }
  return null;
}

/** The stretch from its first point on, at least so long. */
function lengthened({ a, b }: Segment<'page'>, length: number): Segment<'page'> {
  const times = Math.max(1, length / distance(a, b));
  return { a, b: pointAt(a, b, times) };
}

/** The stretch as the outline is walked there. */
function walked({ a, b }: Segment<'page'>, outline: readonly Segment<'page'>[]): Segment<'page'> {
  const edge = edgeBeside(a, outline);
  const onward = (b.x - a.x) * (edge.b.x - edge.a.x) + (b.y - a.y) * (edge.b.y - edge.a.y) > 0;
  return onward ? { a, b } : { a: b, b: a };
}
