import type { Cells } from './cell-grid.ts';
import type { OpenSheet, Pull, Spot } from './open-sheet.ts';
import type { Packable, Placement } from './placement.ts';

/** Something that stands on a sheet. */
export interface Standing<T extends Packable> extends Placement<T> {
  /** What it takes of the grid. */
  readonly cells: Cells;
}

/** A sheet with what stands on it. */
export interface Filling<T extends Packable> {
  readonly placements: readonly Standing<T>[];
  /** Square points that it takes, with its share of the gaps. */
  readonly grown: number;
  /** What was offered and found no place, in the order in which it was offered. */
  readonly rest: readonly T[];
}

/** To the left first, to the top first, and between: which one fills a sheet best depends on what is offered. */
export const PULLS: readonly Pull[] = [
  { down: 0.3, right: 1 },
  { down: 1, right: 0.01 },
  { down: 1, right: 0.3 },
  { down: 1, right: 1 },
];

/** How a sheet is to be filled. */
export interface FillOptions<T extends Packable> {
  /** Square points of a sheet, with half the gap round it. */
  readonly room: number;
  readonly pull: Pull;
  /** What stands on it already. */
  readonly kept?: readonly Standing<T>[];
  /** After something found no place, what is more than so large a share of it is not tried. */
  readonly stepDown?: number;
  /** What all on it is to be worth in the end. */
  readonly least?: number;
  /** What one is worth; when left out, the square points that it takes. */
  readonly worthOf?: (item: T) => number;
}

/**
 * Puts items on a sheet, one after the other: each in the way and the place that lets its centre lie nearest to the top
 * left, or left out where there is none. Null as soon as it is known that it will be worth less than is wanted.
 *
 * @param sheet is cleared first
 */
export function fill<T extends Packable>(
  items: readonly T[],
  sheet: OpenSheet,
  { room, pull, kept = [], stepDown = 1, least = 0, worthOf = grownOf }: FillOptions<T>,
): Filling<T> | null {
  const placements = [...kept];
  const rest: T[] = [];
  let grown = 0;
  // Of what is on the sheet and all that may still come.
  let most = 0;
  sheet.clear();
  for (const { item, way, x, y, cells } of kept) {
    sheet.take(way, x, y, cells);
    grown += item.grown;
    most += worthOf(item);
  }
  for (const item of items) most += worthOf(item);
  let largest = Number.POSITIVE_INFINITY;
  for (const item of items) {
    const found = item.grown > room - grown || item.grown > largest ? null : bestPlace(sheet, item, pull);
    if (found === null) {
      rest.push(item);
      most -= worthOf(item);
      if (most < least) return null;
      if (stepDown < 1) largest = Math.min(largest, item.grown * stepDown);
      continue;
    }
    const { way, spot } = found;
    const cells = sheet.grid.cellsOf(way, spot.x, spot.y);
    sheet.take(way, spot.x, spot.y, cells);
    placements.push({ item, way, x: spot.x, y: spot.y, cells });
    grown += item.grown;
  }
  return { placements, grown, rest };
}

const grownOf = ({ grown }: Packable): number => grown;

function bestPlace<T extends Packable>(
  sheet: OpenSheet,
  { ways }: T,
  pull: Pull,
): { way: T['ways'][number]; spot: Spot } | null {
  let best: { way: T['ways'][number]; spot: Spot } | null = null;
  for (const way of ways) {
    const spot = sheet.spotFor(way, pull, best?.spot.rank);
    if (spot !== null) best = { way, spot };
  }
  return best;
}
