import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MAKERS, shapes } from '../../bench/shapes.ts';
import { PAPERS } from '../sheet/paper.ts';
import { regionsOf } from '../sheet/sheet-frame.ts';
import { CellGrid } from './cell-grid.ts';
import { fill, PULLS } from './fill.ts';
import { grownRoom } from './least-sheets.ts';
import { OpenSheet } from './open-sheet.ts';

const GAP = 18;
const regions = regionsOf(PAPERS.letter);
const room = grownRoom(regions, GAP / 2);
const sheet = new OpenSheet(new CellGrid(regions, GAP), { left: Number.POSITIVE_INFINITY });

test('gives up just where less than is wanted would be on the sheet, and fills it alike else', () => {
  let givenUp = 0;
  fc.assert(
    fc.property(
      fc.nat(),
      fc.constantFrom(...PULLS),
      fc.integer({ min: 50, max: 110 }),
      (seed, pull, percent) => {
        const items = shapes(Object.values(MAKERS), 12, [1.5, 6], seed, GAP);
        const worthOf = ({ grown, name }: (typeof items)[number]) => grown * (1 + name / 10);
        const free = fill(items, sheet, { room, pull })!;
        const worth = free.placements.reduce((sum, { item }) => sum + worthOf(item), 0);
        const wanted = fill(items, sheet, { room, pull, worthOf, least: (worth * percent) / 100 });
        if (percent === 100) return;
        if (percent > 100) {
          givenUp++;
          expect(wanted).toBeNull();
        } else expect(wanted).toEqual(free);
      },
    ),
    { numRuns: 60, seed: 6 },
  );
  expect(givenUp).toBeGreaterThan(5);
});
