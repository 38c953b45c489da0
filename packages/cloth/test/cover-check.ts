import { type CutRules, cutPieces, type PatchNeed, type PieceCut, patchNeeds } from '../src/index.ts';
import type { Block } from './blocks.ts';
import { coversByHand, laidTrue, worstSlips } from './placing-by-hand.ts';
import { randomSlip } from './slips.ts';

/** Rules of all kinds: no slack, shifts, turns, both; every rounding. */
export const KINDS_OF_RULES: readonly CutRules[] = [
  { allowance: 0.25, spare: 0.25, turn: 0, roundUpTo: 0.25 },
  { allowance: 0.25, spare: 0.25, turn: 5, roundUpTo: 0.125 },
  { allowance: 0.25, spare: 0, turn: 0, roundUpTo: 0.125 },
  { allowance: 0.375, spare: 0.125, turn: 12, roundUpTo: 0.5 },
  { allowance: 5 / 25.4, spare: 5 / 25.4, turn: 2, roundUpTo: 5 / 25.4 },
];

export interface Cut {
  readonly piece: PieceCut;
  readonly need: PatchNeed;
}

/** What is cut for a block; every second fabric lies along the grain, and four copies are made. */
export function cutsOf(block: Block, rules: CutRules): readonly Cut[] {
  const pieces = cutPieces({
    ...block,
    rules,
    clothOf: (patch) => ({ id: `${patch % 2}`, name: 'linen', usableWidth: 40, directional: false }),
    alongGrain: ({ id }) => id === '1',
    copies: 4,
  });
  const needs = patchNeeds(block.arrangement, block.plan, rules.allowance);
  return pieces.map((piece, k) => ({ piece, need: needs[k]! }));
}

/** Lays each piece `times` times at random within the slack; the names of those that once did not cover. */
export function failuresOf(
  cuts: readonly Cut[],
  { spare, turn }: CutRules,
  times: number,
  random: () => number,
): readonly string[] {
  return cuts.flatMap(({ piece, need }) => {
    const place = laidTrue(piece, need);
    for (let n = 0; n < times; n++) {
      const slip = randomSlip(random, spare, turn);
      if (!coversByHand(place, need, slip)) return [`${piece.name} ${JSON.stringify({ piece, slip })}`];
    }
    return [];
  });
}

/** Whether some slip within the slack leaves a part uncovered. */
export function failsSomewhere(piece: PieceCut, need: PatchNeed, { spare, turn }: CutRules): boolean {
  const place = laidTrue(piece, need);
  return worstSlips(place, need, spare, turn).some((slip) => !coversByHand(place, need, slip));
}
