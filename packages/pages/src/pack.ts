/// <reference path="./maxrects-packer.d.ts" />
import type { Box } from '@seamwright/geometry';
import { MaxRectsBin, PACKING_LOGIC, Rectangle } from 'maxrects-packer';
import type { Regions } from './sheet-frame.ts';

/** Something of a known size that is to stand on a sheet. */
export interface Packable {
  readonly width: number;
  readonly height: number;
}

/** Where it stands: its top left corner, points on the sheet. */
export interface Placement<T extends Packable> {
  readonly item: T;
  readonly x: number;
  readonly y: number;
}

/** Points between neighbours: room for scissors. */
export const CARD_GAP = 16;

/**
 * Puts the items on as few sheets as it finds; each list is one sheet.
 *
 * Tried in this order, the first with the fewest sheets wins: the items as they come, a sheet closed once
 * something does not fit on it; as they come, on the first sheet with room; largest first. So the order of the
 * letters is kept where it costs no sheet. The same items give the same sheets.
 *
 * Every item must fit on an empty sheet; throws a RangeError if one does not.
 *
 * Maximal rectangles: J. Jylänki, A thousand ways to pack the bin, 2010 (from memory), as in the library
 * maxrects-packer.
 */
export function packSheets<T extends Packable>(
  items: readonly T[],
  regions: Regions,
): readonly (readonly Placement<T>[])[] {
  const largestFirst = [...items].sort(
    (p, q) =>
      Math.max(q.width, q.height) - Math.max(p.width, p.height) || q.width * q.height - p.width * p.height,
  );
  const tries = [
    () => pack(items, regions, PACKING_LOGIC.FILL_WIDTH, 'last sheet'),
    () => pack(items, regions, PACKING_LOGIC.FILL_WIDTH, 'first with room'),
    () => pack(largestFirst, regions, PACKING_LOGIC.FILL_WIDTH, 'first with room'),
    () => pack(largestFirst, regions, PACKING_LOGIC.MAX_EDGE, 'first with room'),
  ];
  const results = tries.map((attempt) => attempt());
  const best = results.reduce((fewest, result) => (result.length < fewest.length ? result : fewest));
  for (const sheet of best) assertApart(sheet);
  return best;
}

function pack<T extends Packable>(
  items: readonly T[],
  regions: Regions,
  logic: PACKING_LOGIC,
  where: 'last sheet' | 'first with room',
): readonly (readonly Placement<T>[])[] {
  const sheets: { bin: MaxRectsBin; placements: Placement<T>[] }[] = [];
  for (const item of items) {
    const open = where === 'last sheet' ? sheets.slice(-1) : sheets;
    if (open.some((sheet) => put(sheet, item))) continue;
    const sheet = { bin: emptySheet(regions, logic), placements: [] as Placement<T>[] };
    if (!put(sheet, item))
      throw new RangeError(`${item.width} × ${item.height} points do not fit on a sheet`);
    sheets.push(sheet);
  }
  return sheets.map(({ placements }) => placements);
}

function put<T extends Packable>(sheet: { bin: MaxRectsBin; placements: Placement<T>[] }, item: T): boolean {
  const placed = sheet.bin.add(new Rectangle(item.width, item.height));
  if (placed) sheet.placements.push({ item, x: placed.x, y: placed.y });
  return placed !== undefined;
}

/** A bin whose free space is the sheet's two regions, as if the check squares had been put there first. */
function emptySheet({ wide, tall }: Regions, logic: PACKING_LOGIC): MaxRectsBin {
  const bin = new MaxRectsBin(Math.max(wide.maxX, tall.maxX), Math.max(wide.maxY, tall.maxY), CARD_GAP, {
    smart: false,
    pot: false,
    square: false,
    allowRotation: false,
    logic,
  });
  bin.freeRects = [freeSpace(wide), freeSpace(tall)];
  return bin;
}

/** The packer counts a gap after every item, also after the last, where there need be none. */
const freeSpace = ({ minX, minY, maxX, maxY }: Box<'page'>): Rectangle =>
  new Rectangle(maxX - minX + CARD_GAP, maxY - minY + CARD_GAP, minX, minY);

function assertApart<T extends Packable>(placements: readonly Placement<T>[]): void {
  placements.forEach((p, i) => {
    for (const q of placements.slice(i + 1)) {
      const apart =
        p.x + p.item.width <= q.x ||
        q.x + q.item.width <= p.x ||
        p.y + p.item.height <= q.y ||
        q.y + q.item.height <= p.y;
      if (!apart) throw new Error('The packer put two foundations on top of each other');
    }
  });
}
