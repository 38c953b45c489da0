import { area, contains } from '@seamwright/geometry';
import { describe, expect, test } from 'vitest';
import { type Block, block, knownBlocks, type Line, rectangle } from '../../test/blocks.ts';
import { patchNeeds } from '../sizes/patch-needs.ts';
import { type LayerRegion, thickest } from './layer-regions.ts';
import { bulkMap, type Pressing } from './layers.ts';

const bulkOf = (
  { arrangement, plan }: Block,
  pressing: Pressing | readonly Pressing[] = 'second',
  allowance = 0.25,
) =>
  bulkMap({
    arrangement,
    plan,
    allowance,
    pressingOf: (join) => (typeof pressing === 'string' ? pressing : pressing[join]!),
  });

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

describe('a partial seam by hand: a square of 2 in, four oblongs of 4 × 2 in round it', () => {
  const windmill = block(rectangle(6, 6), [
    [0, 2, 4, 2],
    [4, 0, 4, 4],
    [2, 4, 6, 4],
    [2, 2, 2, 6],
  ]);
  // The first oblong is sewn to half of the square, then come the others, each with a whole seam.
  const outwards = ['first', 'second', 'second', 'second'] as const;
  const inwards = ['second', 'first', 'first', 'first'] as const;

  test('that is how it is sewn', () => {
    const { sections, joins } = windmill.plan;
    expect(joins.map(({ partial }) => partial)).toEqual([true, false, false, false]);
    expect(sections.map(({ letter, outline }) => [letter, area(outline)])).toEqual([
      ['A', 8],
      ['B', 4],
      ['C', 8],
      ['D', 8],
      ['E', 8],
    ]);
    expect(joins[0]!.units).toEqual(['A', 'B']);
  });

  // All fabric: 2.5 × 2.5 + 4 × 4.5 × 2.5 = 51.25. All that it covers: 6.5 × 6.5 = 42.25. The four seams are alike, each 4 in from
  // where it ends on the next to the block's edge, and 0.25 beyond.

  test('pressed away from the square: three along the seams, five where a seam ends on the next', () => {
    // Under the oblong of the next seam: it, its own allowance, and the three of the seam that ends there: 5, over 0.25 × 0.25.
    // Under each oblong 4.25 × 0.25 of three layers without that one place: 1 in². In all 38 + 3 × 4 + 5 × 0.25 = 51.25.
    expect(areas(bulkOf(windmill, outwards))).toEqual({ 1: 38, 3: 4, 5: 0.25 });
  });

  test('pressed towards the square: seven where a seam ends on the next', () => {
    // There the three of the seam, the same three folded along the next one, and that one's oblong. Such a place lies in the strips
    // of both seams, so each 4.25 × 0.25 has two. In all 38.25 + 3 × 3.75 + 7 × 0.25 = 51.25.
    expect(areas(bulkOf(windmill, inwards))).toEqual({ 1: 38.25, 3: 3.75, 7: 0.25 });
  });

  test('pressed open: two on either side, four where a seam ends on the next', () => {
    // There, on both sides of the seam that ends, two folded to four. Each strip of 4.25 × 0.5 has four such places, each place lies
    // in two strips. In all 34.25 + 2 × 7.5 + 4 × 0.5 = 51.25.
    expect(areas(bulkOf(windmill, 'open'))).toEqual({ 1: 34.25, 2: 7.5, 4: 0.5 });
  });

  test('nothing tells the seam that was closed last from the other three', () => {
    for (const pressings of [outwards, inwards, 'open'] as const) {
      const regions = bulkOf(windmill, pressings, 0.4);
      const layersAt = (x: number, y: number) =>
        regions
          .filter(({ polygon }) => contains(polygon, { x, y }) !== 'outside')
          .map(({ layers }) => layers);
      for (let x = -0.387; x < 6.4; x += 0.097)
        for (let y = -0.391; y < 6.4; y += 0.097)
          expect(layersAt(6 - y, x), `${x} ${y}`).toEqual(layersAt(x, y));
    }
  });
});

test('seams left open inside one another: away from their ends all are like any seam, three layers on one side', () => {
  /** The seams of a windmill, a square of `size` within four oblongs, from its top left corner on. */
  const windmill = (size: number, at: number): Line[] => [
    [at, at + size, at + 2 * size, at + size],
    [at + 2 * size, at, at + 2 * size, at + 2 * size],
    [at + size, at + 2 * size, at + 3 * size, at + 2 * size],
    [at + size, at + size, at + size, at + 3 * size],
  ];
  const turningBack = windmill(4, 0).map(([x, y, u, v]): Line => [24 - x, y, 24 - u, v]);
  const blocks = [
    // The square in the middle is a windmill itself.
    block(rectangle(18, 18), [...windmill(6, 0), ...windmill(2, 6)]),
    block(rectangle(24, 12), [...windmill(4, 0), ...turningBack, [12, 0, 12, 12]], 'side by side'),
  ];
  for (const drawn of blocks) {
    const { arrangement, plan } = drawn;
    expect(plan.joins.filter(({ partial }) => partial)).toHaveLength(2);
    for (const pressing of ['first', 'second', 'open'] as const) {
      const regions = bulkOf(drawn, pressing);
      const layersAt = (x: number, y: number) =>
        regions
          .filter(({ polygon }) => contains(polygon, { x, y }) !== 'outside')
          .map(({ layers }) => layers);
      for (const { from, to, left, right } of arrangement.edges) {
        if (left < 0 || right < 0) continue;
        const [a, b] = [arrangement.vertices[from]!.at, arrangement.vertices[to]!.at];
        // Off the middle, where the sewing stops.
        const [x, y] = [0.55 * a.x + 0.45 * b.x, 0.55 * a.y + 0.45 * b.y];
        const off = a.x === b.x ? [0.1, 0] : [0, 0.1];
        const sides = [-1, 1].flatMap((side) => layersAt(x + side * off[0]!, y + side * off[1]!));
        expect(sides.sort(), `${pressing} ${x} ${y}`).toEqual(pressing === 'open' ? [2, 2] : [1, 3]);
      }
      const cloth = regions.reduce((sum, { polygon, layers }) => sum + layers * area(polygon), 0);
      const needed = patchNeeds(arrangement, plan, 0.25).reduce((sum, need) => sum + area(need.needed), 0);
      expect(cloth).toBeCloseTo(needed, 4);
    }
  }
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
