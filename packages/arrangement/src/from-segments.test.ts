import { SAME_COORDINATE } from '@seamwright/geometry';
import { expect, it } from 'vitest';
import { drawingFromSegments } from './from-segments.ts';

const TRIANGLE = [
  { x: 0, y: 0 },
  { x: 6, y: 0 },
  { x: 0, y: 6 },
];

it('makes one point of two that differ in the last digit, wherever they lie', () => {
  // Half-way between two multiples of the tolerance, and on a multiple of it.
  for (const x of [1.3915125, 1.391512, 2.5]) {
    const drawing = drawingFromSegments(TRIANGLE, [
      { a: { x, y: 0 }, b: { x, y: 2 } },
      { a: { x: x + 4e-16, y: 2 + 4e-16 }, b: { x: 0, y: 3 } },
      { a: { x: x - 4e-16, y: 2 - 4e-16 }, b: { x: 0, y: 1 } },
    ]);
    const shared = drawing.splits[0]!.to;
    expect(drawing.splits.map(({ from }) => from).slice(1)).toEqual([shared, shared]);
  }
});

it('keeps points apart that are farther from each other than the tolerance', () => {
  const y = 2 + 1.1 * SAME_COORDINATE;
  const drawing = drawingFromSegments(TRIANGLE, [
    { a: { x: 1, y: 0 }, b: { x: 1, y: 2 } },
    { a: { x: 1, y }, b: { x: 0, y: 3 } },
  ]);
  expect(drawing.splits[1]!.from).not.toBe(drawing.splits[0]!.to);
});
