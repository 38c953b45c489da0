import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CARD_GAP, packSheets } from './pack.ts';
import { PAPERS } from './paper.ts';
import { type Regions, regionsOf } from './sheet-frame.ts';

interface Item {
  readonly name: number;
  readonly width: number;
  readonly height: number;
}

const items = fc
  .array(
    fc.record({
      width: fc.double({ min: 20, max: 420, noNaN: true }),
      height: fc.double({ min: 20, max: 590, noNaN: true }),
    }),
    { minLength: 1, maxLength: 30 },
  )
  .map((list) => list.map((size, name): Item => ({ name, ...size })));

const regions = fc.constantFrom(...Object.values(PAPERS)).map((paper) => regionsOf(paper));

/** Points, for sums of numbers that went through several additions. */
const ROUNDING = 1e-6;

const within = (item: { x: number; y: number; item: Item }, region: Regions['wide']): boolean =>
  item.x >= region.minX - ROUNDING &&
  item.y >= region.minY - ROUNDING &&
  item.x + item.item.width <= region.maxX + ROUNDING &&
  item.y + item.item.height <= region.maxY + ROUNDING;

test('every item stands once, inside one of the regions, a gap from the others', () => {
  fc.assert(
    fc.property(items, regions, (list, free) => {
      const sheets = packSheets(list, free);
      expect(
        sheets
          .flat()
          .map(({ item }) => item.name)
          .sort((p, q) => p - q),
      ).toEqual(list.map(({ name }) => name));
      for (const sheet of sheets)
        sheet.forEach((p, i) => {
          expect(within(p, free.wide) || within(p, free.tall)).toBe(true);
          for (const q of sheet.slice(i + 1)) {
            const apart = Math.max(
              q.x - (p.x + p.item.width),
              p.x - (q.x + q.item.width),
              q.y - (p.y + p.item.height),
              p.y - (q.y + q.item.height),
            );
            expect(apart).toBeGreaterThanOrEqual(CARD_GAP - ROUNDING);
          }
        });
    }),
    { numRuns: 200, seed: 7 },
  );
});

test('never more sheets than items, never fewer than their area needs', () => {
  fc.assert(
    fc.property(items, regions, (list, free) => {
      const sheets = packSheets(list, free).length;
      const area = ({ minX, minY, maxX, maxY }: Regions['wide']) => (maxX - minX) * (maxY - minY);
      const used = list.reduce((sum, { width, height }) => sum + width * height, 0);
      expect(sheets).toBeLessThanOrEqual(list.length);
      expect(sheets * (area(free.wide) + area(free.tall))).toBeGreaterThanOrEqual(used);
    }),
    { numRuns: 100, seed: 8 },
  );
});

test('the order of the items is kept where it costs no sheet', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 30, max: 90, noNaN: true }), { minLength: 1, maxLength: 5 }),
      (sides) => {
        // All fit on one sheet in any order.
        const list = sides.map((side, name): Item => ({ name, width: side, height: side }));
        const sheets = packSheets(list, regionsOf(PAPERS.letter));
        expect(sheets.map((sheet) => sheet.map(({ item }) => item.name))).toEqual([
          list.map(({ name }) => name),
        ]);
      },
    ),
    { seed: 9 },
  );
});

test('an item that fits on no sheet is a bug of the caller', () => {
  expect(() => packSheets([{ width: 1000, height: 10 }], regionsOf(PAPERS.a4))).toThrow(RangeError);
});
