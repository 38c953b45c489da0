import { sectionForShades } from '@seamwright/sewing';
import { expect, test } from 'vitest';
import { block, knownBlocks, rectangle } from '../../test/blocks.ts';
import { showThrough } from './show-through.ts';

test('a strip of three: the light one in the middle is safe when it is sewn first', () => {
  const { arrangement, plan } = block(rectangle(6, 3), [
    [2, 0, 2, 3],
    [4, 0, 4, 3],
  ]);
  const across = arrangement.patches
    .map(({ index, heart }) => ({ index, x: heart.x }))
    .sort((p, q) => p.x - q.x);
  const [left, middle, right] = across.map(({ index }) => index) as [number, number, number];
  const lightnessOf = (patch: number) => (patch === middle ? 0.9 : 0.2);

  const fromTheLeft = { ...plan.sections[0]!, order: [left, middle, right] };
  const found = showThrough(arrangement, { sections: [fromTheLeft] }, lightnessOf);
  // The left one is under the middle one; over the right one's seam the dark one lies on top.
  expect(found).toMatchObject([{ patch: middle, under: [{ patch: left }] }]);
  const [edge] = found[0]!.under[0]!.edges.map((e) => arrangement.edges[e]!);
  expect([edge!.left, edge!.right].sort()).toEqual([left, middle].sort());
  expect(showThrough(arrangement, { sections: [fromTheLeft] }, lightnessOf, 0.8)).toEqual([]);
  expect(showThrough(arrangement, { sections: [fromTheLeft] }, () => undefined)).toEqual([]);

  const best = sectionForShades(arrangement, fromTheLeft, lightnessOf);
  expect(best.order[0]).toBe(middle);
  expect(showThrough(arrangement, { sections: [best] }, lightnessOf)).toEqual([]);
});

test('as many patches as the costs of the order count, and in the best order no more than in the planned one', () => {
  let avoided = 0;
  for (const { arrangement, plan, name } of knownBlocks()) {
    const lightnessOf = (patch: number) => ((patch * 7) % 5) / 4;
    for (const section of plan.sections) {
      const best = sectionForShades(arrangement, section, lightnessOf);
      const count = showThrough(arrangement, { sections: [best] }, lightnessOf).length;
      expect(count, name).toBe(best.costs!.showThrough);
      const planned = showThrough(arrangement, { sections: [section] }, lightnessOf).length;
      if (best.optimal) expect(count).toBeLessThanOrEqual(planned);
      if (count < planned) avoided += 1;
    }
  }
  expect(avoided).toBeGreaterThan(10);
});
