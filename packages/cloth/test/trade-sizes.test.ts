import { describe, expect, test } from 'vitest';
import { type CutRules, cutPieces } from '../src/index.ts';
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
