import { fail, ok, POINTS_PER_INCH, type Point, type Result } from '@seamwright/geometry';
import type { Mark, PagePlan } from '../marks/model.ts';
import type { Margins, Paper } from './paper.ts';
import { PRINTER_RANGE } from './printer-range.ts';

/** A printer that does not print true, and what it makes of a length of 1. */
export interface Printer {
  /** As the maker calls it. */
  readonly name: string;
  /** 0.973 where a line of 10 in across the sheet comes out as 9.73 in. */
  readonly across: number;
  readonly down: number;
}

/** What helps where a printer is farther off than any is by itself. */
export const SCALED_REMEDY =
  'Look in the print dialog for “fit to page” or “scale”, set it to 100 % or “actual size”, and print the check page again';

export function checkPrinter(printer: Printer): Result<Printer> {
  for (const [where, factor] of [
    ['across', printer.across],
    ['down', printer.down],
  ] as const) {
    // Written so that NaN fails, too.
    if (!(factor >= PRINTER_RANGE.least && factor <= PRINTER_RANGE.most))
      return fail(
        `A printer that prints ${percent(factor)} is not off by itself: pages are corrected within 90 and 110 %`,
        where,
        SCALED_REMEDY,
      );
  }
  return ok(printer);
}

/**
 * What comes out of the printer when it is given a sheet of this paper: the size that the whole page then has, and the
 * margins in which nothing may stand. Layout happens on this sheet, in true size.
 *
 * A printer that enlarges pushes the page over the sheet's edges, at all sides or only at the right and the bottom; what may
 * be lost is added to the margins.
 */
export function printedSheet(paper: Paper, margins: Margins, printer: Printer | undefined) {
  if (printer === undefined) return { sheet: paper, margins };
  const sheet = { width: paper.width * printer.across, height: paper.height * printer.down };
  const over = {
    x: Math.max(0, sheet.width - paper.width) / POINTS_PER_INCH,
    y: Math.max(0, sheet.height - paper.height) / POINTS_PER_INCH,
  };
  return {
    sheet,
    margins: {
      top: margins.top + over.y / 2,
      right: margins.right + over.x,
      bottom: margins.bottom + over.y,
      left: margins.left + over.x / 2,
    },
  };
}

/**
 * The plan, laid out on a sheet of true size ({@link printedSheet}), as it has to be in the file so that this printer makes it
 * true: everything is placed farther apart, or closer together, by what the printer takes away or adds.
 *
 * Texts are set larger or smaller, but not stretched, so that none outgrows its room; strokes keep their width.
 */
export function corrected(plan: PagePlan, { across, down }: Printer): PagePlan {
  const place = ({ x, y }: Point<'page'>): Point<'page'> => ({ x: x / across, y: y / down });
  const type = 1 / Math.max(across, down);
  const correct = (mark: Mark): Mark => {
    if (mark.kind === 'text') return { ...mark, at: place(mark.at), size: mark.size * type };
    const points = mark.points.map(place);
    if (mark.window === undefined) return { ...mark, points };
    const { minX, minY, maxX, maxY } = mark.window;
    const [low, high] = [place({ x: minX, y: minY }), place({ x: maxX, y: maxY })];
    return { ...mark, points, window: { minX: low.x, minY: low.y, maxX: high.x, maxY: high.y } };
  };
  return { ...plan, sheets: plan.sheets.map((sheet) => ({ ...sheet, marks: sheet.marks.map(correct) })) };
}

/** What a corrected page says of itself. */
export const correctionWords = ({ name, across, down }: Printer): string =>
  `Corrected for ${name || 'a printer'}, which prints ${percent(across)} across and ${percent(down)} down: not true on another one.`;

/** `97.3 %` */
export const percent = (factor: number): string => `${Math.round(factor * 1000) / 10} %`;
