import { sectionForShades } from '@seamwright/sewing';
import { expect, test } from 'vitest';
import { block, knownBlocks, rectangle } from '../../test/blocks.ts';
import { shadePins } from './shade-pins.ts';
import { showThrough } from './show-through.ts';

test('a strip of three: the light one in the middle is pinned before both dark ones', () => {
  const { arrangement, plan } = block(rectangle(6, 3), [
    [2, 0, 2, 3],
    [4, 0, 4, 3],
  ]);
  const [left, middle, right] = arrangement.patches
    .map(({ index, heart }) => ({ index, x: heart.x }))
    .sort((p, q) => p.x - q.x)
    .map(({ index }) => index) as [number, number, number];
  const section = { ...plan.sections[0]!, order: [left, middle, right] };
  const lightnessOf = (patch: number) => (patch === middle ? 0.9 : 0.2);
  expect(shadePins(arrangement, section, lightnessOf, 0.1)).toEqual({
    letter: 'A',
    now: 1,
    better: 0,
    // Before the left one alone, it could still come after the right one.
    pins: [
      { kind: 'before', patch: middle, than: left },
      { kind: 'before', patch: middle, than: right },
    ],
  });
  // The maker wants the dark one first: no order avoids it.
  const pins = [{ kind: 'first', patch: left }] as const;
  expect(shadePins(arrangement, section, lightnessOf, 0.1, pins)).toMatchObject({
    now: 1,
    better: 1,
    pins: [],
  });
  expect(shadePins(arrangement, section, lightnessOf, 0.8)).toMatchObject({ now: 0, pins: [] });
});

test('the pins lead to an order with as few as is said', () => {
  let taken = 0;
  for (const { arrangement, plan, name } of knownBlocks()) {
    const lightnessOf = (patch: number) => ((patch * 7) % 5) / 4;
    for (const section of plan.sections) {
      const { now, better, pins } = shadePins(arrangement, section, lightnessOf, 0.1);
      if (pins.length === 0) continue;
      taken += 1;
      expect(better, name).toBeLessThan(now);
      const led = sectionForShades(arrangement, section, () => undefined, pins);
      const left = showThrough(arrangement, { sections: [led] }, lightnessOf, 0.1).length;
      expect(left, name).toBeLessThanOrEqual(better);
    }
  }
  expect(taken).toBeGreaterThan(10);
});
