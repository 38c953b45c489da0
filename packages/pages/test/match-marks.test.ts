import { distance, distanceToSegment, edgesOf, type Point, type Polygon } from '@seamwright/geometry';
import { describe, expect, test } from 'vitest';
import {
  type DrawnPage,
  finishedOutlines,
  hasPoppler,
  misfit,
  readPdf,
  type Spot,
} from '../../../e2e/support/pdf.ts';
import { type FoundationJob, writePdf } from '../src/index.ts';
import { type Block, block, pinwheel, rectangle, turningLamp, usual, windmill } from './blocks.ts';
import { pageFonts } from './fonts.ts';
import { laid } from './laid.ts';
import { seamEndsOnJoins } from './match-points.ts';
import { turnedBy } from './quarters.ts';

/** What pages are held to: 0.01 mm, in inches and in points. */
const TRUE_INCHES = 0.01 / 25.4;
const TRUE = TRUE_INCHES * 72;

/** Three rows, in each of which two seams end where the next has none. */
const bricks = (): Block =>
  block(rectangle(6, 4.5), [
    [0, 1.5, 6, 1.5],
    [0, 3, 6, 3],
    [2, 0, 2, 1.5],
    [4, 0, 4.5, 1.5],
    [1, 1.5, 1, 3],
    [3.25, 1.5, 3, 3],
    [2, 3, 2, 4.5],
    [5, 3, 4, 4.5],
  ]);

const JOBS: readonly FoundationJob[] = [
  usual(pinwheel(4), 'Pinwheel'),
  usual(pinwheel(5), 'Pinwheel', { paper: 'a3', scale: 1.5 }),
  usual(bricks(), 'Quay wall', { paper: 'a4', allowance: 0.375 }),
  usual(windmill(6), 'Windmill'),
  usual(turningLamp(), 'Lamp with leaning arms', { scale: 0.777 }),
  usual(pinwheel(4), 'Pinwheel of thirds', { scale: 1 / 3, paper: 'a4' }),
];

/** A section as it is found in the file: where its match marks stand, in the block's own coordinates, inches. */
interface Found {
  readonly letter: string;
  readonly outline: Polygon;
  readonly feet: readonly Point[];
}

describe.skipIf(!hasPoppler)('match marks in the saved file, carried back to the block', () => {
  test.each(JOBS.map((job) => [`${job.title} on ${job.paper}`, job] as const))('%s', async (_, job) => {
    const pages = readPdf(await writePdf(laid(job), pageFonts));
    const found = sectionsIn(pages, job);
    expect(found.map(({ letter }) => letter)).toEqual(job.plan.sections.map(({ letter }) => letter));
    let paired = 0;
    for (const { letter, feet } of found)
      for (const foot of feet) {
        // What it falls on: another section's mark, or corner (corners are match points by themselves).
        const others = found.filter((other) => other.letter !== letter && liesOn(foot, other.outline));
        expect(others.length).toBeGreaterThan(0);
        for (const other of others) {
          const meets = [...other.feet, ...other.outline].map((p) => distance(p, foot));
          expect(Math.min(...meets)).toBeLessThan(TRUE_INCHES);
          if (other.feet.some((p) => distance(p, foot) < TRUE_INCHES)) paired++;
        }
      }
    // And each point where a seam ends on a section is marked on it.
    const wanted = seamEndsOnJoins(job);
    for (const { letter, points } of wanted)
      for (const point of points) {
        const { feet } = found.find((one) => one.letter === letter)!;
        expect(Math.min(...feet.map((foot) => distance(foot, point)))).toBeLessThan(TRUE_INCHES);
      }
    expect(paired).toBeGreaterThan(0);
  });
});

const liesOn = (p: Point, outline: Polygon): boolean =>
  edgesOf(outline).some(({ a, b }) => distanceToSegment(p, a, b) < TRUE_INCHES);

/** Each section of the job, its drawn outline found by its shape, and the ticks whose foot stands on that. */
function sectionsIn(pages: readonly DrawnPage[], { plan, sizes }: FoundationJob): readonly Found[] {
  const { scale } = sizes[0]!;
  const used = new Set<unknown>();
  return plan.sections.flatMap(({ letter, outline }) => {
    const mirrored = outline.map(({ x, y }) => ({ x: -x * scale * 72, y: y * scale * 72 }));
    for (const page of pages)
      for (const drawn of finishedOutlines(page)) {
        if (used.has(drawn) || misfit(drawn.points, mirrored) > TRUE) continue;
        // Copies of one shape are told apart by their piece numbers; here by their order, which is that of their letters.
        used.add(drawn);
        const toBlock = carryBack(drawn.points, outline, scale);
        const feet = page.paths
          .filter(({ points, width }) => points.length === 2 && Math.abs(width - 1.5) < 0.01)
          .flatMap(({ points }) => points.filter((p) => isOn(p, drawn.points)).slice(0, 1));
        return [{ letter, outline, feet: feet.map(toBlock) }];
      }
    return [];
  });
}

const isOn = (p: Spot, ring: readonly Spot[]): boolean =>
  edgesOf<'page'>(ring).some(({ a, b }) => distanceToSegment<'page'>(p, a, b) < TRUE);

/** From the sheet to the block, so that the drawn outline comes to lie on the section's, corner on corner. */
function carryBack(drawn: readonly Spot[], outline: Polygon, scale: number): (p: Spot) => Point {
  // Foundations lie upright or turned clockwise; shapes that fit in two ways have been turned the less.
  for (const quarters of [0, 3, 2, 1] as const) {
    const flat = (p: Spot): Point => {
      const { x, y } = turnedBy(p, quarters);
      return { x: -x / (72 * scale), y: y / (72 * scale) };
    };
    const corners = drawn.map(flat);
    const [dx, dy] = (['x', 'y'] as const).map(
      (axis) => mean(outline.map((p) => p[axis])) - mean(corners.map((p) => p[axis])),
    );
    const place = (p: Spot): Point => ({ x: flat(p).x + dx!, y: flat(p).y + dy! });
    const fits = drawn.every((p) => outline.some((corner) => distance(corner, place(p)) < TRUE_INCHES));
    if (fits) return place;
  }
  throw new Error('The drawn outline is not that of the section');
}

const mean = (numbers: readonly number[]): number => numbers.reduce((sum, n) => sum + n, 0) / numbers.length;
