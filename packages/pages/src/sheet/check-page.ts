import { type Box, formatLength, type LengthUnit, ok, type Result } from '@seamwright/geometry';
import { checkSheet, type SheetJob } from '../job.ts';
import { moved, QUIET, textMark } from '../marks/marks.ts';
import { wrapped } from '../marks/metrics.ts';
import type { Mark, PagePlan } from '../marks/model.ts';
import { noteTable } from './check-notes.ts';
import type { Part } from './check-part.ts';
import { longestRuler, rulerMarks } from './check-rulers.ts';
import { photocopyBlock, sampleBlock } from './check-samples.ts';
import { corrected, correctionWords } from './correction.ts';
import { bareSquares, printableArea, squaresTop, stripWidth } from './sheet-frame.ts';

export interface CheckPageJob extends SheetJob {
  /** The unit of the rulers; inches when left out. */
  readonly unit?: LengthUnit;
}

/** A check page, and what to ask for when it has been printed. */
export interface CheckPage {
  readonly plan: PagePlan;
  /** How long its rulers say that they are, inches: as `printed` of a `RulerMeasure`. */
  readonly rulers: { readonly across: number; readonly down: number };
}

/** Points: room for the ruler down the sheet at its right edge, and between parts. */
const RULER_ROOM = 46;
const PART_GAP = 16;

/** Points: how the numbered sentences are set. */
const STEP_INDENT = 14;
const STEP_LINE = 11.5;

/** Points. Narrower pages have their parts one below the other. */
const TWO_COLUMNS = 400;

/**
 * One page by which a printer is judged: the two check squares, a ruler across the sheet and one down it, as long as it
 * takes, lines and greys as foundations have them, and what a photocopier does to the allowance. Small sheets leave
 * out what does not fit, the last first; squares and rulers are always there.
 *
 * With `printer` the page is corrected for it, and must measure true.
 *
 * A Problem when the sheet leaves too little room, or the printer is too far off.
 */
export function checkPage(job: CheckPageJob): Result<CheckPage> {
  const { unit = 'in' } = job;
  const checked = checkSheet(job, unit);
  if (!checked.ok) return checked;
  const { page, sheet, margins, printer } = checked.value;
  const area = printableArea(sheet, margins);
  const column = area.maxX - area.minX - RULER_ROOM;
  const across = longestRuler(column, unit);
  const down = longestRuler(area.maxY - area.minY, unit);

  const parts: Part[] = [
    heading(page.label, column),
    { marks: rulerMarks('across', across, unit), height: 42 },
    ...steps(
      [
        'Print this page at 100 % or “actual size”, with “fit to page” off.',
        'Measure both squares and both rulers, each from the middle of one line to the middle of the other, as exactly as you can. The long rulers tell more than the squares.',
        'Type what you measured at the Paper station, across and down, under a name for the printer. Pages are then made larger or smaller by as much, so that they come out true.',
        'If anything measures less than 90 % or more than 110 % of what it should, the page was fitted to the paper: look for that setting, and print this page again.',
        ...(printer === undefined
          ? []
          : [`${correctionWords(printer)} Printed on it, all lengths must be true now.`]),
      ],
      column,
    ),
  ];
  const half = (column - PART_GAP) / 2;
  if (column >= TWO_COLUMNS) {
    const [left, right] = [sampleBlock(half), photocopyBlock(half, unit)];
    parts.push({
      marks: [...left.marks, ...right.marks.map((mark) => moved(mark, { x: half + PART_GAP, y: 0 }))],
      height: Math.max(left.height, right.height),
    });
  } else parts.push(sampleBlock(column), photocopyBlock(column, unit));

  const rulerDown = rulerMarks('down', down, unit).map((mark) => moved(mark, { x: area.maxX, y: area.minY }));
  const notesAt = { x: area.maxX - stripWidth(area), y: squaresTop(area) };
  const notes = noteTable(
    [
      'square of 1 in',
      'square of 50 mm',
      `ruler of ${formatLength(across, unit)}`,
      `ruler of ${formatLength(down, unit)}`,
    ],
    stripWidth(area) - RULER_ROOM - PART_GAP,
  );
  const marks = [
    ...placed(parts, area),
    ...rulerDown,
    ...bareSquares(area),
    ...notes.map((mark) => moved(mark, notesAt)),
  ];
  const plan: PagePlan = {
    title: 'Check page',
    paper: page,
    sheets: [{ marks, sections: [] }],
    outline: [{ title: 'Check page', sheet: 0, children: [] }],
    prints: [],
  };
  return ok({ plan: printer === undefined ? plan : corrected(plan, printer), rulers: { across, down } });
}

/** The parts one below the other above the check squares, as many as there is room for. */
function placed(parts: readonly Part[], area: Box<'page'>): readonly Mark[] {
  const marks: Mark[] = [];
  let y = area.minY;
  for (const part of parts) {
    if (y + part.height > squaresTop(area) - PART_GAP) continue;
    const at = { x: area.minX, y };
    marks.push(...part.marks.map((mark) => moved(mark, at)));
    y += part.height + (part.gap ?? PART_GAP);
  }
  return marks;
}

function heading(paper: string, width: number): Part {
  const lines = wrapped(
    'The two squares and the rulers must measure what is written beside them.',
    9,
    'regular',
    width,
    2,
  );
  return {
    marks: [
      textMark(
        'footer',
        undefined,
        `Check page, ${paper}`,
        { x: 0, y: 14 },
        { size: 16, weight: 'semibold' },
      ),
      ...lines.map((line, i) =>
        textMark('footer', undefined, line, { x: 0, y: 28 + 11 * i }, { size: 9, ink: QUIET }),
      ),
    ],
    height: 31 + 11 * (lines.length - 1),
  };
}

/** Numbered sentences, each by itself, so that a small sheet has the first ones. */
const steps = (sentences: readonly string[], width: number): readonly Part[] =>
  sentences.map((sentence, i) => {
    const lines = wrapped(sentence, 9, 'regular', width - STEP_INDENT, 12);
    return {
      marks: [
        textMark('footer', undefined, `${i + 1}`, { x: 0, y: 9 }, { size: 9, weight: 'semibold' }),
        ...lines.map((line, k) =>
          textMark('footer', undefined, line, { x: STEP_INDENT, y: 9 + k * STEP_LINE }, { size: 9 }),
        ),
      ],
      height: lines.length * STEP_LINE,
      gap: i === sentences.length - 1 ? PART_GAP : 3,
    };
  });
