import { area, commonParts, type Polygon } from '@seamwright/geometry';
import { expect, test } from 'vitest';
import { knownBlocks, USUAL } from '../../test/blocks.ts';
import { patchNeeds } from '../sizes/patch-needs.ts';
import { partsOutside } from './parts-outside.ts';

const total = (parts: readonly Polygon[]) => parts.reduce((sum, part) => sum + area(part), 0);
const shape = (...corners: readonly (readonly [number, number])[]): Polygon =>
  corners.map(([x, y]) => ({ x, y }));

test('a hole in the middle is cut round in four', () => {
  // Above it 4 × 1; beside it on the right, below that, 1 × 3; under it 3 × 1; on the left what is left, 1 × 2.
  const parts = partsOutside(shape([0, 0], [4, 0], [4, 4], [0, 4]), shape([1, 1], [3, 1], [3, 3], [1, 3]));
  expect(parts.map(area).sort()).toEqual([2, 3, 3, 4]);
});

// Allowances folded over seams lie along each other's edges but for the last digits. Corners there were once lost.
test.each([
  [
    shape(
      [12.25, 4.483873365924123],
      [12.25, 5.215229964816307],
      [8.239290066807841, 8.135079052987145],
      [8.090745487237967, 5.468959961051973],
    ),
    shape(
      [8.08577312547189, 5.379714640388404],
      [8.337872178106208, 5.410429955320021],
      [8.479917530457133, 7.959899124239208],
      [8.221319250603866, 7.812533886291608],
    ),
  ],
  [
    shape(
      [6.403389750299959, 9.290042312724967],
      [6.314822257187012, 9.536116692890257],
      [5.070554130049326, 8.602915597536995],
      [4.982700180719967, 8.224525135539976],
    ),
    shape(
      [8.337872178106206, 5.410429955320022],
      [8.479917530457131, 7.959899124239209],
      [7.806017010604865, 8.450507483154459],
      [5.07055413004933, 8.602915597536997],
      [2.619658344136446, 6.764743758102333],
    ),
  ],
])(
  'what is covered and what is not make up the whole, along edges that all but coincide',
  (polygon, piece) => {
    expect(total(commonParts(polygon, piece)) + total(partsOutside(polygon, piece))).toBeCloseTo(
      area(polygon),
      5,
    );
  },
);

test('the same for what any two patches of a block need', () => {
  for (const { arrangement, plan, name } of knownBlocks()) {
    const needs = patchNeeds(arrangement, plan, USUAL.allowance).slice(0, 8);
    for (const { needed: p, finished } of needs)
      for (const { needed: q } of needs) {
        if (finished.length > 4 || p === q || q.length > 4) continue;
        const sum = total(commonParts(p, q)) + total(partsOutside(p, q));
        expect(Math.abs(sum - area(p)), name).toBeLessThan(1e-4);
      }
  }
});
