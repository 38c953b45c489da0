import type { PagePlan, Print, Sheet } from '../marks/model.ts';

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
export function printsOf({ sheets, prints }: Pick<PagePlan, 'sheets' | 'prints'>): PrintRun {
  const times = timesOf(sheets, prints);
  return { times, sheets: times.reduce((sum, count) => sum + count, 0) };
}

/** As often as the foundation on it of which the most are wanted. */
export function timesOf(
  sheets: readonly Pick<Sheet, 'sections'>[],
  prints: readonly Print[],
): readonly number[] {
  const times = sheets.map(() => 1);
  for (const { sheets: on, count } of prints)
    for (const sheet of on) times[sheet] = Math.max(times[sheet]!, count);
  return times;
}
