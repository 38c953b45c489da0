import { describe, expect, test } from 'vitest';
import { type CutRules, cutPieces, patchNeeds, placeSewFlip } from '../src/index.ts';
import { block, rectangle, USUAL } from './blocks.ts';

// The trade's sizes; a published value stands with its source. Sizes with allowance only have no spare.

const ALLOWANCE_ONLY: CutRules = { allowance: 0.25, spare: 0, turn: 0, roundUpTo: 1 / 8 };
const cut = (drawn: ReturnType<typeof block>, rules: CutRules) =>
  cutPieces({ ...drawn, rules, clothOf: () => null });

/** Two half-square triangles make a square of the given side. */
const halves = (side: number) => block(rectangle(side, side), [[0, side, side, 0]]);

describe('rectangles', () => {
  // Quilting on the Square, Basics of paper piecing: finished patch + 1 in each way, 2 × 4 → 3 × 5.
  test('with the usual spare: the finished patch + 1 in each way', () => {
    const pieces = cut(block(rectangle(4, 4), [[2, 0, 2, 4]]), USUAL);
    for (const piece of pieces) {
      expect([piece.width, piece.height].sort()).toEqual([3, 5]);
      expect(piece.toleranceShift).toBeCloseTo(0.25, 12);
    }
  });

  // K. Combs, Rotary cutting math (karencombs.com, ID 31): squares + 1/2, 3 → 3 1/2.
  test('with allowance only: + 1/2', () => {
    const [piece] = cut(block(rectangle(3, 3)), ALLOWANCE_ONLY);
    expect(piece).toMatchObject({ shape: 'rectangle', width: 3.5, height: 3.5 });
    expect(piece!.toleranceShift).toBeCloseTo(0, 12);
  });
});

describe('half-square triangles', () => {
  // North Hampshire Quilters, hblk402b: 2 → 2 7/8, 3 → 3 7/8. The exact constant is (2 + √2) ÷ 4 = 0.853553.
  test.each([
    [2, 2.875],
    [3, 3.875],
    [4, 4.875],
  ])('finished %d in: one square of %d in for two', (side, size) => {
    const pieces = cut(halves(side), ALLOWANCE_ONLY);
    expect(pieces).toHaveLength(2);
    for (const piece of pieces)
      expect(piece).toMatchObject({ shape: 'half-rectangle', width: size, height: size });
  });

  // Corner setting triangles are half-square triangles with a side of B ÷ √2: the chart at lukas.is-a-geek.org/tani (the
  // 6 in row also Moonlight Quilters, the 12 in row also Pine Meadows), all rounded up to eighths.
  test.each([
    [6, 5.125],
    [8, 6.625],
    [9, 7.25],
    [10, 8],
    [12, 9.375],
  ])('corner setting triangles for blocks of %d in: a square of %d in', (side, size) => {
    for (const piece of cut(halves(side / Math.SQRT2), ALLOWANCE_ONLY))
      expect(piece).toMatchObject({ shape: 'half-rectangle', width: size, height: size });
  });

  test('one alone is cut as a rectangle: there is no use for the other half', () => {
    const [fabric, other] = ['sea', 'sand'].map((id) => ({
      id,
      name: id,
      usableWidth: 40,
      directional: false,
    }));
    const request = {
      ...halves(2),
      rules: ALLOWANCE_ONLY,
      clothOf: (patch: number) => (patch === 0 ? fabric! : other!),
    };
    expect(cutPieces(request).map(({ shape }) => shape)).toEqual(['rectangle', 'rectangle']);
    expect(cutPieces({ ...request, copies: 2 }).map(({ shape }) => shape)).toEqual([
      'half-rectangle',
      'half-rectangle',
    ]);
  });
});

describe('quarter-square triangles', () => {
  const hourglass = (side: number) =>
    block(rectangle(side, side), [
      [0, 0, side, side],
      [0, side, side, 0],
    ]);

  /** Of a triangle that is a quarter of a square of the given side. */
  const toleranceOf = (side: number, square: number) => {
    const drawn = hourglass(side);
    const leg = square / Math.SQRT2;
    return patchNeeds(drawn.arrangement, drawn.plan, 0.25).map((need) => {
      const middle = need.finished.reduce((sum, { x, y }) => ({ x: sum.x + x / 3, y: sum.y + y / 3 }), {
        x: 0,
        y: 0,
      });
      // The right angle is in the middle of the block: the width starts there, 45° before the direction of the patch.
      const angle = (Math.atan2(middle.y - side / 2, middle.x - side / 2) * 180) / Math.PI - 45;
      return placeSewFlip({ shape: 'half-rectangle', width: leg, height: leg, angle }, need).margin;
    });
  };

  // The exact constant is (1 + √2) ÷ 2 = 1.207107. Side setting triangles: B√2 + the same.
  test.each([4, 8, 6 * Math.SQRT2, 12 * Math.SQRT2])(
    'the long side, finished %d in, + 1.207107 is just enough',
    (side) => {
      const margins = toleranceOf(side, side + (1 + Math.SQRT2) / 2);
      expect(margins).toHaveLength(4);
      for (const margin of margins) expect(margin).toBeCloseTo(0, 12);
    },
  );

  // K. Combs, Rotary cutting math: + 1 1/4, 4 → 5 1/4. Side setting triangles: the chart at lukas.is-a-geek.org/tani.
  test.each([
    [4, 5.25],
    [6 * Math.SQRT2, 9.75],
    [8 * Math.SQRT2, 12.625],
    [9 * Math.SQRT2, 14],
    [10 * Math.SQRT2, 15.5],
    [12 * Math.SQRT2, 18.25],
  ])('finished %d in: a square of %d in covers', (side, square) => {
    for (const margin of toleranceOf(side, square)) expect(margin).toBeGreaterThan(0);
    for (const margin of toleranceOf(side, square - 0.125))
      expect(margin).toBeLessThan(square === 15.5 ? 0.01 : 0);
  });
});
