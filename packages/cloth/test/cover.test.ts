import { describe, expect, test } from 'vitest';
import type { PieceCut } from '../src/index.ts';
import { knownBlocks } from './blocks.ts';
import { cutsOf, failsSomewhere, failuresOf, KINDS_OF_RULES } from './cover-check.ts';
import { randomNumbers } from './slips.ts';

const BLOCKS = knownBlocks();
const CASES = KINDS_OF_RULES.flatMap((rules) =>
  BLOCKS.map((block) => ({ rules, block, cuts: cutsOf(block, rules) })),
);

test('laid anywhere within the slack, sewn on and flipped, every piece covers', () => {
  const random = randomNumbers(61);
  let places = 0;
  for (const { rules, block, cuts } of CASES) {
    expect(failuresOf(cuts, rules, 20, random), block.name).toEqual([]);
    places += 20 * cuts.length;
  }
  expect(places).toBeGreaterThan(50_000);
});

test('every patch that a foundation holds has its piece', () => {
  for (const { block, cuts } of CASES) {
    const { plan, arrangement } = block;
    expect(cuts, block.name).toHaveLength(arrangement.patches.length - plan.unheld.length);
    expect(new Set(cuts.map(({ piece }) => piece.patch)).size).toBe(cuts.length);
  }
});

describe('sizes one step smaller leave something uncovered within the slack', () => {
  const smaller = (piece: PieceCut, step: number): readonly PieceCut[] => {
    const [width, height] = [piece.width - step, piece.height - step];
    // A square cut corner to corner is meant to stay one.
    const isSquare = piece.shape === 'half-rectangle' && piece.width === piece.height;
    const less = isSquare
      ? [{ ...piece, width, height }]
      : [
          { ...piece, width },
          { ...piece, height },
        ];
    return less.filter((size) => size.width > 0 && size.height > 0);
  };
  const shareThatFails = (isMeant: (piece: PieceCut) => boolean) => {
    let [fail, all] = [0, 0];
    for (const { rules, cuts } of CASES)
      for (const { piece, need } of cuts.filter((cut) => isMeant(cut.piece)))
        for (const size of smaller(piece, rules.roundUpTo)) {
          all += 1;
          if (failsSomewhere(size, need, rules)) fail += 1;
        }
    expect(all).toBeGreaterThan(100);
    return fail / all;
  };

  test('rectangles: every one', () => {
    expect(shareThatFails(({ shape }) => shape === 'rectangle')).toBe(1);
  });

  test('squares cut corner to corner: every one', () => {
    const isMeant = ({ shape, width, height }: PieceCut) => shape === 'half-rectangle' && width === height;
    expect(shareThatFails(isMeant)).toBe(1);
  });

  // A smaller one in the direction of the larger one may cover; with its own long side along the sew line it does not.
  test('other half-rectangles: most', () => {
    const isMeant = ({ shape, width, height }: PieceCut) => shape === 'half-rectangle' && width !== height;
    expect(shareThatFails(isMeant)).toBeGreaterThan(0.9);
  });
});
