import type { PackingEffort } from '../job.ts';
import type { Regions } from '../sheet/sheet-frame.ts';
import { boxesOnSheets } from './box-packing.ts';
import { CellGrid } from './cell-grid.ts';
import { grownRoom } from './least-sheets.ts';
import { nest } from './nest.ts';
import type { Packable, Placement, Way } from './placement.ts';
import { refine } from './refine.ts';

export interface PackOptions {
  readonly regions: Regions;
  /** Points between neighbours: room for scissors. */
  readonly gap: number;
  /** So many sheets are needed at least, as far as is known: with as few, nothing else is tried. */
  readonly atLeast: number;
  /** `quick` when left out. */
  readonly effort?: PackingEffort;
  /** Called now and then, with how many of the items have a place. */
  readonly placed?: (count: number) => void;
  /** Called now and then while fewer sheets are looked for, with what share of that is done. */
  readonly refined?: (share: number) => void;
}

/** How often a sheet is filled in the first place, the fullest counts. */
const TRIES = 4;

/** Up to so many items it is tried whether they need to be turned at all. */
const FEW = 60;

/** Pairs of items that are looked at in the first place: some seconds' worth, never reached by usual jobs. */
const MOST = 20_000_000;

/**
 * Pairs that are looked at to save sheets, a glance at the cells counting as one: some tenths of a second's worth, or half a
 * minute's.
 */
const LOOKS: Readonly<Record<PackingEffort, number>> = { quick: 150_000, thorough: 30_000_000 };

/**
 * Puts the items on as few sheets as it finds; each list is one sheet.
 *
 * Tried in this order, the first with the fewest sheets wins, and none is tried once the bound is met: upright rectangles
 * in the order of the items ({@link boxesOnSheets}); the true shapes, upright ({@link nest}); the true shapes, turned by
 * quarters; and these moved about until they need fewer sheets ({@link refine}), for long where that is asked for.
 * So the order of the letters, neat rows and upright foundations are kept where they cost no sheet. The same items give
 * the same sheets.
 *
 * Throws a RangeError when an item does not fit on an empty sheet.
 */
export function packSheets<T extends Packable>(
  items: readonly T[],
  { regions, gap, atLeast, effort = 'quick', placed, refined }: PackOptions,
): readonly (readonly Placement<T>[])[] {
  let best = boxesOnSheets(items, regions, gap);
  const keep = (found: readonly (readonly Placement<Limited<T>>[])[] | null) => {
    if (found !== null && found.length < best.length)
      best = found.map((sheet) => sheet.map(({ item, way, x, y }) => ({ item: item.item, way, x, y })));
  };
  const room = grownRoom(regions, gap / 2);
  const enough = Math.max(atLeast, Math.ceil(items.reduce((sum, { grown }) => sum + grown, 0) / room));
  const options = { grid: new CellGrid(regions, gap), room, tries: TRIES };
  const upright = (way: Way, i: number) => i === 0 || way.upright;
  const anyWay = () => true;
  for (const allowed of items.length <= FEW ? [upright, anyWay] : [anyWay]) {
    if (best.length <= enough) break;
    const limited = items.map((item) => ({ item, grown: item.grown, ways: item.ways.filter(allowed) }));
    const nested = nest(limited, { ...options, budget: { left: MOST }, ...(placed && { placed }) });
    keep(nested);
    if (nested === null || allowed === upright || best.length <= enough) continue;
    const budget = { left: LOOKS[effort] };
    keep(refine(nested, { ...options, enough, budget, ...(refined && { spent: refined }) }));
  }
  placed?.(items.length);
  return best;
}

/** An item that may lie in some of its ways only. */
interface Limited<T extends Packable> extends Packable<T['ways'][number]> {
  readonly item: T;
}
