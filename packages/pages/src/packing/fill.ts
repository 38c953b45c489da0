import type { Regions } from '../sheet/sheet-frame.ts';
import { type Budget, OpenSheet, type Pull, type Spot } from './open-sheet.ts';
import type { Packable, Placement } from './placement.ts';

/** Everything that the filling of a sheet needs to know. */
export interface FillOptions {
  readonly regions: Regions;
  /** Points. */
  readonly gap: number;
  /** Square points of a sheet, with half the gap round it. */
  readonly room: number;
  readonly budget: Budget;
}

/** A sheet with what stands on it. */
export interface Filling<T extends Packable> {
  readonly placements: readonly Placement<T>[];
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

/**
 * Puts items on a sheet, one after the other: each in the way and the place that lets its centre lie nearest to the top
 * left, or left out where there is none.
 *
 * @param kept what stands on the sheet already
 * @param stepDown after something found no place, what is more than so large a share of it is not tried
 */
export function fill<T extends Packable>(
  items: readonly T[],
  { regions, gap, room, budget }: FillOptions,
  pull: Pull,
  kept: readonly Placement<T>[] = [],
  stepDown = 1,
): Filling<T> {
  const sheet = new OpenSheet(regions, gap, budget);
  const placements = [...kept];
  const rest: T[] = [];
  let grown = 0;
  for (const { item, way, x, y } of kept) {
    sheet.take(way, x, y);
    grown += item.grown;
  }
  let largest = Number.POSITIVE_INFINITY;
  for (const item of items) {
    const found = item.grown > room - grown || item.grown > largest ? null : bestPlace(sheet, item, pull);
    if (found === null) {
      rest.push(item);
      if (stepDown < 1) largest = Math.min(largest, item.grown * stepDown);
      continue;
    }
    const { way, spot } = found;
    sheet.take(way, spot.x, spot.y);
    placements.push({ item, way, x: spot.x, y: spot.y });
    grown += item.grown;
  }
  return { placements, grown, rest };
}

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
