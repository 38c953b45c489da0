import { arrange } from '@seamwright/arrangement';
import { area } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bareDrawings, must } from '../../test/drawings.ts';
import { splitsOf, withLines } from '../../test/exact.ts';
import { expectSound } from '../../test/sound.ts';
import { outlineOf } from '../checks.ts';
import { equilateralTriangle, rightTriangle, square } from '../outlines.ts';
import { divideInBands, divideInFan } from './divide-patch.ts';

const block = must(square(8));
const patchesOf = (drawing: Parameters<typeof arrange>[0]) => must(arrange(drawing)).patches;

describe('bands', () => {
  it('are of one width, parallel to the side', () => {
    expect(splitsOf(must(divideInBands(block, outlineOf(block), 4, 0)))).toEqual([
      [0, 2, 8, 2],
      [0, 4, 8, 4],
      [0, 6, 8, 6],
    ]);
    const triangle = must(rightTriangle(6, 6));
    const side = outlineOf(triangle).findIndex(({ x, y }) => x === 0 && y === 6);
    expect(splitsOf(must(divideInBands(triangle, outlineOf(triangle), 3, side)))).toEqual([
      [2, 2, 2, 6],
      [4, 4, 4, 6],
    ]);
  });

  it('stay within the patch, their ends on its lines', () => {
    const halves = withLines(block, [0, 0, 8, 8]);
    const upper = patchesOf(halves).find(({ polygon }) => polygon.some(({ x, y }) => x === 8 && y === 0))!;
    const side = upper.polygon.findIndex(({ x, y }) => x === 0 && y === 0);
    const drawing = must(divideInBands(halves, upper.polygon, 2, side));
    expect(splitsOf(drawing)).toContainEqual([4, 4, 8, 4]);
    expect(patchesOf(drawing)).toHaveLength(3);
    expectSound(drawing);
  });

  it('of a whole block have areas that sum up, in outlines of all kinds', () => {
    fc.assert(
      fc.property(bareDrawings, fc.nat({ max: 7 }), fc.integer({ min: 2, max: 9 }), (bare, side, count) => {
        const drawing = must(divideInBands(bare, outlineOf(bare), count, side % bare.outline.length));
        expectSound(drawing);
        const patches = patchesOf(drawing);
        expect(patches.length).toBeGreaterThanOrEqual(count);
        const sum = patches.reduce((total, patch) => total + patch.area, 0);
        expect(sum).toBeCloseTo(area(outlineOf(bare)), 9);
        expect(must(arrange(drawing)).findings).toEqual([]);
      }),
      { seed: 151, numRuns: 60 },
    );
  });

  it.each([1, 2.5, 61, NaN, -3])('are not %d', (count) => {
    expect(divideInBands(block, outlineOf(block), count, 0).ok).toBe(false);
  });

  it('are refused where they would be too narrow, or the side is not there', () => {
    expect(divideInBands(must(square(0.25)), outlineOf(must(square(0.25))), 60, 0).ok).toBe(false);
    expect(divideInBands(block, outlineOf(block), 3, 4).ok).toBe(false);
  });
});

describe('fans', () => {
  it('divide the angle of a corner into equal parts', () => {
    const triangle = must(equilateralTriangle(6));
    const [corner] = outlineOf(triangle);
    const drawing = must(divideInFan(triangle, outlineOf(triangle), corner!, 1));
    expect(splitsOf(drawing)).toEqual([[3, 0, 3, 5.196152]]);
    const three = must(divideInFan(block, outlineOf(block), { x: 0, y: 8 }, 3));
    // 22.5°, 45° and 67.5°: tan 22.5° = √2 − 1.
    const reach = Math.round(8 * (Math.SQRT2 - 1) * 1e6) / 1e6;
    expect(splitsOf(three)).toEqual([
      [reach, 0, 0, 8],
      [8, 0, 0, 8],
      [8, 8 - reach, 0, 8],
    ]);
    expect(patchesOf(three)).toHaveLength(4);
    expectSound(three);
  });

  it('divide a straight angle from a side, and go all round from inside', () => {
    expect(splitsOf(must(divideInFan(block, outlineOf(block), { x: 4, y: 8 }, 3)))).toEqual([
      [4, 0, 4, 8],
      [0, 4, 4, 8],
      [8, 4, 4, 8],
    ]);
    const round = must(divideInFan(block, outlineOf(block), { x: 4, y: 4 }, 8, 0));
    expect(patchesOf(round)).toHaveLength(8);
    expectSound(round);
  });

  it('end where they first leave the patch', () => {
    const halves = withLines(block, [0, 4, 8, 4]);
    const lower = patchesOf(halves).find(({ polygon }) => polygon.some(({ y }) => y === 8))!;
    expect(splitsOf(must(divideInFan(halves, lower.polygon, { x: 0, y: 8 }, 1)))).toContainEqual([
      4, 4, 0, 8,
    ]);
  });

  it('are refused outside the patch, and in numbers that are none', () => {
    expect(divideInFan(block, outlineOf(block), { x: 9, y: 4 }, 2).ok).toBe(false);
    expect(divideInFan(block, outlineOf(block), { x: 0, y: 0 }, 0).ok).toBe(false);
    expect(divideInFan(block, outlineOf(block), { x: 4, y: 4 }, 4, NaN).ok).toBe(false);
  });
});
