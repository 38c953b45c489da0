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
  let fewest: readonly (readonly Placement<T>[])[] | null = null;
  for (const [list, logic, where] of tries) {
    const below: number = fewest === null ? Number.POSITIVE_INFINITY : fewest.length;
    fewest = pack(list, where, () => emptySheet(regions, gap, logic), below) ?? fewest;
  }
  return fewest ?? [];
}

interface BoxSheet<T extends Packable> {
  readonly bin: MaxRectsBin;
  readonly placements: Placement<T>[];
}

/** Null when it takes as many sheets as `below` or more. */
function pack<T extends Packable>(
  items: readonly T[],
  where: 'last sheet' | 'first with room',
  open: () => MaxRectsBin,
  below: number,
): readonly (readonly Placement<T>[])[] | null {
  const sheets: BoxSheet<T>[] = [];
  for (const item of items) {
    if ((where === 'last sheet' ? sheets.slice(-1) : sheets).some((sheet) => put(sheet, item))) continue;
    if (sheets.length + 1 >= below) return null;
    const sheet: BoxSheet<T> = { bin: open(), placements: [] };
    const { width, height } = item.ways[0]!;
    if (!put(sheet, item)) throw new RangeError(`${width} × ${height} points do not fit on a sheet`);
    sheets.push(sheet);
  }
  return sheets.map(({ placements }) => placements);
}

function put<T extends Packable>({ bin, placements }: BoxSheet<T>, item: T): boolean {
  const way = item.ways[0]!;
  const { width, height } = way;
  // Nearly all that is tried finds no room, and the packer makes several objects before it says so.
  if (!hasRoom(bin, width, height)) return false;
  const placed = bin.add(new Rectangle(width, height));
  if (placed) placements.push({ item, way, x: placed.x, y: placed.y });
  return placed !== undefined;
}

/** The packer counts a gap after every item. */
const hasRoom = ({ freeRects, padding }: MaxRectsBin, width: number, height: number): boolean =>
  freeRects.some((free) => free.width >= width + padding && free.height >= height + padding);

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
