import { area, type Polygon } from '@seamwright/geometry';
import { describe, expect, test } from 'vitest';
import { block, knownBlocks, rectangle } from '../../test/blocks.ts';
import { cutsOf, KINDS_OF_RULES } from '../../test/cover-check.ts';
import { coversByHand, laidTrue } from '../../test/placing-by-hand.ts';
import { randomNumbers, randomSlip } from '../../test/slips.ts';
import { patchNeeds } from '../sizes/patch-needs.ts';
import { placeSewFlip } from './place-sew-flip.ts';

/** The two 2 × 4 patches of a 4 in block, of which A2 is sewn on along x = 2. */
function strip() {
  const drawn = block(rectangle(4, 4), [[2, 0, 2, 4]]);
  const need = patchNeeds(drawn.arrangement, drawn.plan, 0.25)[1]!;
  const isRight = need.finished.some(({ x }) => x > 3);
  return { need, middle: isRight ? 3 : 1, outward: isRight ? 1 : -1 };
}

const piece = (width: number, height: number) => ({ shape: 'rectangle' as const, width, height, angle: 0 });
const total = (parts: readonly Polygon[]) => parts.reduce((sum, part) => sum + area(part), 0);
const xs = (polygon: Polygon) => polygon.map(({ x }) => x).sort((a, b) => a - b);

describe('by hand: a 3 × 5 for a 2 × 4', () => {
  const { need, middle, outward } = strip();

  test('laid true it has the spare all round and reaches allowance and spare past its sew line', () => {
    const sewn = placeSewFlip(piece(3, 5), need);
    expect(sewn.uncovered).toEqual([]);
    for (const { margin } of sewn.sides) expect(margin).toBeCloseTo(0.25, 12);
    expect(sewn.pastSewLine).toBeCloseTo(0.5, 12);
    expect(xs(sewn.flipped)[0]).toBeCloseTo(middle - 1.5, 12);
    // Before the flip it lies over the other patch, reaching past the line by as much.
    expect(xs(sewn.laid)[0]).toBeCloseTo(4 - middle - 1.5, 12);
  });

  test('shifted by 3/8 along the line it leaves a strip of 1/8', () => {
    const sewn = placeSewFlip(piece(3, 5), need, { shift: { x: 0, y: 0.375 }, turn: 0 });
    expect(sewn.margin).toBeCloseTo(-0.125, 12);
    expect(total(sewn.uncovered)).toBeCloseTo(2.5 * 0.125, 9);
    expect(sewn.sides.map(({ margin }) => margin).sort((a, b) => a - b)[3]).toBeCloseTo(0.625, 12);
  });

  test('shifted square to the line, it goes the other way when it is flipped', () => {
    const sewn = placeSewFlip(piece(3, 5), need, { shift: { x: outward * 0.25, y: 0 }, turn: 0 });
    expect(xs(sewn.flipped)[0]).toBeCloseTo(middle - 1.5 - outward * 0.25, 12);
    expect(sewn.margin).toBeCloseTo(0, 12);
    expect(sewn.pastSewLine).toBeCloseTo(0.75, 12);
  });

  test('a size that is too small leaves the rim uncovered, in parts without holes', () => {
    const sewn = placeSewFlip(piece(1, 2), need);
    expect(sewn.margin).toBeCloseTo(-1.25, 12);
    expect(total(sewn.uncovered)).toBeCloseTo(2.5 * 4.5 - 2, 9);
    expect(sewn.pastSewLine).toBeLessThan(0);
  });
});

test('what is uncovered is told exactly where placing by hand finds that the piece does not cover', () => {
  const random = randomNumbers(77);
  let [covered, uncovered] = [0, 0];
  for (const rules of KINDS_OF_RULES.slice(0, 1)) {
    for (const known of knownBlocks()) {
      for (const { piece: cut, need } of cutsOf(known, rules)) {
        const slip = randomSlip(random, 0.35, 4);
        const sewn = placeSewFlip(cut, need, { shift: { x: slip.dx, y: slip.dy }, turn: slip.degrees });
        // Between the two: a part too narrow to be told.
        if (Math.abs(sewn.margin) < 0.01) continue;
        expect(coversByHand(laidTrue(cut, need), need, slip)).toBe(sewn.margin > 0);
        expect(sewn.uncovered.length === 0).toBe(sewn.margin > 0);
        expect(total(sewn.uncovered)).toBeLessThanOrEqual(area(need.needed) + 1e-9);
        if (sewn.margin > 0) covered += 1;
        else uncovered += 1;
      }
    }
  }
  expect(Math.min(covered, uncovered)).toBeGreaterThan(100);
});
