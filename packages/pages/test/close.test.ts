import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leastGap } from './apart.ts';
import { block, rectangle, usual } from './blocks.ts';
import { boxOf, overlap } from './boxes.ts';
import { laid } from './laid.ts';

// A foundation that would be cut into tiles only because of what stands at the foot of the sheet stands close to the check squares.

/** Points. A Letter sheet between margins of 1/4 in, and the larger check square: 50 mm. */
const ROOM = { width: 576, height: 756 };
const SQUARE = (50 / 25.4) * 72;
const MARGIN = 18;
/** Points of the strokes. */
const STROKE = 0.7;

const split = (width: number, height: number, at: number) =>
  block(rectangle(width, height), [
    [0, height * at, width, height * (1 - at)],
    [0, height * 0.9, width, height * 0.95],
  ]);

test('what fits above the check squares, or beside them, is not cut, and both squares stay on its sheet', () => {
  const kinds = { above: 0, beside: 0, cut: 0 };
  fc.assert(
    fc.property(
      fc.double({ min: 3, max: 9.9, noNaN: true }),
      fc.double({ min: 3, max: 9.9, noNaN: true }),
      fc.double({ min: 0.2, max: 0.8, noNaN: true }),
      (width, height, at) => {
        const [short, long] = [width, height].map((side) => (side + 0.5) * 72).sort((p, q) => p - q);
        // 2 points are between the squares and what stands close to them.
        const above = short! <= ROOM.width && long! <= ROOM.height - SQUARE - 2;
        const aside = short! <= ROOM.width - SQUARE - 2 && long! <= ROOM.height;
        kinds[above ? 'above' : aside ? 'beside' : 'cut']++;
        const { sheets } = laid(usual(split(width, height, at), 'Sail loft'));
        if (above || aside) expect(sheets).toHaveLength(1);
        else expect(sheets.length).toBeGreaterThan(1);
        for (const sheet of sheets) {
          const [frame, own] = [true, false].map((isFrame) =>
            sheet.marks.filter(({ section }) => (section === undefined) === isFrame).map(boxOf),
          );
          for (const box of [...frame!, ...own!]) {
            expect(box.minX).toBeGreaterThanOrEqual(MARGIN - STROKE);
            expect(box.minY).toBeGreaterThanOrEqual(MARGIN - STROKE);
            expect(box.maxX).toBeLessThanOrEqual(MARGIN + ROOM.width + STROKE);
            expect(box.maxY).toBeLessThanOrEqual(MARGIN + ROOM.height + STROKE);
          }
          if (sheets.length === 1)
            for (const box of own!) for (const other of frame!) expect(overlap(box, other)).toBe(false);
          const sides = sheet.marks.flatMap((mark) =>
            mark.role === 'check-square' ? [boxOf(mark).maxX - boxOf(mark).minX] : [],
          );
          expect(sides.sort((p, q) => p - q).map((side) => side.toFixed(3))).toEqual([
            '72.000',
            SQUARE.toFixed(3),
          ]);
          expect(leastGap(sheet)).toBeGreaterThan(17);
        }
      },
    ),
    { seed: 22, numRuns: 80 },
  );
  for (const kind of Object.values(kinds)) expect(kind).toBeGreaterThan(5);
});

test('where there is no room above the cutting line, a side of it says what is done there', () => {
  const { sheets } = laid(usual(split(6, 8, 0.4), 'Sail loft'));
  expect(sheets).toHaveLength(1);
  const words = sheets[0]!.marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
  expect(words.find(({ content }) => content === 'cut here')).toMatchObject({ angle: -90 });
});

test('no bound asks for more sheets than there are', () => {
  // Three sections, each of two patches, on a long low paper: each fills more of it beside the squares than the usual room.
  const blinds = block(rectangle(11.4, 12), [
    [0, 4, 11.4, 4],
    [0, 8, 11.4, 8],
    [3, 0, 4, 4],
    [5, 4, 6, 8],
    [7, 8, 8, 12],
  ]);
  const { sheets, packing } = laid(usual(blinds, 'Blinds', { paper: { width: 14.4, height: 5 } }));
  expect(sheets).toHaveLength(3);
  expect(packing!.atLeast).toBeLessThanOrEqual(3);
});
