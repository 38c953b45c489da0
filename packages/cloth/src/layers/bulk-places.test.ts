import { contains } from '@seamwright/geometry';
import { expect, test } from 'vitest';
import { block, knownBlocks, rectangle } from '../../test/blocks.ts';
import { bulkPlaces } from './bulk-places.ts';
import { thickest } from './layer-regions.ts';
import { bulkMap } from './layers.ts';

test('four patches: the thickest place is the middle, where all four meet', () => {
  const { arrangement, plan } = block(rectangle(4, 4), [
    [2, 0, 2, 4],
    [0, 2, 4, 2],
  ]);
  for (const scale of [1, 1.5]) {
    const bulk = { arrangement, plan, allowance: 0.25, scale, pressingOf: () => 'second' as const };
    const regions = bulkMap(bulk);
    const [first, ...others] = bulkPlaces(regions, arrangement, 0.25, scale);
    expect(first!.layers).toBe(thickest(regions)[0]!.layers);
    expect(Math.hypot(first!.at.x - 2 * scale, first!.at.y - 2 * scale)).toBeLessThan(0.25);
    expect(first!.patches).toEqual([0, 1, 2, 3]);
    // The four ends of the seams; at the block's corners a single layer lies.
    expect(others.map(({ patches }) => patches.length)).toEqual([2, 2, 2, 2]);
  }
});

test('of each block, the first is as thick as the map anywhere, and lies in a region of so many layers', () => {
  for (const { arrangement, plan, name } of knownBlocks().filter(
    ({ arrangement }) => arrangement.patches.length <= 13,
  )) {
    const regions = bulkMap({ arrangement, plan, allowance: 0.25, pressingOf: () => 'open' });
    const places = bulkPlaces(regions, arrangement, 0.25);
    const most = thickest(regions)[0]!.layers;
    if (most === 1) continue;
    expect(places[0]!.layers, name).toBe(most);
    expect(
      regions.some(
        ({ polygon, layers }) => layers === most && contains(polygon, places[0]!.at) !== 'outside',
      ),
      name,
    ).toBe(true);
    const layers = places.map((place) => place.layers);
    expect(layers, name).toEqual([...layers].sort((p, q) => q - p));
  }
});
