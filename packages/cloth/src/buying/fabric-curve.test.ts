import { ok, sentence } from '@seamwright/geometry';
import { expect, it } from 'vitest';
import { piece } from '../../test/pieces.ts';
import { load } from '../../test/solver.ts';
import { fabricCurve } from './fabric-curve.ts';
import { PLAIN_RULES } from './plan-cloths.ts';

const options = { blocks: 40, cloths: [], rules: PLAIN_RULES };
/** A block of one patch, half an inch larger when cut. */
const plain = (size: number) => ok([piece('A1', size + 0.5, size + 0.5)]);

it('the fabric needed jumps where one piece fewer fits into a strip', async () => {
  const curve = await fabricCurve([9, 9.5, 10, 12], plain, options, load);
  // By hand, 40 squares at 40 in: 9½ → 4 a strip, 10 strips, 95 in; 10 → 4, 10, 100; 10½ → 3, 14, 147; 12½ → 3, 14, 175.
  expect(
    curve.ok && curve.value.map(({ size, lengthInches, isPastCliff }) => [size, lengthInches, isPastCliff]),
  ).toEqual([
    [9, 95, false],
    [9.5, 100, false],
    [10, 147, true],
    [12, 175, false],
  ]);
  expect(curve.ok && curve.value.map(({ buyYards }) => buyYards)).toEqual([2.75, 2.875, 4.125, 4.875]);
});

it('sizes that cannot be cut are named', async () => {
  const text = async (sizes: readonly number[]) => {
    const curve = await fabricCurve(sizes, plain, options);
    return curve.ok ? '' : sentence(curve.problem);
  };
  expect(await text([6, 50])).toBe(
    'A piece is wider than its fabric both ways (at 50 in). End with a smaller size.',
  );
  expect(await text([6, 6])).toBe('The sizes do not rise (6). Give them from small to large, above 0.');
  expect(await text([Number.NaN])).toBe(
    'The sizes do not rise (NaN). Give them from small to large, above 0.',
  );
});
