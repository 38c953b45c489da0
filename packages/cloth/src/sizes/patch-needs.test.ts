import { area, contains, distance, distanceToSegment, edgesOf, type Point } from '@seamwright/geometry';
import { expect, test } from 'vitest';
import { block, knownBlocks, rectangle } from '../../test/blocks.ts';
import { randomNumbers } from '../../test/slips.ts';
import { patchNeeds } from './patch-needs.ts';

test('a strip of a block: its allowance ends at the cutting line, and lies under its neighbour', () => {
  const drawn = block(rectangle(6, 4), [[2, 0, 2, 4]]);
  const needs = patchNeeds(drawn.arrangement, drawn.plan, 0.25);
  expect(needs.map(({ name }) => name)).toEqual(['A1', 'A2']);
  expect(needs.map(({ sewLine }) => sewLine === null)).toEqual([true, false]);
  for (const { finished, needed } of needs) {
    const width = finished.some(({ x }) => x < 1) ? 2 : 4;
    expect(area(needed)).toBeCloseTo((width + 0.5) * 4.5, 12);
  }
});

test('at a corner of the block the tip of a triangle is trimmed off, inside a block it is not', () => {
  const alone = block(rectangle(4, 4), [[0, 4, 4, 0]]);
  const [half] = patchNeeds(alone.arrangement, alone.plan, 0.25);
  // The corner (−1/4, −1/4) or (4 1/4, 4 1/4) is the farthest; a whole tip would reach past the block by 0.604.
  for (const { x, y } of half!.needed) {
    for (const value of [x, y]) expect(Math.abs(value - 2)).toBeLessThanOrEqual(2.25 + 1e-12);
  }
  const inside = block(rectangle(4, 8), [
    [0, 4, 4, 4],
    [0, 4, 4, 0],
  ]);
  const below = patchNeeds(inside.arrangement, inside.plan, 0.25).find(
    ({ finished }) => finished.length === 3 && finished.some(({ x, y }) => x === 4 && y === 4),
  );
  // 45° at (0, 4), an edge of the block: the side cuts it off at 1/4; at (4, 0) it is the block's corner.
  expect(Math.min(...below!.needed.map(({ x }) => x))).toBeCloseTo(-0.25, 12);
});

test('with a scale, the finished patch grows and the allowance does not', () => {
  const drawn = block(rectangle(2, 2));
  const [need] = patchNeeds(drawn.arrangement, drawn.plan, 0.25, 3);
  expect(area(need!.finished)).toBe(36);
  expect(area(need!.needed)).toBeCloseTo(6.5 ** 2, 12);
});

test('all within the allowance of the patch is needed, but nothing beyond the reach of mitres or of the trimmed section', () => {
  const random = randomNumbers(5);
  const allowance = 0.25;
  let [near, far] = [0, 0];
  for (const { arrangement, plan } of knownBlocks()) {
    for (const { finished, needed } of patchNeeds(arrangement, plan, allowance)) {
      const away = (p: Point) =>
        contains(finished, p) !== 'outside'
          ? 0
          : Math.min(...edgesOf(finished).map(({ a, b }) => distanceToSegment(p, a, b)));
      const corner = finished[Math.floor(random() * finished.length)]!;
      for (let n = 0; n < 40; n++) {
        const p = { x: corner.x + random() - 0.5, y: corner.y + random() - 0.5 };
        const isNeeded = contains(needed, p) !== 'outside';
        if (away(p) <= allowance - 1e-6) {
          near += 1;
          expect(isNeeded).toBe(true);
        }
        if (isNeeded && away(p) > allowance + 1e-6) {
          far += 1;
          // In a mitre: past a corner, and no farther from it than three allowances.
          const corners = finished.map((q) => distance(p, q));
          expect(Math.min(...corners)).toBeLessThanOrEqual(3.3 * allowance);
        }
      }
    }
  }
  expect(near).toBeGreaterThan(1000);
  expect(far).toBeGreaterThan(50);
});
