import { MM_PER_INCH, ok, type Result } from '@seamwright/geometry';
import { planStrips, type Rectangles, type Strip } from './plan-strips.ts';
import { dualFeasible, wholeAbove } from './strips/dual-feasible.ts';
import { roomOnGrid, toGrid } from './strips/grid.ts';
import type { LoadSolver } from './strips/least.ts';

/** A piece of fabric as it is sold cut, inches. */
export interface Sheet {
  readonly name: string;
  /** Across the fabric. */
  readonly width: number;
  /** Along its length. */
  readonly height: number;
}

/** Half of half a yard: 18 × 22 in, docsbay.net and Quilter's Cache. */
export const FAT_QUARTER: Sheet = { name: 'fat quarter', width: 22, height: 18 };

/** Half of a fat quarter: common practice. */
export const FAT_EIGHTH: Sheet = { name: 'fat eighth', width: 22, height: 9 };

/** 50 × 55 cm: Olive and Flo Handcraft. */
export const METRIC_FAT_QUARTER: Sheet = {
  name: 'metric fat quarter',
  width: 550 / MM_PER_INCH,
  height: 500 / MM_PER_INCH,
};

/** Sheets that are cut alike. */
interface CutSheet {
  /** Which way its strips run: across the fabric, or along its length. */
  readonly run: 'across' | 'along';
  readonly strips: readonly Strip[];
}

export interface SheetPlan {
  readonly sheet: Sheet;
  /** One entry for each sheet. */
  readonly sheets: readonly CutSheet[];
  /** How many sheets no way of cutting does without. */
  readonly atLeast: number;
  /** Whether the sheets are no more than that. */
  readonly provenLeast: boolean;
  /** What a sheet does not hold; the rest is planned. */
  readonly tooLarge: readonly Rectangles[];
}

/**
 * How many sheets yield the rectangles: strips of the least height all together, put into sheets by first fit,
 * decreasing; once across and once along the fabric, and the fewer count.
 *
 * The bound holds for any way of cutting (Fekete and Schepers, "A general framework for bounds for higher-dimensional
 * orthogonal packing problems", Mathematical Methods of Operations Research 60, 2004): the product of a dual feasible
 * function of the width and one of the height sums to 1 at most in each sheet.
 */
export async function planSheets(
  rectangles: readonly Rectangles[],
  sheet: Sheet,
  { upright = false, trim = false }: { readonly upright?: boolean; readonly trim?: boolean } = {},
  load?: LoadSolver,
): Promise<Result<SheetPlan>> {
  const turned = rectangles.map(({ width, height, count }) => ({ width: height, height: width, count }));
  const planned = async (solver?: LoadSolver): Promise<Result<SheetPlan>> => {
    const rules = { upright, trim };
    const across = await planStrips(
      rectangles,
      { ...rules, usableWidth: sheet.width, longest: sheet.height },
      solver,
    );
    if (!across.ok) return across;
    const along = await planStrips(
      turned,
      { ...rules, usableWidth: sheet.height, longest: sheet.width },
      solver,
    );
    if (!along.ok) return along;
    const { tooLarge } = across.value;
    const plans: CutSheet[][] = [
      intoSheets(across.value.strips, sheet.height).map((strips) => ({ run: 'across', strips })),
      intoSheets(along.value.strips, sheet.width).map((strips) => ({ run: 'along', strips })),
    ];
    const sheets = plans.reduce((best, plan) => (plan.length < best.length ? plan : best));
    const held = rectangles.filter((rectangle) => rectangle.count > 0 && !tooLarge.includes(rectangle));
    const atLeast = fewestSheets(held, sheet, upright);
    return ok({ sheet, sheets, atLeast, provenLeast: sheets.length === atLeast, tooLarge });
  };
  const quick = await planned();
  if (!quick.ok || quick.value.provenLeast || load === undefined) return quick;
  const thorough = await planned(load);
  return thorough.ok && thorough.value.sheets.length < quick.value.sheets.length ? thorough : quick;
}

/** First fit, decreasing: the strips come highest first. */
function intoSheets(strips: readonly Strip[], height: number): Strip[][] {
  const open: { room: number; strips: Strip[] }[] = [];
  for (const strip of strips) {
    const needed = toGrid(strip.height);
    for (let left = strip.count; left > 0; ) {
      const sheet = open.find(({ room }) => room >= needed) ?? { room: roomOnGrid(height), strips: [] };
      if (sheet.strips.length === 0) open.push(sheet);
      const some = Math.min(left, Math.floor(sheet.room / needed));
      sheet.strips.push({ ...strip, count: some });
      sheet.room -= some * needed;
      left -= some;
    }
  }
  return open.map((sheet) => sheet.strips);
}

function fewestSheets(rectangles: readonly Rectangles[], sheet: Sheet, upright: boolean): number {
  if (rectangles.length === 0) return 0;
  const room = { width: roomOnGrid(sheet.width), height: roomOnGrid(sheet.height) };
  const items = rectangles.map(({ width, height, count }) => {
    const lying = { width: toGrid(width), height: toGrid(height) };
    const standing = { width: lying.height, height: lying.width };
    const lies = (upright ? [lying] : [lying, standing]).filter(
      (lie) => lie.width <= room.width && lie.height <= room.height,
    );
    return { count, lies };
  });
  const lies = items.flatMap((item) => item.lies);
  const ofHeights = dualFeasible(
    room.height,
    lies.map(({ height }) => height),
  );
  let least = 0;
  for (const ofWidth of dualFeasible(
    room.width,
    lies.map(({ width }) => width),
  )) {
    for (const ofHeight of ofHeights) {
      const sum = items.reduce(
        (total, item) =>
          total +
          item.count * Math.min(...item.lies.map(({ width, height }) => ofWidth(width) * ofHeight(height))),
        0,
      );
      least = Math.max(least, sum);
    }
  }
  return wholeAbove(least);
}
