import { readFileSync } from 'node:fs';
import type { Download } from '@playwright/test';
import type { Place } from './draw.ts';
import {
  checkSquareSides,
  cuttingLines,
  finishedOutlines,
  hasPoppler,
  misfit,
  readPdf,
  straightLines,
} from './pdf.ts';
import { expect } from './test.ts';

/** A house with a door: the outline is no rectangle, and one foundation holds all of it. Inches. */
export const HOUSE: readonly Place[] = [
  [0, 2.5],
  [3, 0],
  [6, 2.5],
  [6, 6],
  [0, 6],
];

/** Eaves, lintel, two door posts: five patches. */
export const HOUSE_LINES: readonly (readonly [Place, Place])[] = [
  [
    [0, 2.5],
    [6, 2.5],
  ],
  [
    [0, 3.5],
    [6, 3.5],
  ],
  [
    [2, 3.5],
    [2, 6],
  ],
  [
    [4, 3.5],
    [4, 6],
  ],
];

/** PDF user space: 72 points to the inch (ISO 32000-1, table 30). */
const POINTS = 72;
/** 0.01 mm in points: what printed outlines are held to. */
const WITHIN = (0.01 / 25.4) * POINTS;

/**
 * Measures the saved file with Poppler: one Letter sheet with both check squares and one foundation, whose
 * finished outline is the mirror image of the house, with its cutting line a quarter inch outside.
 */
export async function measureHouse(download: Download): Promise<void> {
  expect(hasPoppler, 'Poppler is here, so that the PDF can be measured').toBe(true);
  const pages = readPdf(readFileSync(await download.path()));
  expect(pages).toHaveLength(1);
  const page = pages[0]!;
  // US Letter (ANSI/ASME Y14.1): 8.5 × 11 in.
  expect(page.mediaBox).toEqual([0, 0, 612, 792]);

  const [inch, millimetres] = checkSquareSides(page);
  expect(Math.abs(inch! - POINTS)).toBeLessThan(WITHIN);
  expect(Math.abs(millimetres! - (50 / 25.4) * POINTS)).toBeLessThan(WITHIN);

  const mirrored = HOUSE.map(([x, y]) => ({ x: -x * POINTS, y: y * POINTS }));
  const outlines = finishedOutlines(page);
  expect(outlines).toHaveLength(1);
  expect(misfit(outlines[0]!.points, mirrored)).toBeLessThan(WITHIN);

  const cutting = cuttingLines(page);
  expect(cutting).toHaveLength(1);
  const width = (points: readonly { x: number }[]) =>
    Math.max(...points.map(({ x }) => x)) - Math.min(...points.map(({ x }) => x));
  const sides = [width(cutting[0]!.points), width(cutting[0]!.points.map(({ x, y }) => ({ x: y, y: x })))];
  // Upright walls 6 in apart: a quarter inch more on either side, whichever way the foundation lies on the sheet.
  expect(Math.min(...sides.map((side) => Math.abs(side - 6.5 * POINTS)))).toBeLessThan(WITHIN);

  const lengths = straightLines(page).map(({ points: [a, b] }) => Math.hypot(a!.x - b!.x, a!.y - b!.y));
  for (const [[x1, y1], [x2, y2]] of HOUSE_LINES) {
    const wanted = Math.hypot(x1 - x2, y1 - y2) * POINTS;
    expect(Math.min(...lengths.map((length) => Math.abs(length - wanted)))).toBeLessThan(WITHIN);
  }
  expect(page.text).toMatch(/A1/);
  expect(page.text).toMatch(/A5/);
}
