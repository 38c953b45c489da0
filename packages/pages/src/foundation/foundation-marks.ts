import {
  type Box,
  boundingBox,
  compose,
  edgesOf,
  POINTS_PER_INCH,
  type Polygon,
  rotation,
  type Segment,
  scaling,
  type Transform,
  transformPoint,
  transformPolygon,
  transformSegment,
  translation,
} from '@seamwright/geometry';
import { numberText, type PatchToLabel } from '../labels/patch-labels.ts';
import { pieceLabels } from '../labels/piece-labels.ts';
import { cornersOf } from '../labels/plate.ts';
import { polygonMark, STROKES, segmentMark } from '../marks/marks.ts';
import type { Mark } from '../marks/model.ts';
import { matchWords, type NamedMark } from '../words/match-words.ts';
import type { Foundation, Piece } from './foundation.ts';
import { grainArrow } from './grain-arrows.ts';
import type { OpenStretch } from './open-stretches.ts';

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
  /** Its marks: of four ways to lie one is printed, so they are made when they are asked for. */
  draw(): readonly Mark[];
  /** What the words have to keep clear of. */
  readonly lines: SheetLines;
  /** The match points and what stands beside them. */
  readonly matches: readonly NamedMark[];
  /** Where partial seams are left open. */
  readonly openStretches: readonly OpenStretch<'page'>[];
  /** The sides of the piece labels, and their leaders. */
  readonly labels: readonly Segment<'page'>[];
  /** What found no room in its patch, for the caption. */
  readonly notes: readonly string[];
  /** All that is drawn. */
  readonly extent: Box<'page'>;
}

/**
 * @param spare how far beyond the foundation, all round, labels may stand that find no place over it; points
 * @param barriers where the foundation is cut into sheets: upright and level lines that no label crosses
 */
export function foundationMarks(
  foundation: Foundation,
  turn: Turn,
  spare = 0,
  barriers: readonly Segment<'page'>[] = [],
): DrawnFoundation {
  const { key, letters } = foundation;
  const toSheet = sheetTransform(foundation, turn);
  const segments = (list: readonly Segment<'print'>[]) => list.map((s) => transformSegment(toSheet, s));
  const outline = transformPolygon(toSheet, foundation.outline);
  const cuttingLine = transformPolygon(toSheet, foundation.cuttingLine);
  const sewLines = segments(foundation.sewLines);
  const runOns = segments(foundation.runOns);
  const ticks = segments(foundation.matchMarks.ticks);
  const corners = segments(foundation.matchMarks.corners);
  const stopMarks = segments(foundation.stopMarks);
  const crossings = [...runOns, ...ticks, ...stopMarks];
  const patches = foundation.pieces.map((piece) => patchOnSheet(piece, toSheet));
  const room = roomOf(sizeOnSheet(foundation, turn));
  const around = { patches, outline, cuttingLine, sewLines, crossings, barriers, room, spare };
  const pieces = pieceLabels(key, around);
  const lines = [...sewLines, ...edgesOf(outline), ...pieces.leaders, ...barriers];
  const arrows = foundation.pieces.map(({ upright }, i) => {
    const [patch, label] = [patches[i]!, pieces.plates[i]!];
    return upright ? grainArrow(key, patch, DEGREES[turn], label, pieces.plates, lines) : null;
  });
  const unaimed = patches.filter((_, i) => foundation.pieces[i]!.upright && arrows[i] === null);
  const words = matchWords([...foundation.matchMarks.ticks, ...foundation.matchMarks.corners], letters);
  const draw = () => [
    polygonMark('cutting-line', key, cuttingLine, STROKES.cuttingLine),
    ...runOns.map((s) => segmentMark('run-on', key, s, STROKES.runOn)),
    ...sewLines.map((s) => segmentMark('sew-line', key, s, STROKES.sewLine)),
    polygonMark('finished-outline', key, outline, STROKES.finishedOutline),
    ...[...ticks, ...stopMarks].map((s) => segmentMark('match-mark', key, s, STROKES.matchMark)),
    ...arrows.filter((arrow) => arrow !== null),
    ...pieces.draw(),
  ];
  const sides = pieces.plates.flatMap((plate) => edgesOf(cornersOf(plate)));
  return {
    draw,
    lines: { outline: edgesOf(outline), cuttingLine: edgesOf(cuttingLine), crossings, sewLines },
    matches: [...ticks, ...corners].map((mark, i) => ({
      ...mark,
      words: words[i]!,
      corner: i >= ticks.length,
    })),
    openStretches: foundation.openStretches.map((s) => ({ ...s, ...transformSegment(toSheet, s) })),
    labels: [
      ...sides,
      ...pieces.leaders,
      ...arrows.flatMap((arrow) => (arrow === null ? [] : edgesOf(arrow.points))),
    ],
    notes: [
      ...lettersBelow(foundation.pieces.filter(({ name }) => pieces.unlettered.includes(name))),
      ...notesBelow(foundation.pieces.filter(({ name }) => pieces.unnoted.includes(name))),
      ...(unaimed.length === 0
        ? []
        : [`print upright, up to the top of the block: ${unaimed.map(({ name }) => name).join(', ')}`]),
    ],
    extent: boundingBox([...cuttingLine, ...[...sides, ...pieces.leaders].map(({ a }) => a)]),
  };
}

const patchOnSheet = (piece: Piece, toSheet: Transform<'print', 'page'>): PatchToLabel => ({
  name: piece.name,
  polygon: transformPolygon(toSheet, piece.polygon),
  heart: transformPoint(toSheet, piece.at),
  depth: piece.depth * POINTS_PER_INCH,
  fabric: piece.fabric,
  note: piece.note?.words ?? null,
});

/** `A3 · a, A5 · c`; none where there is nothing to say. */
const lettersBelow = (pieces: readonly Piece[]): readonly string[] =>
  pieces.length === 0 ? [] : [pieces.map(numberText).join(', ')];

/** `cut 3 × 4 in: A3, A5; half of 2 × 3 in: A4`, one after the other: a foundation may have many. */
function notesBelow(pieces: readonly Piece[]): readonly string[] {
  const named = new Map<string, string[]>();
  for (const { name, note } of pieces)
    if (note !== null) named.set(note.words, [...(named.get(note.words) ?? []), name]);
  const said = [...named].map(([words, names]) => `${words}: ${names.join(', ')}`);
  return said.length === 0 ? [] : [said.join('; ')];
}

/** The foundation's cutting line as it lies on the sheet, the corner of its upright rectangle at (0, 0). */
export const cuttingLineOnSheet = (foundation: Foundation, turn: Turn): Polygon<'page'> =>
  transformPolygon(sheetTransform(foundation, turn), foundation.cuttingLine);

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

/** The room that a foundation of this size takes on the sheet: its upright rectangle and a strip above it. */
export const roomOf = ({ width, height }: { width: number; height: number }): Box<'page'> => ({
  minX: 0,
  minY: -CUT_WORD_ROOM,
  maxX: width,
  maxY: height,
});
