import { area } from '@seamwright/geometry';
import { describe, expect, test } from 'vitest';
import { type Block, block, knownBlocks, rectangle } from '../../test/blocks.ts';
import { type LayerRegion, thickest } from './layer-regions.ts';
import { bulkMap, type Pressing } from './layers.ts';

const bulkOf = ({ arrangement, plan }: Block, pressing: Pressing = 'second', allowance = 0.25) =>
  bulkMap({ arrangement, plan, allowance, pressingOf: () => pressing });

/** Square inches by number of layers. */
function areas(regions: readonly LayerRegion[]): Record<number, number> {
  const sums: Record<number, number> = {};
  for (const { polygon, layers } of regions) sums[layers] = (sums[layers] ?? 0) + area(polygon);
  return Object.fromEntries(
    Object.entries(sums).map(([layers, sum]) => [layers, Math.round(sum * 1e6) / 1e6]),
  );
}

/** Four patches of 2 in; in the second row the left or the right one is sewn on last. */
function fourPatch(nested: boolean): Block {
  const drawn = block(rectangle(4, 4), [
    [2, 0, 2, 4],
    [0, 2, 4, 2],
  ]);
  const sideOf = (patch: number) => {
    const { x, y } = drawn.arrangement.patches[patch]!.heart;
    // Along the seam between the sections: which half of the block, counted the same way in both.
    const [a, b] = drawn.plan.sections[0]!.order.map((p) => drawn.arrangement.patches[p]!.heart);
    return Math.abs(a!.y - b!.y) < 1 ? x > 2 : y > 2;
  };
  const sections = drawn.plan.sections.map((section, k) => {
    const wanted = k === 1 && nested;
    const [p, q] = section.order as [number, number];
    const order = sideOf(q) === wanted ? [p, q] : [q, p];
    return { ...section, order, sewLines: [{ ...section.sewLines[0]!, patch: order[1]! }] };
  });
  return { ...drawn, plan: { ...drawn.plan, sections } };
}

describe('by hand', () => {
  test('one patch: one layer, the allowance with it', () => {
    expect(areas(bulkOf(block(rectangle(3, 2))))).toEqual({ 1: 3.5 * 2.5 });
  });

  test('one seam: the newer patch and both allowances under it', () => {
    const regions = bulkOf(block(rectangle(4, 4), [[2, 0, 2, 4]]));
    expect(areas(regions)).toEqual({ 1: 4.25 * 4.5, 3: 0.25 * 4.5 });
  });

  test('four patches, all seams to one side: nine layers in the corner', () => {
    // On the side that the join is pressed to, in the corner: three of that section, its three folded under, three of the other.
    const regions = bulkOf(fourPatch(false));
    expect(thickest(regions)[0]!.layers).toBe(9);
    expect(areas(thickest(regions))).toEqual({ 9: 0.25 * 0.25 });
    // The join elsewhere and the seams outside it: 0.25 × (4.5 − 0.25) each, of the seams also on the side without allowances.
    expect(areas(regions)[3]).toBeCloseTo(0.25 * 4.25 + 0.25 * 4.25, 6);
  });

  test('the two seams pressed apart: 5 and 7 side by side', () => {
    // Under the seam that is folded: 3 + 3 + 1; beside it, under the other section's: 1 + 1 + 3.
    const found = areas(bulkOf(fourPatch(true)));
    expect(found).toMatchObject({ 5: 0.0625, 7: 0.0625 });
    expect(found[9]).toBeUndefined();
  });

  test('the join pressed open: 6 on either side of it', () => {
    // Each section's three, and the same three folded under.
    const found = areas(bulkOf(fourPatch(false), 'open'));
    expect(found[6]).toBeCloseTo(2 * 0.0625, 6);
    expect(Math.max(...Object.keys(found).map(Number))).toBe(6);
  });
});

test('fabric is neither made nor lost by sewing, and no place of the block is bare', () => {
  for (const known of knownBlocks().filter(({ arrangement }) => arrangement.patches.length <= 13)) {
    for (const pressing of ['first', 'open'] as const) {
      const regions = bulkOf(known, pressing);
      const cloth = regions.reduce((sum, { polygon, layers }) => sum + layers * area(polygon), 0);
      const flat = bulkMap({
        ...known,
        plan: { ...known.plan, joins: [] },
        allowance: 0.25,
        pressingOf: () => pressing,
      }).reduce((sum, { polygon, layers }) => sum + layers * area(polygon), 0);
      expect(Math.abs(cloth - flat), known.name).toBeLessThan(1e-4 * flat);
      const covered = regions.reduce((sum, { polygon }) => sum + area(polygon), 0);
      if (known.plan.unheld.length === 0) {
        const finished = known.arrangement.patches.reduce((sum, patch) => sum + patch.area, 0);
        expect(covered).toBeGreaterThan(finished - 1e-4);
      }
    }
  }
});
