import {
  type Box,
  compose,
  distanceToSegment,
  edgesOf,
  midpoint,
  POINTS_PER_INCH,
  type Point,
  rotation,
  type Segment,
  STRAIGHT_WITHIN,
  scaling,
  type Transform,
  transformPoint,
  transformPolygon,
  transformSegment,
  translation,
} from '@seamwright/geometry';
import { type PlacedWord, placeWord } from './edge-words.ts';
import type { Foundation } from './foundation.ts';
import { polygonMark, QUIET, STROKES, segmentMark, textMark } from './marks.ts';
import { CAP_HEIGHT, textCorners, textWidth } from './metrics.ts';
import type { Mark, TextMark } from './model.ts';
import type { OpenStretch } from './open-stretches.ts';
import { openWords } from './open-words.ts';
import { type LetteredTick, tickLetters, tickWords } from './tick-letters.ts';

/** Room above the cutting line for the word `cut`, points. */
export const CUT_WORD_ROOM = 10;

/** How a foundation lies on the sheet: its top faces up; right, turned a quarter clockwise; down; or left. */
export type Turn = 'upright' | 'turned' | 'on its head' | 'turned back';

/** Degrees clockwise as seen on the sheet. */
export const DEGREES: Readonly<Record<Turn, number>> = {
  upright: 0,
  turned: 90,
  'on its head': 180,
  'turned back': 270,
};

/** Width and height of the foundation's cutting line on the sheet, points. */
export function sizeOnSheet({ width, height }: Foundation, turn: Turn): { width: number; height: number } {
  const [across, down] = DEGREES[turn] % 180 === 0 ? [width, height] : [height, width];
  return { width: written(across * POINTS_PER_INCH), height: written(down * POINTS_PER_INCH) };
}

/** As fine as files are written: 8 in that came out as 8.000000000000002 in still fit on a sheet with 8 in room. */
const written = (points: number): number => Math.round(points * 1e4) / 1e4;

/** Largest and smallest piece numbers, points. Under 6 points, figures fill in on rough paper. */
const LARGEST_NUMBER = 14;
const SMALLEST_NUMBER = 6;

/** How much of the free circle round a patch's heart its number may fill. */
const FILL_OF_DEPTH = 0.6;

/** Sizes that are tried for the words `sew` and `cut`, points. */
const WORD_SIZES: readonly number[] = [7, 6, 5.5];
const WORD_GAP = 2.5;

/** A foundation's lines on the sheet, the corner of its cutting line's upright rectangle at (0, 0). */
export interface SheetLines {
  readonly outline: readonly Segment<'page'>[];
  readonly cuttingLine: readonly Segment<'page'>[];
  /** What crosses the allowance, or the whole foundation: runs, ticks, edges of tiles. */
  readonly crossings: readonly Segment<'page'>[];
  readonly sewLines: readonly Segment<'page'>[];
}

/** A foundation on the sheet but for the words beside its lines, and what those need to know. */
export interface DrawnFoundation {
  readonly marks: readonly Mark[];
  /** What the words have to keep clear of. */
  readonly lines: SheetLines;
  /** The match marks that are not for all of the foundation's sections. */
  readonly ticks: readonly LetteredTick[];
  /** Where partial seams are left open. */
  readonly openStretches: readonly OpenStretch<'page'>[];
  /** Boxes round the piece numbers. */
  readonly numbers: readonly Segment<'page'>[];
}

export function foundationMarks(foundation: Foundation, turn: Turn): DrawnFoundation {
  const { key, letters } = foundation;
  const toSheet = sheetTransform(foundation, turn);
  const segments = (list: readonly Segment<'print'>[]) => list.map((s) => transformSegment(toSheet, s));
  const outline = transformPolygon(toSheet, foundation.outline);
  const cuttingLine = transformPolygon(toSheet, foundation.cuttingLine);
  const sewLines = segments(foundation.sewLines);
  const runOns = segments(foundation.runOns);
  const matchMarks = segments(foundation.matchMarks);
  const stopMarks = segments(foundation.stopMarks);
  const numbers = foundation.pieces.map(({ name, at, depth }) =>
    numberMark(key, name, transformPoint(toSheet, at), depth * POINTS_PER_INCH),
  );
  const marks = [
    polygonMark('cutting-line', key, cuttingLine, STROKES.cuttingLine),
    ...runOns.map((s) => segmentMark('run-on', key, s, STROKES.runOn)),
    ...sewLines.map((s) => segmentMark('sew-line', key, s, STROKES.sewLine)),
    polygonMark('finished-outline', key, outline, STROKES.finishedOutline),
    ...[...matchMarks, ...stopMarks].map((s) => segmentMark('match-mark', key, s, STROKES.matchMark)),
    ...numbers,
  ];
  const crossings = [...runOns, ...matchMarks, ...stopMarks];
  const ticks = foundation.matchMarks.flatMap((mark, i): LetteredTick[] => {
    const words = tickWords(mark.letters, letters);
    return words === null ? [] : [{ ...matchMarks[i]!, words }];
  });
  return {
    marks,
    lines: { outline: edgesOf(outline), cuttingLine: edgesOf(cuttingLine), crossings, sewLines },
    ticks,
    openStretches: foundation.openStretches.map((s) => ({ ...s, ...transformSegment(toSheet, s) })),
    numbers: numbers.flatMap((number) => edgesOf(textCorners(number))),
  };
}

/** Turns the foundation, its numbers' places with it, and moves the corner of its rectangle back to (0, 0). */
function sheetTransform({ width, height }: Foundation, turn: Turn): Transform<'print', 'page'> {
  const toPoints = scaling<'print', 'page'>(POINTS_PER_INCH);
  const corners = {
    upright: translation<'print'>(0, 0),
    turned: translation<'print'>(height, 0),
    'on its head': translation<'print'>(width, height),
    'turned back': translation<'print'>(0, width),
  };
  return compose(compose(rotation<'print'>(DEGREES[turn]), corners[turn]), toPoints);
}

function numberMark(key: string, name: string, at: Point<'page'>, depth: number): TextMark {
  const halfDiagonal = Math.hypot(textWidth(name, 1, 'semibold'), CAP_HEIGHT) / 2;
  const fitted = (FILL_OF_DEPTH * depth) / halfDiagonal;
  const size = Math.round(10 * Math.min(LARGEST_NUMBER, Math.max(SMALLEST_NUMBER, fitted))) / 10;
  const base = { x: at.x, y: at.y + (CAP_HEIGHT * size) / 2 };
  return textMark('label', key, name, base, { size, weight: 'semibold', anchor: 'middle' });
}

/**
 * Words along what is left open; letters beside the match marks that are for some sections only; `sew` beside the finished outline, in the allowance
 * (inside the outline where the allowance is too narrow) but at no edge that is left open, and `cut` outside the cutting line: nobody can take one line
 * for the other. A word whose line does not show has no place and is left out.
 *
 * @param drawn its lines are those that show in `room`
 * @param room where the words may stand
 */
export function wordMarks(
  { key, allowance }: Foundation,
  drawn: Omit<DrawnFoundation, 'marks'>,
  room: Box<'page'>,
): readonly Mark[] {
  const { ticks, openStretches, numbers } = drawn;
  const { outline, cuttingLine, crossings, sewLines } = drawn.lines;
  const bandTakesWord = allowance * POINTS_PER_INCH >= WORD_SIZES[0]! * CAP_HEIGHT + 2 * WORD_GAP;
  const outside = [...cuttingLine, ...outline, ...crossings];
  const inside = [...sewLines, ...numbers, ...outside];
  const open = openWords(key, openStretches, { outline, outside, inside, bandTakesWord, room });
  const openBoxes = open.flatMap((text) => edgesOf(textCorners(text)));
  const letters = tickLetters(key, ticks, {
    outline,
    outside: [...outside, ...openBoxes],
    inside: [...inside, ...openBoxes],
    bandTakesWord,
    room,
  });
  const lines = [...outside, ...openBoxes, ...letters.flatMap((text) => edgesOf(textCorners(text)))];
  const place = (
    word: string,
    side: 'outside' | 'inside',
    edges: readonly Segment<'page'>[],
    obstacles: readonly Segment<'page'>[],
  ) => firstPlaced((size) => placeWord({ word, size, gap: WORD_GAP, room, edges, side, obstacles }));
  const sewn = outline.filter(
    (edge) => !openStretches.some((stretch) => liesOn(midpoint(stretch.a, stretch.b), edge)),
  );
  const sew =
    (bandTakesWord ? place('sew', 'outside', sewn, lines) : null) ??
    place('sew', 'inside', sewn, [...sewLines, ...lines]) ??
    place('sew', 'inside', outline, []);
  const cut = place('cut', 'outside', cuttingLine, lines) ?? place('cut', 'outside', cuttingLine, []);
  return [
    ...open,
    ...letters,
    ...(sew ? [textMark('label', key, 'sew', sew.at, { ...sew.look, ink: QUIET })] : []),
    ...(cut ? [textMark('label', key, 'cut', cut.at, { ...cut.look, ink: QUIET })] : []),
  ];
}

const liesOn = (p: Point<'page'>, { a, b }: Segment<'page'>): boolean =>
  distanceToSegment(p, a, b) <= STRAIGHT_WITHIN * POINTS_PER_INCH;

/** The room that a foundation of this size takes on the sheet: its upright rectangle and a strip above it. */
export const roomOf = ({ width, height }: { width: number; height: number }): Box<'page'> => ({
  minX: 0,
  minY: -CUT_WORD_ROOM,
  maxX: width,
  maxY: height,
});

function firstPlaced(place: (size: number) => PlacedWord | null): PlacedWord | null {
  for (const size of WORD_SIZES) {
    const placed = place(size);
    if (placed) return placed;
  }
  return null;
}
