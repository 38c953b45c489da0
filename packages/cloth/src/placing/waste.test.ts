import { expect, test } from 'vitest';
import { block, rectangle, USUAL } from '../../test/blocks.ts';
import { cutPieces } from '../sizes/cut-pieces.ts';
import { patchNeeds } from '../sizes/patch-needs.ts';
import { wasteOf, wasteOfAll } from './waste.ts';

const wasteFor = (drawn: ReturnType<typeof block>) =>
  wasteOf(
    cutPieces({ ...drawn, rules: USUAL, clothOf: () => null }),
    patchNeeds(drawn.arrangement, drawn.plan, USUAL.allowance),
  );

test('two 2 × 4 patches: 3 × 5 is cut for 2 1/2 × 4 1/2, and a plain chunk is no larger', () => {
  const waste = wasteFor(block(rectangle(4, 4), [[2, 0, 2, 4]]));
  expect(waste).toMatchObject({ cut: 30, chunks: 30 });
  expect(waste.needed).toBeCloseTo(22.5, 9);
  expect(waste.wastePercent).toBeCloseTo(25, 9);
});

test('two halves of a 4 in square: one 5 3/4 in square for both, where chunks take two of 5 in', () => {
  const waste = wasteFor(block(rectangle(4, 4), [[0, 4, 4, 0]]));
  expect(waste.cut).toBeCloseTo(5.75 ** 2, 9);
  expect(waste.chunks).toBeCloseTo(50, 9);
  expect(waste.wastePercent).toBeLessThan(waste.chunkWastePercent);
});

test('a piece without its need is a bug, not a number', () => {
  const drawn = block(rectangle(2, 2));
  expect(() => wasteOf(cutPieces({ ...drawn, rules: USUAL, clothOf: () => null }), [])).toThrow(RangeError);
  expect(wasteOf([], []).wastePercent).toBe(0);
});

test('of several blocks, each counts as often as it is sewn', () => {
  const half = { cut: 10, needed: 5, wastePercent: 50, chunks: 20, chunkWastePercent: 75 };
  const none = { cut: 6, needed: 6, wastePercent: 0, chunks: 8, chunkWastePercent: 25 };
  // By hand: 3 × 10 + 6 = 36 cut, 3 × 5 + 6 = 21 needed, 3 × 20 + 8 = 68 in chunks.
  expect(
    wasteOfAll([
      { waste: half, copies: 3 },
      { waste: none, copies: 1 },
    ]),
  ).toEqual({ cut: 36, needed: 21, wastePercent: 1500 / 36, chunks: 68, chunkWastePercent: 4700 / 68 });
});
