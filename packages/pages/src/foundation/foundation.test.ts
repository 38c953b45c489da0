import type { Arrangement } from '@seamwright/arrangement';
import type { Segment } from '@seamwright/geometry';
import { describe, expect, test } from 'vitest';
import { type Block, block, house, lantern, pier, pinwheel, rectangle, usual } from '../../test/blocks.ts';
import { seamEndsOnJoins } from '../../test/match-points.ts';
import { checkJob } from '../job.ts';
import { type Foundation, foundationsOf } from './foundation.ts';
import { wantedFoundations } from './wanted.ts';

/** The foundations of a block, quarter-inch allowance unless said otherwise. */
function foundations(of: Block, allowance = 0.25): readonly Foundation[] {
  const job = checkJob(usual(of, 'Test', { allowance }));
  if (!job.ok) throw new Error(job.problem.what);
  return wantedFoundations(job.value).map((wanted) => foundationsOf(job.value)(wanted));
}

/** A segment of a foundation as numbers, in the block's own coordinates: unmirrored, inches. */
function inBlock(of: Block, foundation: Foundation, index: number, { a, b }: Segment<'print'>): number[] {
  const xs = of.plan.sections[index]!.outline.map(({ x }) => x);
  const ys = of.plan.sections[index]!.outline.map(({ y }) => y);
  const printed = foundation.outline;
  // The mirror image of the leftmost point of the block is the rightmost one on paper.
  const right = Math.max(...printed.map(({ x }) => x)) + Math.min(...xs);
  const down = Math.min(...printed.map(({ y }) => y)) - Math.min(...ys);
  return [right - a.x, a.y - down, right - b.x, b.y - down].map((value) => Math.round(value * 1e9) / 1e9);
}

const matchMarksOf = (of: Block, allowance?: number): number[][] =>
  foundations(of, allowance).flatMap((f, i) => f.matchMarks.ticks.map((mark) => inBlock(of, f, i, mark)));

describe('match marks', () => {
  test('there are none where nothing has to meet', () => {
    expect(matchMarksOf(house())).toEqual([]);
    expect(matchMarksOf(lantern(4))).toEqual([]);
  });

  test('three strips of a nine-patch: two where each meets the next, on both', () => {
    const nine = block(rectangle(3, 3), [
      [1, 0, 1, 3],
      [2, 0, 2, 3],
      [0, 1, 3, 1],
      [0, 2, 3, 2],
    ]);
    const marks = foundations(nine).map(({ matchMarks }) => matchMarks.ticks.length);
    expect([...marks].sort()).toEqual([2, 2, 4]);
    for (const [x1, y1, x2, y2] of matchMarksOf(nine)) {
      // Square to the edge, from the outline to the cutting line.
      expect(Math.hypot(x2! - x1!, y2! - y1!)).toBeCloseTo(0.25, 9);
      expect(x1 === x2 || y1 === y2).toBe(true);
    }
  });

  test('a pinwheel: one on each half, in the middle', () => {
    const marks = matchMarksOf(pinwheel(4));
    expect(marks).toHaveLength(2);
    for (const [x, y] of marks) expect([x, y]).toEqual([2, 2]);
  });

  test('they are found wherever another section’s seam ends inside an edge, and nowhere else', () => {
    // A row of four over a row of three: every seam of one row ends inside an edge of the other, but the middle ones
    // of neither meet.
    const rows = block(rectangle(12, 4), [
      [0, 2, 12, 2],
      [3, 0, 3, 2],
      [6, 0, 6, 2],
      [9, 0, 9, 2],
      [4, 2, 4, 4],
      [8, 2, 8, 4],
    ]);
    expect(rows.plan.sections.length).toBe(2);
    for (const { letter, points } of seamEndsOnJoins(rows)) {
      const places = points.map(({ x, y }) => [x, y]);
      const index = rows.plan.sections.findIndex((section) => section.letter === letter);
      const foundation = foundations(rows)[index]!;
      const starts = foundation.matchMarks.ticks.map((mark) =>
        inBlock(rows, foundation, index, mark).slice(0, 2),
      );
      expect(starts.sort()).toEqual(places.sort());
      expect(places.length).toBeGreaterThanOrEqual(2);
    }
  });

  test('one where a joined stretch ends short of the corner', () => {
    // An L of two rectangles: the lower one is joined along half of the upper one's edge, four patches each.
    const of = block(
      [
        [0, 0],
        [6, 0],
        [6, 3],
        [3, 3],
        [3, 6],
        [0, 6],
      ],
      [
        [0, 3, 3, 3],
        [0, 1.5, 6, 1.5],
        [3, 0, 3, 3],
        [0, 4.5, 3, 4.5],
        [1.5, 3, 1.5, 6],
      ],
    );
    const marks = matchMarksOf(of);
    const upper = of.plan.sections.filter(({ outline }) => outline.some(({ x }) => x === 6));
    expect(upper.length).toBeGreaterThan(0);
    const atNotch = marks.filter(([x, y]) => x === 3 && y === 3);
    // The section along whose straight edge the join ends at the notch's corner says so; others have a corner there.
    const straightThere = of.plan.sections.filter(
      ({ outline, ring }) =>
        ring.some((v) => isAt(of.arrangement, v, 3, 3)) && !outline.some(({ x, y }) => x === 3 && y === 3),
    );
    expect(straightThere.length).toBeGreaterThan(0);
    expect(atNotch).toHaveLength(straightThere.length);
  });

  test('without an allowance they are still there, an eighth of an inch long', () => {
    const marks = matchMarksOf(pinwheel(4), 0);
    expect(marks).toHaveLength(2);
    for (const [x1, y1, x2, y2] of marks) expect(Math.hypot(x2! - x1!, y2! - y1!)).toBeCloseTo(1 / 8, 9);
  });
});

const isAt = (arrangement: Arrangement, vertex: number, x: number, y: number): boolean => {
  const { at } = arrangement.vertices[vertex]!;
  return at.x === x && at.y === y;
};

describe('runs through the allowance', () => {
  test('a line that would run on along the outline has none there', () => {
    const of = pier();
    const [foundation] = foundations(of);
    // From (0, 2) to (2, 2): it leaves at the left, and at the notch's corner it meets an edge on its own line.
    expect(foundation!.runOns.map((run) => inBlock(of, foundation!, 0, run))).toEqual([[0, 2, -0.25, 2]]);
  });

  test('nor has its mirror image, which comes to the notch from the other side', () => {
    const of = block(
      [
        [0, 0],
        [4, 0],
        [4, 5],
        [2, 5],
        [2, 2],
        [0, 2],
      ],
      [[2, 2, 4, 2]],
    );
    const [foundation] = foundations(of);
    expect(foundation!.runOns.map((run) => inBlock(of, foundation!, 0, run))).toEqual([[4, 2, 4.25, 2]]);
  });

  test('a line that ends on another line has none', () => {
    const of = house();
    const [foundation] = foundations(of);
    // Two across, twice two ends; two upright ones that reach the ground only.
    expect(foundation!.sewLines).toHaveLength(4);
    expect(foundation!.runOns).toHaveLength(2 * 2 + 2);
  });

  test('across a notch narrower than two allowances it ends at the far side', () => {
    const of = block(
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [2.3, 4],
        [2.3, 1],
        [2, 1],
        [2, 4],
        [0, 4],
      ],
      [
        [0, 2, 2, 2],
        [2.3, 3, 4, 3],
        [0, 1, 2, 1],
        [2.3, 1, 4, 1],
      ],
    );
    const runs = foundations(of).flatMap((f, i) => f.runOns.map((run) => inBlock(of, f, i, run)));
    expect(runs).toContainEqual([2, 2, 2.3, 2]);
    expect(runs).toContainEqual([2.3, 3, 2, 3]);
  });

  test('without an allowance there are none', () => {
    expect(foundations(house(), 0)[0]!.runOns).toEqual([]);
  });
});

test('the allowance stays what it is at every scale', () => {
  for (const scale of [0.5, 1, 3]) {
    const job = checkJob(usual(lantern(4), 'Lantern', { scale, allowance: 0.25 }));
    if (!job.ok) throw new Error(job.problem.what);
    const foundation = foundationsOf(job.value)(wantedFoundations(job.value)[0]!);
    expect(foundation.finished.width).toBeCloseTo(4 * scale, 12);
    expect(foundation.width).toBeCloseTo(4 * scale + 0.5, 12);
  }
});
