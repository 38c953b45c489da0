import { type Box, formatLength } from '@seamwright/geometry';
import type { CheckedJob } from '../job.ts';
import { QUIET, STROKES, segmentMark, textMark } from '../marks/marks.ts';
import { shortened, textWidth, wrapped } from '../marks/metrics.ts';
import type { Mark } from '../marks/model.ts';
import { correctionWords } from './correction.ts';

export interface SheetNumbers {
  /** From 1. */
  readonly page: number;
  readonly pages: number;
  /** How often the sheet is to be printed. */
  readonly times: number;
}

const NAME = { size: 9, weight: 'semibold' } as const;
/** How the lines of a foot are set. */
export const FOOT_LINE = { size: 7.5, weight: 'regular' } as const;

/** Points from base line to base line. */
const LINE_STEP = 9.5;

/** Points: the name's line, and the line for a pencil note. */
const NAME_ROOM = 12;
const NOTE_ROOM = 19;

/** Points. Where the strip is narrower, the page's number has a line of its own. */
const NARROW = 260;

/** Lines that a text may take: more would climb above the check squares. */
const MOST_LINES = 5;

/** Points: the height on a sheet of usual width. */
export const USUAL_STRIP = NAME_ROOM + NOTE_ROOM + 2 * LINE_STEP;

/** The height of the strip of words at the foot of a sheet, beside the check squares, where it is so wide. Points. */
export const stripHeight = (job: CheckedJob, width: number): number =>
  footHeight(stripLines(job, width).length, width);

/** The strip, in the bottom of `foot`: the names, the page's number, how to print and sew, a line for a note. */
export function stripMarks(job: CheckedJob, foot: Box<'page'>, numbers: SheetNumbers): readonly Mark[] {
  const { page, pages, times } = numbers;
  return footMarks(foot, {
    names: namesOf(job),
    number: `page ${page} of ${pages}${times > 1 ? `, print ${times} times` : ''}`,
    lines: stripLines(job, foot.maxX - foot.minX),
  });
}

/** `Harbour quilt – Lantern`; the block's name alone where it belongs to no pattern. */
export const namesOf = ({ pattern, title }: { readonly pattern: string; readonly title: string }): string =>
  pattern === '' ? title : `${pattern} – ${title}`;

/** What stands at the foot of a sheet. */
export interface Foot {
  readonly names: string;
  readonly number: string;
  /** Each fits in the width. */
  readonly lines: readonly string[];
}

/** Points that a foot with so many lines takes. */
export const footHeight = (lines: number, width: number): number =>
  NAME_ROOM + NOTE_ROOM + LINE_STEP * (lines + (width < NARROW ? 1 : 0));

/** In the bottom of the box: the names, the page's number, lines, and a line for a pencil note. */
export function footMarks(
  { minX: left, maxX: right, maxY: bottom }: Box<'page'>,
  { names, number, lines }: Foot,
): readonly Mark[] {
  const width = right - left;
  const top = bottom - footHeight(lines.length, width);
  const narrow = width < NARROW;
  const beside = narrow ? 0 : textWidth(number, NAME.size, 'regular') + 12;
  const name = shortened(names, NAME.size, NAME.weight, width - beside);
  const base = top + NAME_ROOM;
  const first = base + 11 + (narrow ? LINE_STEP : 0);
  const line = (content: string, y: number): Mark =>
    textMark('footer', undefined, content, { x: left, y }, { ...FOOT_LINE, ink: QUIET });
  const rule = (from: number, y: number): Mark =>
    segmentMark('footer', undefined, { a: { x: from, y }, b: { x: right, y } }, STROKES.rule);
  return [
    rule(left, top),
    textMark('footer', undefined, name, { x: left, y: base }, NAME),
    narrow
      ? line(number, base + 11)
      : textMark('footer', undefined, number, { x: right, y: base }, { size: NAME.size, anchor: 'end' }),
    ...lines.map((text, i) => line(text, first + i * LINE_STEP)),
    line('Note', bottom - 1),
    rule(left + 20, bottom - 0.5),
  ];
}

/** What is said on every sheet, as many lines as it takes. */
function stripLines({ allowance, unit, printer }: CheckedJob, width: number): readonly string[] {
  const howTo =
    allowance === 0
      ? 'Sew on the solid lines, match at the heavy ticks. The outline has no seam allowance: add it as you cut.'
      : `Sew on the solid lines, cut on the dashed line (${formatLength(allowance, unit)} seam allowance), match at the heavy ticks.`;
  const texts = [
    howTo,
    'Fabric goes on the blank side: the print is the mirror image of the finished block.',
    ...(printer === undefined ? [] : [correctionWords(printer)]),
  ];
  return texts.flatMap((text) => wrapped(text, FOOT_LINE.size, FOOT_LINE.weight, width, MOST_LINES));
}
