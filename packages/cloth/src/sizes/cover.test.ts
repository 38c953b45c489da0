import { expect, test } from 'vitest';
import { block, knownBlocks, rectangle, USUAL } from '../../test/blocks.ts';
import { cutsOf } from '../../test/cover-check.ts';
import { coversByHand, laidTrue, worstSlips } from '../../test/placing-by-hand.ts';
import { tolerances } from './cover.ts';
import { patchNeeds } from './patch-needs.ts';

test('a 3 × 3 for a 2 × 2: by hand', () => {
  const drawn = block(rectangle(2, 2));
  const [need] = patchNeeds(drawn.arrangement, drawn.plan, 0.25);
  const piece = { shape: 'rectangle' as const, width: 3, height: 3, angle: 0 };
  const { toleranceShift, toleranceAngle } = tolerances(piece, need!.needed);
  expect(toleranceShift).toBeCloseTo(0.25, 12);
  // The corner of the 2 1/2 in square to be covered, at 45° and 1.25·√2, meets the side at 1.5 when it is
  // arccos(1.5 ÷ (1.25·√2)) = 31.948° off it.
  expect(toleranceAngle).toBeCloseTo(45 - (Math.acos(1.5 / (1.25 * Math.SQRT2)) * 180) / Math.PI, 9);
  // A 3 5/8 in square covers it all the way round: half of it is more than 1.25·√2 = 1.768.
  expect(tolerances({ ...piece, width: 3.625, height: 3.625 }, need!.needed).toleranceAngle).toBe(180);
  expect(tolerances({ ...piece, width: 2 }, need!.needed)).toEqual({
    toleranceShift: -0.25,
    toleranceAngle: 0,
  });
});

test('each tolerance, alone, is as far as the piece may be off: it covers there, and a hair farther it does not', () => {
  let told = 0;
  for (const known of knownBlocks()) {
    for (const { piece, need } of cutsOf(known, USUAL)) {
      const { toleranceShift, toleranceAngle } = piece;
      expect(toleranceShift).toBeGreaterThan(USUAL.spare - 1e-6);
      const place = laidTrue(piece, need);
      const covers = (shift: number, turn: number) =>
        worstSlips(place, need, shift, turn).every((slip) => coversByHand(place, need, slip, 1e-9));
      expect(covers(toleranceShift, 0)).toBe(true);
      expect(covers(toleranceShift + 1e-6, 0)).toBe(false);
      if (toleranceAngle === 180) continue;
      told += 1;
      expect(covers(0, toleranceAngle - 1e-6)).toBe(true);
      expect(covers(0, toleranceAngle + 1e-5)).toBe(false);
    }
  }
  expect(told).toBeGreaterThan(500);
});
