import { type Box, type Polygon, transformPoint } from '@seamwright/geometry';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boxOfCopies, fillsBox, otherCopies, type Turning } from './copies.ts';

const TURNINGS: readonly Turning[] = ['same', 'alternate', 'pinwheel', 'mirrored'];

const corners = ({ minX, minY, maxX, maxY }: Box): Polygon => [
  { x: minX, y: minY },
  { x: maxX, y: minY },
  { x: maxX, y: maxY },
  { x: minX, y: maxY },
];

const boxOf = (polygon: Polygon): Box => ({
  minX: Math.min(...polygon.map(({ x }) => x)),
  minY: Math.min(...polygon.map(({ y }) => y)),
  maxX: Math.max(...polygon.map(({ x }) => x)),
  maxY: Math.max(...polygon.map(({ y }) => y)),
});

const length = fc.integer({ min: 1, max: 40 });
const anyBox: fc.Arbitrary<Box> = fc
  .tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 }), length, length)
  .map(([x, y, width, height]) => ({ minX: x, minY: y, maxX: x + width, maxY: y + height }));
const square: fc.Arbitrary<Box> = anyBox.map((box) => ({ ...box, maxY: box.minY + box.maxX - box.minX }));

test('the copies and the block itself fill the box, each cell once, square or not, however they lie', () => {
  fc.assert(
    fc.property(
      fc.oneof(anyBox, square),
      fc.integer({ min: 1, max: 6 }),
      fc.constantFrom(...TURNINGS),
      (box, count, turning) => {
        const cells = [
          box,
          ...otherCopies(box, count, turning).map((t) => boxOf(applyToAll(t, corners(box)))),
        ];
        expect(new Set(cells.map(({ minX, minY }) => `${minX} ${minY}`)).size).toBe(count * count);
        const whole = boxOfCopies(box, count);
        for (const cell of cells) {
          expect(cell.maxX - cell.minX).toBeCloseTo(box.maxX - box.minX, 9);
          expect(cell.maxY - cell.minY).toBeCloseTo(box.maxY - box.minY, 9);
        }
        const round = boxOf(cells.flatMap(corners));
        for (const side of ['minX', 'minY', 'maxX', 'maxY'] as const)
          expect(round[side]).toBeCloseTo(whole[side], 9);
      },
    ),
    { seed: 21 },
  );
});

const applyToAll = (t: ReturnType<typeof otherCopies>[number], polygon: Polygon): Polygon =>
  polygon.map((corner) => transformPoint(t, corner));

const INCH: Box = { minX: 0, minY: 0, maxX: 1, maxY: 1 };
/** A place near the upper left corner of the block. */
const MARK = { x: 0.25, y: 0.1 };

const marks = (count: number, turning: Turning) =>
  otherCopies(INCH, count, turning).map((t) => {
    const { x, y } = transformPoint(t, MARK);
    return [Math.round(x * 100) / 100, Math.round(y * 100) / 100];
  });

test('four in a pinwheel turn about the corner that they share', () => {
  expect(marks(2, 'pinwheel')).toEqual([
    [1.9, 0.25],
    [0.1, 1.75],
    [1.75, 1.9],
  ]);
});

test('mirrored copies meet in equal edges', () => {
  expect(marks(2, 'mirrored')).toEqual([
    [1.75, 0.1],
    [0.25, 1.9],
    [1.75, 1.9],
  ]);
});

test('every other copy has a quarter turn, the ones that touch at corners have none', () => {
  expect(marks(2, 'alternate')).toEqual([
    [1.9, 0.25],
    [0.9, 1.25],
    [1.25, 1.1],
  ]);
});

test('only an outline that fills its box meets its copies along the edges', () => {
  expect(fillsBox(corners(INCH), INCH)).toBe(true);
  expect(fillsBox([...corners(INCH).slice(0, 2), { x: 1, y: 0.5 }, ...corners(INCH).slice(2)], INCH)).toBe(
    true,
  );
  expect(fillsBox(corners(INCH).slice(0, 3), INCH)).toBe(false);
  const diamond = [
    { x: 0.5, y: 0 },
    { x: 1, y: 0.5 },
    { x: 0.5, y: 1 },
    { x: 0, y: 0.5 },
  ];
  expect(fillsBox(diamond, INCH)).toBe(false);
});
