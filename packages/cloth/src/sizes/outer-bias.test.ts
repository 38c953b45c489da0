import { describe, expect, test } from 'vitest';
import { block, knownBlocks, rectangle, USUAL } from '../../test/blocks.ts';
import type { Cloth } from '../types.ts';
import { cutPieces } from './cut-pieces.ts';

const along = (straight: boolean): Cloth => ({
  ...{ id: 'sea', name: 'Sea', usableWidth: 40, directional: false, straight },
});

/** Names of the pieces with the bias on the outside. */
const biased = (drawn: ReturnType<typeof block>, cloth = along(false)) =>
  cutPieces({ ...drawn, rules: USUAL, clothOf: () => cloth }).flatMap(({ name, outerBias }) =>
    outerBias ? [name] : [],
  );

const known = (name: string) => knownBlocks().find((each) => each.name === name)!;

describe('edges on the block’s outside', () => {
  // Common practice: such triangles are quarters of a square, so that their long side is along the grain.
  test('of quarter-square triangles are on the bias when a leg is along the sew line', () => {
    expect(biased(known('hourglass'))).toEqual(['A1', 'A2', 'B1', 'B2']);
  });

  // Exact: the square's own sides are the outside.
  test('of half-square triangles and of rectangles are not', () => {
    expect(biased(block(rectangle(3, 3), [[0, 3, 3, 0]]))).toEqual([]);
    expect(biased(known('rail-fence'))).toEqual([]);
    expect(biased(known('log-cabin'))).toEqual([]);
  });

  test('never are where pieces lie along the block’s upright', () => {
    for (const drawn of knownBlocks())
      expect([drawn.name, biased(drawn, along(true))]).toEqual([drawn.name, []]);
  });

  test('say nothing where the upright would not mend it: the sides of a hexagon are 30° off', () => {
    // From memory: a regular hexagon, its height √3 times its side.
    const [h, side] = [3 * Math.sqrt(3), 6];
    const hexagon = [
      [side / 2, 0],
      [side * 1.5, 0],
      [side * 2, h],
      [side * 1.5, 2 * h],
      [side / 2, 2 * h],
      [0, h],
    ] as const;
    const names = biased(block(hexagon, [[0, h, side * 2, h]]));
    expect(names).toEqual([]);
  });
});
