import type { PagePlan, Print } from '../marks/model.ts';

/** How much is to be printed. */
export interface PrintRun {
  /** How often each sheet of the plan is to be printed. */
  readonly times: readonly number[];
  /** Sheets of paper in all. */
  readonly sheets: number;
}

/**
 * How often each sheet is to be printed, so that there are enough prints of every foundation on it, and how much paper that
 * takes: a number to ask about before thousands are printed.
 */
export function printsOf({ sheets }: Pick<PagePlan, 'sheets'>): PrintRun {
  const times = sheets.map((sheet) => sheet.times ?? 1);
  return { times, sheets: times.reduce((sum, count) => sum + count, 0) };
}

/** The key of a foundation on its sheet: the first print of it that stands on the sheets has its own. @param number from 0 */
export const keyOnSheet = (key: string, number: number): string =>
  number === 0 ? key : `${key}${COPY}${number + 1}`;

const COPY = '-copy-';

/** The foundations on a sheet, in the order in which they stand there, and how many prints of each. */
export function printsOn(
  { sheets, prints }: Pick<PagePlan, 'sheets' | 'prints'>,
  index: number,
): readonly { readonly print: Print; readonly number: number }[] {
  const { sections } = sheets[index]!;
  const isOf = (section: string, key: string) => section === key || section.startsWith(key + COPY);
  return prints
    .filter(({ sheets: on }) => on.includes(index))
    .map((print) => ({ print, number: sections.filter((section) => isOf(section, print.key)).length }));
}
