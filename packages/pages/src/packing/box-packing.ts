/// <reference path="./maxrects-packer.d.ts" />
import type { Box } from '@seamwright/geometry';
import { MaxRectsBin, PACKING_LOGIC, Rectangle } from 'maxrects-packer';
import type { Regions } from '../sheet/sheet-frame.ts';
import type { Packable, Placement } from './placement.ts';

/**
 * Puts the items on sheets as if each were its upright rectangle, lying in its first way; each list is one sheet.
 *
 * Tried in this order, the first with the fewest sheets wins: the items as they come, a sheet closed once
 * something does not fit on it; as they come, on the first sheet with room; largest first.
 *
 * Throws a RangeError when an item does not fit on an empty sheet.
 *
 * Maximal rectangles: J. Jylänki, A thousand ways to pack the bin, 2010 (from memory), as in the library
 * maxrects-packer.
 */
export function boxesOnSheets<T extends Packable>(
  items: readonly T[],
  regions: Regions,
  gap: number,
): readonly (readonly Placement<T>[])[] {
  const largestFirst = [...items].sort(
    ({ ways: [p] }, { ways: [q] }) =>
      Math.max(q!.width, q!.height) - Math.max(p!.width, p!.height) ||
      q!.width * q!.height - p!.width * p!.height,
  );
  const tries: readonly [readonly T[], PACKING_LOGIC, 'last sheet' | 'first with room'][] = [
    [items, PACKING_LOGIC.FILL_WIDTH, 'last sheet'],
    [items, PACKING_LOGIC.FILL_WIDTH, 'first with room'],
    [largestFirst, PACKING_LOGIC.FILL_WIDTH, 'first with room'],
    [largestFirst, PACKING_LOGIC.MAX_EDGE, 'first with room'],
  ];
  return tries
    .map(([list, logic, where]) => pack(list, where, () => emptySheet(regions, gap, logic)))
    .reduce((fewest, result) => (result.length < fewest.length ? result : fewest));
}

function pack<T extends Packable>(
  items: readonly T[],
  where: 'last sheet' | 'first with room',
  open: () => MaxRectsBin,
): readonly (readonly Placement<T>[])[] {
  const sheets: { bin: MaxRectsBin; placements: Placement<T>[] }[] = [];
  for (const item of items) {
    const way = item.ways[0]!;
    const put = ({ bin, placements }: (typeof sheets)[number]): boolean => {
      const placed = bin.add(new Rectangle(way.width, way.height));
      if (placed) placements.push({ item, way, x: placed.x, y: placed.y });
      return placed !== undefined;
    };
    if ((where === 'last sheet' ? sheets.slice(-1) : sheets).some(put)) continue;
    const sheet = { bin: open(), placements: [] };
    if (!put(sheet)) throw new RangeError(`${way.width} × ${way.height} points do not fit on a sheet`);
    sheets.push(sheet);
  }
  return sheets.map(({ placements }) => placements);
}

/** A bin whose free space is the sheet's two regions, as if the check squares had been put there first. */
function emptySheet({ wide, tall }: Regions, gap: number, logic: PACKING_LOGIC): MaxRectsBin {
  const bin = new MaxRectsBin(Math.max(wide.maxX, tall.maxX), Math.max(wide.maxY, tall.maxY), gap, {
    smart: false,
    pot: false,
    square: false,
    allowRotation: false,
    logic,
  });
  bin.freeRects = [wide, tall].map((region) => freeSpace(region, gap));
  return bin;
}

/** The packer counts a gap after every item, also after the last, where there need be none. */
const freeSpace = ({ minX, minY, maxX, maxY }: Box<'page'>, gap: number): Rectangle =>
  new Rectangle(maxX - minX + gap, maxY - minY + gap, minX, minY);
