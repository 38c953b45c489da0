import { type Box, boundingBox, edgesOf, type Segment, transformSegment } from '@seamwright/geometry';
import { cornersOf } from '../labels/plate.ts';
import { polygonMark, STROKES, segmentMark } from '../marks/marks.ts';
import type { Mark } from '../marks/model.ts';
import { matchWords, type NamedMark } from '../words/match-words.ts';
import type { Foundation } from './foundation.ts';
import { labelledFoundation } from './labelled.ts';
import type { OpenStretch } from './open-stretches.ts';
import type { Turn } from './turns.ts';

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
  const { key, letters, matchMarks } = foundation;
  const labelled = labelledFoundation(foundation, turn, spare, barriers);
  const { toSheet, outline, cuttingLine, sewLines, runOns, ticks, stopMarks, pieces, arrows } = labelled;
  const named = [...matchMarks.ticks, ...matchMarks.corners];
  const words = matchWords(named, letters);
  const sides = [...pieces.plates.flatMap((plate) => edgesOf(cornersOf(plate))), ...pieces.leaders];
  return {
    marks: [
      polygonMark('cutting-line', key, cuttingLine, STROKES.cuttingLine),
      ...runOns.map((s) => segmentMark('run-on', key, s, STROKES.runOn)),
      ...sewLines.map((s) => segmentMark('sew-line', key, s, STROKES.sewLine)),
      polygonMark('finished-outline', key, outline, STROKES.finishedOutline),
      ...[...ticks, ...stopMarks].map((s) => segmentMark('match-mark', key, s, STROKES.matchMark)),
      ...arrows,
      ...pieces.draw(),
    ],
    lines: {
      outline: edgesOf(outline),
      cuttingLine: edgesOf(cuttingLine),
      crossings: [...runOns, ...ticks, ...stopMarks],
      sewLines,
    },
    matches: named.map((mark, i) => {
      const { a, b } = ticks[i] ?? transformSegment(toSheet, mark);
      return { a, b, words: words[i]!, corner: i >= ticks.length };
    }),
    openStretches: foundation.openStretches.map((s) => ({ ...s, ...transformSegment(toSheet, s) })),
    labels: [...sides, ...arrows.flatMap(({ points }) => edgesOf(points))],
    notes: labelled.notes,
    extent: boundingBox([...cuttingLine, ...sides.map(({ a }) => a)]),
  };
}
