import {
  edgesOf,
  POINTS_PER_INCH,
  type Polygon,
  type Segment,
  type Transform,
  transformPoint,
  transformPolygon,
  transformSegment,
} from '@seamwright/geometry';
import { numberText, type PatchToLabel } from '../labels/patch-labels.ts';
import { type PieceLabels, pieceLabels } from '../labels/piece-labels.ts';
import type { PathMark } from '../marks/model.ts';
import type { Foundation, Piece } from './foundation.ts';
import { grainArrow } from './grain-arrows.ts';
import { DEGREES, roomOf, sheetTransform, sizeOnSheet, type Turn } from './turns.ts';

/** A foundation as it lies on the sheet, the corner of its cutting line's upright rectangle at (0, 0), with its labels. */
export interface LabelledFoundation {
  readonly toSheet: Transform<'print', 'page'>;
  readonly outline: Polygon<'page'>;
  readonly cuttingLine: Polygon<'page'>;
  readonly sewLines: readonly Segment<'page'>[];
  readonly runOns: readonly Segment<'page'>[];
  readonly ticks: readonly Segment<'page'>[];
  readonly stopMarks: readonly Segment<'page'>[];
  readonly pieces: PieceLabels;
  /** For prints that have an up. */
  readonly arrows: readonly PathMark[];
  /** What found no room in its patch, for the caption. */
  readonly notes: readonly string[];
}

/**
 * All that the caption and the packing depend on, for each way to lie.
 *
 * @param spare how far beyond the foundation, all round, labels may stand that find no place over it; points
 * @param barriers where the foundation is cut into sheets: upright and level lines that no label crosses
 */
export function labelledFoundation(
  foundation: Foundation,
  turn: Turn,
  spare: number,
  barriers: readonly Segment<'page'>[],
): LabelledFoundation {
  const { key } = foundation;
  const toSheet = sheetTransform(foundation, turn);
  const segments = (list: readonly Segment<'print'>[]) => list.map((s) => transformSegment(toSheet, s));
  const outline = transformPolygon(toSheet, foundation.outline);
  const cuttingLine = transformPolygon(toSheet, foundation.cuttingLine);
  const sewLines = segments(foundation.sewLines);
  const runOns = segments(foundation.runOns);
  const ticks = segments(foundation.matchMarks.ticks);
  const stopMarks = segments(foundation.stopMarks);
  const patches = foundation.pieces.map((piece) => patchOnSheet(piece, toSheet));
  const pieces = pieceLabels(key, {
    patches,
    outline,
    cuttingLine,
    sewLines,
    crossings: [...runOns, ...ticks, ...stopMarks],
    barriers,
    room: roomOf(sizeOnSheet(foundation, turn)),
    spare,
  });
  const aimed = foundation.pieces.flatMap(({ upright }, i) => (upright ? [i] : []));
  const lines = aimed.length === 0 ? [] : [...sewLines, ...edgesOf(outline), ...pieces.leaders, ...barriers];
  const arrows = aimed.map((i) =>
    grainArrow(key, patches[i]!, DEGREES[turn], pieces.plates[i]!, pieces.plates, lines),
  );
  const unaimed = aimed.filter((_, k) => arrows[k] === null).map((i) => patches[i]!.name);
  return {
    toSheet,
    outline,
    cuttingLine,
    sewLines,
    runOns,
    ticks,
    stopMarks,
    pieces,
    arrows: arrows.filter((arrow) => arrow !== null),
    notes: [
      ...lettersBelow(foundation.pieces.filter(({ name }) => pieces.unlettered.includes(name))),
      ...notesBelow(foundation.pieces.filter(({ name }) => pieces.unnoted.includes(name))),
      ...(unaimed.length === 0 ? [] : [`print upright, up to the top of the block: ${unaimed.join(', ')}`]),
    ],
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
