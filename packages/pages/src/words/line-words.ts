import {
  type Box,
  distanceToSegment,
  edgesOf,
  type LengthUnit,
  midpoint,
  POINTS_PER_INCH,
  type Point,
  type Segment,
  STRAIGHT_WITHIN,
} from '@seamwright/geometry';
import type { Foundation } from '../foundation/foundation.ts';
import type { DrawnFoundation } from '../foundation/foundation-marks.ts';
import { textMark } from '../marks/marks.ts';
import { CAP_HEIGHT, textCorners } from '../marks/metrics.ts';
import type { TextMark } from '../marks/model.ts';
import { type EdgeWord, placeWord } from './edge-words.ts';
import { wordsBesideMarks } from './match-words.ts';
import { openWords } from './open-words.ts';
import { seamLengths } from './seam-lengths.ts';

/** Sizes that are tried for the words beside the outline and the cutting line, points. */
const WORD_SIZES: readonly number[] = [7, 6, 5.5];
const WORD_GAP = 2.5;

/** Points: nearer, the number of a match mark and the words that go on from it would be read as one. */
const NUMBER_APART = 6;

/**
 * What is tried beside the two lines, the plainest first: paper trimmed on the sew line cannot be mended, so each line says what
 * is done on it, and where there is room what is not.
 */
const SEW_WORDS = ['sew, do not cut', 'sew'];
const CUT_WORDS = ['cut here', 'cut'];

/** What stands there instead where the paper has no allowance. */
const BARE_WORDS = ['add seam allowance', 'add allowance'];

/**
 * Words along what is left open; numbers beside the match points; along the finished outline, in the allowance (inside the
 * outline where the allowance is too narrow) but at no edge that is left open, that it is sewn, and outside the cutting line
 * that it is cut: nobody can take one line for the other; the lengths of seam lines if wanted. Words for which there is no place
 * clear of what is printed are left out.
 *
 * @param drawn its lines are those that show in `room`
 * @param room where the words may stand
 * @param lengthsIn the unit of the seam lines' lengths; null where none are wanted
 * @param seams the lines whose lengths are given: whole ones, be it that only a part of them shows
 */
export function wordMarks(
  { key, allowance }: Foundation,
  drawn: Pick<DrawnFoundation, 'lines' | 'matches' | 'openStretches' | 'labels'>,
  room: Box<'page'>,
  lengthsIn: LengthUnit | null = null,
  seams: readonly Segment<'page'>[] = [...drawn.lines.sewLines, ...drawn.lines.outline],
): readonly TextMark[] {
  const { matches, openStretches, labels } = drawn;
  const { outline, cuttingLine, crossings, sewLines } = drawn.lines;
  const bandTakesWord = allowance * POINTS_PER_INCH >= WORD_SIZES[0]! * CAP_HEIGHT + 2 * WORD_GAP;
  const outside = [...cuttingLine, ...outline, ...crossings, ...labels];
  const inside = [...sewLines, ...outside];
  const placed: TextMark[] = [];
  const around = { outline, outside, inside, bandTakesWord, room };
  /** What is placed is in the way of what comes after. */
  const put = (texts: readonly TextMark[], apart = 0) => {
    placed.push(...texts);
    const boxes = texts.flatMap((text) => edgesOf(textCorners(text, apart)));
    outside.push(...boxes);
    inside.push(...boxes);
  };
  put(openWords(key, openStretches, around));
  put(wordsBesideMarks(key, matches, around), NUMBER_APART);

  const place = (
    words: readonly string[],
    { edges, side, obstacles }: Pick<EdgeWord, 'edges' | 'side' | 'obstacles'>,
  ) => {
    for (const word of words)
      for (const size of WORD_SIZES) {
        const found = placeWord({ word, size, edges, side, gap: WORD_GAP, obstacles, room });
        if (!found) continue;
        put([textMark('label', key, word, found.at, found.look)]);
        return true;
      }
    return false;
  };
  const sewn = outline.filter(
    (edge) => !openStretches.some((stretch) => liesOn(midpoint(stretch.a, stretch.b), edge)),
  );
  const sewOutside = { edges: sewn, side: 'outside', obstacles: outside } as const;
  const sewInside = { edges: sewn, side: 'inside', obstacles: inside } as const;
  if (!(bandTakesWord && place(SEW_WORDS, sewOutside))) place(SEW_WORDS, sewInside);
  place(allowance > 0 ? CUT_WORDS : BARE_WORDS, {
    edges: cuttingLine,
    side: 'outside',
    obstacles: outside,
  });
  if (lengthsIn !== null) put(seamLengths(key, seams, lengthsIn, inside, room));
  return placed;
}

const liesOn = (p: Point<'page'>, { a, b }: Segment<'page'>): boolean =>
  distanceToSegment(p, a, b) <= STRAIGHT_WITHIN * POINTS_PER_INCH;
