import { sentence } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import type { Strip } from '../buying/plan-strips.ts';
import { batchSteps } from './batch.ts';

const strip = (height: number, count: number, width: number, each: number): Strip => ({
  height,
  count,
  cuts: [{ width, count: each }],
  leftover: 40 - width * each,
});

describe('batch cutting', () => {
  it('takes strips of one height together, the highest first', () => {
    const steps = batchSteps([strip(3, 2, 8, 5), strip(5, 1, 5, 8), strip(3, 1, 8, 2)], 2);
    expect(steps.ok && steps.value).toMatchObject([
      { height: 5, strips: 1, groups: [{ strips: 1, runs: 8, leftover: 0 }] },
      {
        height: 3,
        strips: 3,
        groups: [
          { strips: 2, runs: 5 },
          { strips: 1, runs: 2, leftover: 24 },
        ],
      },
    ]);
  });

  it.each([
    [1, 60],
    [2, 32],
    [4, 16],
    [8, 8],
  ])('in %i layers, 15 strips of four squares take %i runs of the cutter', (layers, runs) => {
    // By hand: 15 strips lie in 15, 8, 4 or 2 piles, each cut four times.
    const steps = batchSteps([strip(9.5, 15, 9.5, 4)], layers);
    expect(steps.ok && steps.value[0]!.groups[0]!.runs).toBe(runs);
  });

  it('trims what is less high than its strip by one run more', () => {
    const [five, four] = [
      { width: 5, count: 3 },
      { width: 4, count: 2, height: 4 },
    ];
    // By hand: 3 runs for the three of 5, 2 and 2 for the two of 4.
    const steps = batchSteps([{ height: 5, count: 1, cuts: [five, four], leftover: 17 }], 2);
    expect(steps.ok && steps.value[0]!.groups[0]!.runs).toBe(7);
  });

  it.each([0, -2, 2.5, 9, Number.NaN])('does not cut %f layers', (layers) => {
    const steps = batchSteps([], layers);
    expect(steps.ok ? '' : sentence(steps.problem)).toBe(
      `Fabric is not cut in ${layers} layers. Choose from 1 to 8.`,
    );
  });
});
