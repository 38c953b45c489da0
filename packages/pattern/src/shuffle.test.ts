import fc from 'fast-check';
import { expect, test } from 'vitest';
import { demoPattern } from './demo/demo-pattern.ts';
import { fabricsWorn, shuffledFabrics } from './shuffle.ts';

test('a shuffle puts every fabric in the place of another, each once, and depends on the seed alone', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.string({ minLength: 1 }), { minLength: 2, maxLength: 12 }),
      fc.nat(),
      (ids, seed) => {
        const instead = shuffledFabrics(ids, seed);
        expect([...instead.keys()]).toEqual(ids);
        expect([...instead.values()].sort()).toEqual([...ids].sort());
        for (const [before, after] of instead) expect(after).not.toBe(before);
        expect(shuffledFabrics(ids, seed)).toEqual(instead);
      },
    ),
    { seed: 4, numRuns: 300 },
  );
});

test('one fabric stays, and ten presses do not all shuffle alike', () => {
  expect([...shuffledFabrics(['a'], 1)]).toEqual([['a', 'a']]);
  const ways = Array.from({ length: 10 }, (_, seed) => [
    ...shuffledFabrics(['a', 'b', 'c', 'd'], seed).values(),
  ]);
  expect(new Set(ways.map((way) => way.join(''))).size).toBeGreaterThan(3);
});

test('fabrics that patches are cut from are listed in the pattern’s order', () => {
  const demo = demoPattern();
  expect(fabricsWorn(demo, null)).toEqual(demo.fabrics!.map(({ id }) => id));
  expect(fabricsWorn({ ...demo, blocks: [demo.blocks[0]!] }, null).length).toBeGreaterThan(1);
  expect(fabricsWorn(demo, 'another')).toEqual([]);
});
