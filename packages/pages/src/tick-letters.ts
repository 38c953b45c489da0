import {
  add,
  type Box,
  distanceToSegment,
  edgesOf,
  normalize,
  type Point,
  type Segment,
  scale,
  subtract,
} from '@seamwright/geometry';
import { placeWord } from './edge-words.ts';
import { QUIET, textMark } from './marks.ts';
import { textCorners, textWidth } from './metrics.ts';
import type { TextMark } from './model.ts';

/** A match mark on the sheet that is there for some of the foundation's sections only, and the words that say so. */
export interface LetteredTick extends Segment<'page'> {
  readonly words: string;
}

/** What is on the sheet where words are to be placed along the outline. Points. */
export interface Surroundings {
  /** Of the finished outline, walked clockwise on the screen. */
  readonly outline: readonly Segment<'page'>[];
  /** What words in the allowance keep clear of. */
  readonly outside: readonly Segment<'page'>[];
  /** What words inside the outline keep clear of. */
  readonly inside: readonly Segment<'page'>[];
  /** Whether the allowance is wide enough for words. */
  readonly bandTakesWord: boolean;
  readonly room: Box<'page'>;
}

/** Points: sizes that are tried, and between the tick and the letters, and the outline and the letters. */
const SIZES: readonly number[] = [7, 6, 5.5];
const GAP = 2.5;

/** More letters than these would run along half the edge; the rest is `…`. */
const MOST_LETTERS = 8;

/**
 * What stands beside a mark that is for `some` of the sections `all`: their letters, or `not` and the others' where
 * those are fewer; null where it is for all.
 */
export function tickWords(some: readonly string[], all: readonly string[]): string | null {
  const others = all.filter((letter) => !some.includes(letter));
  if (others.length === 0) return null;
  const inShort = (letters: readonly string[]) =>
    letters.length <= MOST_LETTERS ? letters.join(' ') : `${letters.slice(0, MOST_LETTERS).join(' ')} …`;
  return others.length < some.length ? `not ${inShort(others)}` : inShort(some);
}

/**
 * The letters beside their ticks: in the allowance on either side, where that is too crowded or too narrow inside the
 * outline, and where both are, over what is there. Where the room ends before the letters would, there are none.
 */
export function tickLetters(
  section: string,
  ticks: readonly LetteredTick[],
  around: Surroundings,
): readonly TextMark[] {
  const placed: TextMark[] = [];
  for (const tick of ticks) {
    const own = placed.flatMap((text) => edgesOf(textCorners(text)));
    const text = lettersBeside(section, tick, around, own);
    if (text) placed.push(text);
  }
  return placed;
}

function lettersBeside(
  section: string,
  { words, ...tick }: LetteredTick,
  { outline, outside, inside, bandTakesWord, room }: Surroundings,
  placed: readonly Segment<'page'>[],
): TextMark | null {
  const place = (side: 'outside' | 'inside', obstacles: readonly Segment<'page'>[]): TextMark | null => {
    for (const size of SIZES)
      for (const stretch of stretchesBeside(tick, outline, textWidth(words, size, 'regular') + 2 * GAP)) {
        const found = placeWord({ word: words, size, gap: GAP, room, edges: [stretch], side, obstacles });
        if (found) return textMark('label', section, words, found.at, { ...found.look, ink: QUIET });
      }
    return null;
  };
  return (
    (bandTakesWord ? place('outside', [...outside, ...placed]) : null) ??
    place('inside', [...inside, ...placed]) ??
    place(bandTakesWord ? 'outside' : 'inside', []) ??
    place('inside', [])
  );
}

/** The parts of the tick's edge beside it, `size` points long: they may run past the edge's end. */
function stretchesBeside(
  { a: foot }: Segment<'page'>,
  outline: readonly Segment<'page'>[],
  size: number,
): readonly Segment<'page'>[] {
  const edge = edgeBeside(foot, outline);
  const onward = scale<'page'>(normalize(subtract(edge.b, edge.a)), size);
  return [
    { a: foot, b: add(foot, onward) },
    { a: subtract(foot, onward), b: foot },
  ];
}

/** The edge that a point lies on, or nearest to. */
export function edgeBeside(foot: Point<'page'>, outline: readonly Segment<'page'>[]): Segment<'page'> {
  const away = ({ a, b }: Segment<'page'>) => distanceToSegment<'page'>(foot, a, b);
  return outline.reduce((nearest, other) => (away(other) < away(nearest) ? other : nearest));
}
