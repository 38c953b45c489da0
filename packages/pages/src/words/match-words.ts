import {
  add,
  type Box,
  distanceToSegment,
  dot,
  edgesOf,
  midpoint,
  normalize,
  type Point,
  type Segment,
  scale,
  subtract,
} from '@seamwright/geometry';
import type { MatchMark } from '../foundation/shared-marks.ts';
import { textMark } from '../marks/marks.ts';
import { textCorners, textWidth } from '../marks/metrics.ts';
import type { TextMark } from '../marks/model.ts';
import { placeWord } from './edge-words.ts';

/** A match point on the sheet, and what stands beside it. */
export interface NamedMark extends Segment<'page'> {
  readonly words: string;
  /** A corner's words stand along this edge; those of a tick along the edge that it crosses, on either side. */
  readonly corner: boolean;
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

/** Points by which words may stand farther from their mark where seams take the nearest places: past a run at 45°. */
const FARTHER = 10;

/**
 * What stands beside each match point of a foundation for the sections `all`: its number in the block. On a print that is for
 * several sections, where it has not the same number for all, a name that only this foundation has, `i`, `ii`.
 */
export function matchWords(marks: readonly MatchMark<'print'>[], all: readonly string[]): readonly string[] {
  let named = 0;
  return marks.map((mark) => (isAlike(mark, all) ? `${mark.numbers[0]}` : roman(++named)));
}

/**
 * `match numbers on A: i = 1, ii = 2; on B: i = 4, no ii`, for those match points that have a name of the foundation's own; null
 * where none has. By section: one is on the table at a time.
 */
export function matchLegend(marks: readonly MatchMark<'print'>[], all: readonly string[]): string | null {
  const words = matchWords(marks, all);
  const named = marks.flatMap((mark, i) => (isAlike(mark, all) ? [] : [{ ...mark, name: words[i]! }]));
  if (named.length === 0) return null;
  const said = all.map((letter) => {
    const numberOf = (mark: MatchMark<'print'>) => mark.numbers[mark.letters.indexOf(letter)];
    const there = named.filter((mark) => numberOf(mark) !== undefined);
    const missing = named.filter((mark) => numberOf(mark) === undefined).map(({ name }) => name);
    const numbers = there.map((mark) => `${mark.name} = ${numberOf(mark)}`);
    return `on ${letter}: ${[...numbers, ...(missing.length === 0 ? [] : [`no ${orListed(missing)}`])].join(', ')}`;
  });
  return `match numbers ${said.join('; ')}`;
}

/** `i`, `i or ii`, `i, ii or iii` */
const orListed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;

const isAlike = ({ letters, numbers }: MatchMark<'print'>, all: readonly string[]): boolean =>
  letters.length === all.length && numbers.every((number) => number === numbers[0]);

const ROMAN: readonly (readonly [number, string])[] = [
  [100, 'c'],
  [90, 'xc'],
  [50, 'l'],
  [40, 'xl'],
  [10, 'x'],
  [9, 'ix'],
  [5, 'v'],
  [4, 'iv'],
  [1, 'i'],
];

/** Not to be taken for the number of a match point, a patch or a fabric. */
function roman(number: number): string {
  let [rest, text] = [number, ''];
  for (const [value, sign] of ROMAN)
    while (rest >= value) {
      text += sign;
      rest -= value;
    }
  return text;
}

/**
 * The words beside their marks: in the allowance on either side, where that is too crowded or too narrow inside the outline. Where
 * neither has room there are none: figures over figures tell nothing.
 */
export function wordsBesideMarks(
  section: string,
  marks: readonly NamedMark[],
  around: Surroundings,
): readonly TextMark[] {
  const placed: TextMark[] = [];
  const [outside, inside] = [[...around.outside], [...around.inside]];
  for (const mark of marks) {
    const text = wordsBeside(section, mark, { ...around, outside, inside });
    if (text === null) continue;
    placed.push(text);
    const box = edgesOf(textCorners(text));
    outside.push(...box);
    inside.push(...box);
  }
  return placed;
}

function wordsBeside(
  section: string,
  mark: NamedMark,
  { outline, outside, inside, bandTakesWord, room }: Surroundings,
): TextMark | null {
  const { words } = mark;
  const place = (side: 'outside' | 'inside', obstacles: readonly Segment<'page'>[]): TextMark | null => {
    for (const farther of [0, FARTHER])
      for (const size of SIZES) {
        const length = textWidth(words, size, 'regular') + 2 * GAP + farther;
        for (const stretch of stretchesBeside(mark, outline, length)) {
          const found = placeWord({ word: words, size, gap: GAP, room, edges: [stretch], side, obstacles });
          if (found) return textMark('label', section, words, found.at, found.look);
        }
      }
    return null;
  };
  return (bandTakesWord ? place('outside', outside) : null) ?? place('inside', inside);
}

/** The parts of the mark's edge beside it, `size` points long: they may run past the edge's end. */
function stretchesBeside(
  { a: foot, b: end, corner }: NamedMark,
  outline: readonly Segment<'page'>[],
  size: number,
): readonly Segment<'page'>[] {
  const edge = edgeBeside(corner ? midpoint(foot, end) : foot, outline);
  const onward = scale<'page'>(normalize(subtract(edge.b, edge.a)), size);
  const after = { a: foot, b: add(foot, onward) };
  const before = { a: subtract(foot, onward), b: foot };
  if (!corner) return [after, before];
  return [dot(subtract(end, foot), onward) > 0 ? after : before];
}

/** The edge that a point lies on, or nearest to. */
export function edgeBeside(foot: Point<'page'>, outline: readonly Segment<'page'>[]): Segment<'page'> {
  const away = ({ a, b }: Segment<'page'>) => distanceToSegment<'page'>(foot, a, b);
  return outline.reduce((nearest, other) => (away(other) < away(nearest) ? other : nearest));
}
