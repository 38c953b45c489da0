import type { Regions } from '../sheet/sheet-frame.ts';
import { boxesOnSheets } from './box-packing.ts';
import { grownRoom } from './least-sheets.ts';
import { nest } from './nest.ts';
import type { Packable, Placement, Way } from './placement.ts';

export interface PackOptions {
  readonly regions: Regions;
  /** Points between neighbours: room for scissors. */
  readonly gap: number;
  /** So many sheets are needed at least: with as few, nothing else is tried. */
  readonly atLeast: number;
  /** Called now and then, with how many of the items have a place. */
  readonly placed?: (count: number) => void;
}

/** How many sheets are filled in all, about, until the best is taken for each. */
const FILLINGS = 1200;
const FEWEST_TRIES = 6;
const MOST_TRIES = 60;

/** Up to so many items it is tried whether they need to be turned at all. */
const FEW = 60;

/** Rows that a search may look at: about a second's worth. */
const ROWS = 120_000_000;

/**
 * Puts the items on as few sheets as it finds; each list is one sheet.
 *
 * Tried in this order, the first with the fewest sheets wins, and none is tried once the bound is met: upright rectangles
 * in the order of the items ({@link boxesOnSheets}); the true shapes, upright ({@link nest}); the true shapes, turned by
 * quarters. So the order of the letters, neat rows and upright foundations are kept where they cost no sheet. The same
 * items give the same sheets.
 *
 * Throws a RangeError when an item does not fit on an empty sheet.
 */
export function packSheets<T extends Packable>(
  items: readonly T[],
  { regions, gap, atLeast, placed }: PackOptions,
): readonly (readonly Placement<T>[])[] {
  let best = boxesOnSheets(items, regions, gap);
  const upright = (way: Way, i: number) => i === 0 || way.upright;
  const anyWay = () => true;
  const kinds = items.length <= FEW ? [upright, anyWay] : [anyWay];
  const reach = gap / 2;
  for (const allowed of kinds) {
    if (best.length <= atLeast) break;
    const tries = Math.min(MOST_TRIES, Math.max(FEWEST_TRIES, Math.round(FILLINGS / best.length)));
    const limited = items.map((item) => ({ item, grown: item.grown, ways: item.ways.filter(allowed) }));
    const nested = nest(limited, {
      regions,
      reach,
      room: grownRoom(regions, reach),
      tries,
      budget: { left: ROWS },
      ...(placed && { placed }),
    });
    if (nested !== null && nested.length < best.length)
      best = nested.map((sheet) => sheet.map((place) => ({ ...place, item: place.item.item })));
  }
  placed?.(items.length);
  return best;
}
