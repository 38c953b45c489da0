import type { Polygon } from '@seamwright/geometry';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MAKERS, randomFrom, type Shape, shapes } from '../../bench/shapes.ts';
import { distanceBetween } from '../../test/apart.ts';
import { PAPERS } from '../sheet/paper.ts';
import type { Regions } from '../sheet/sheet-frame.ts';
import { regionsOf } from '../sheet/sheet-frame.ts';
import { CellGrid } from './cell-grid.ts';

const GAP = 18;

const sheetOf = ({ width, height }: { width: number; height: number }) => regionsOf({ width, height });

/** Upright and level sheets, one of them as wide as it is tall. */
const regions = fc.constantFrom(
  sheetOf(PAPERS.letter),
  sheetOf(PAPERS.a3),
  sheetOf({ width: PAPERS.a3.height, height: PAPERS.a3.width }),
  sheetOf({ width: 800, height: 800 }),
);

const outlineAt = (way: Shape['ways'][number], x: number, y: number): Polygon<'page'> =>
  (way as typeof way & { outlines: readonly Polygon<'page'>[] }).outlines[0]!.map((corner) => ({
    x: corner.x + x,
    y: corner.y + y,
  }));

const stands = ({ wide, tall }: Regions, { width, height }: Shape['ways'][number], x: number, y: number) =>
  [wide, tall].some(
    ({ minX, minY, maxX, maxY }) => x >= minX && y >= minY && x + width <= maxX && y + height <= maxY,
  );

test('a place that is free is never ruled out; many that are not are', () => {
  let free = 0;
  let ruledOut = 0;
  fc.assert(
    fc.property(fc.nat(), regions, (seed, room) => {
      const random = randomFrom(seed);
      const list = shapes(Object.values(MAKERS), 10, [2, 7], seed, GAP);
      const grid = new CellGrid(room, GAP);
      grid.clear();
      const right = Math.max(room.wide.maxX, room.tall.maxX);
      const outlines = list.slice(0, 6).map(({ ways: [way] }) => {
        const [x, y] = [random() * (right - way!.width), random() * (room.tall.maxY - way!.height)];
        grid.take(grid.cellsOf(way!, x, y));
        return outlineAt(way!, x, y);
      });
      for (const way of list.slice(6).flatMap(({ ways }) => ways)) {
        const held = grid.mayHold(way);
        if (!held) ruledOut++;
        for (let i = 0; i < 10; i++) {
          const x = random() * (right - way.width);
          const y = random() * (room.tall.maxY - way.height);
          const outline = outlineAt(way, x, y);
          if (!stands(room, way, x, y)) continue;
          if (outlines.some((other) => distanceBetween(other, outline) < GAP)) continue;
          free++;
          expect(held).toBe(true);
          expect(x).toBeGreaterThanOrEqual(grid.minX);
          expect(x).toBeLessThanOrEqual(grid.maxX);
          expect(y).toBeGreaterThanOrEqual(grid.minY);
          expect(y).toBeLessThanOrEqual(grid.maxY);
        }
      }
    }),
    { numRuns: 100, seed: 5 },
  );
  expect(free).toBeGreaterThan(300);
  expect(ruledOut).toBeGreaterThan(100);
});
