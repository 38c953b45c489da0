import type { CellGrid } from './cell-grid.ts';
import { type Filling, fill, PULLS, type Standing } from './fill.ts';
import { type Budget, OpenSheet, type Pull } from './open-sheet.ts';
import type { Packable } from './placement.ts';
import { randomFrom } from './random.ts';

export interface NestOptions {
  /** The sheet's room, and the gap. */
  readonly grid: CellGrid;
  /** Square points of a sheet, with half the gap round it. */
  readonly room: number;
  readonly budget: Budget;
  /** How often each sheet is filled, the fullest counts. */
  readonly tries: number;
  /** Called when a sheet is full, with how many items have a place. */
  readonly placed?: (count: number) => void;
}

/** Of what is left, largest first, how large a share is offered to a sheet in the first round. */
const SHARES = [0.15, 0.3, 0.5, 0.75] as const;

/**
 * After something found no place, what is more than so large a share of it is not tried: it would hardly find one. It
 * keeps the search short where hundreds of nearly the same size are left.
 */
const STEP_DOWN = 0.96;

/**
 * Puts the items on sheets, one sheet after the other: the largest that is left, then whatever else there is room for,
 * largest first. Each sheet is filled several times, with different items left out at first, and the fullest counts;
 * “full” weighs items by how hard they are to place. Null when an item fits on no empty sheet.
 *
 * Bottom-left placement of irregular shapes by their centre, and filling bin after bin from a sorted list: J. A. Bennell
 * and J. F. Oliveira, A tutorial in irregular shape packing problems, Journal of the Operational Research Society 60,
 * 2009 (from memory). The choice among random fillings is our own; the random numbers always start alike.
 */
export function nest<T extends Packable>(
  items: readonly T[],
  options: NestOptions,
): readonly (readonly Standing<T>[])[] | null {
  const random = randomFrom(1);
  const sheet = new OpenSheet(options.grid, options.budget);
  let left: readonly T[] = [...items].sort((p, q) => q.grown - p.grown);
  const sheets: (readonly Standing<T>[])[] = [];
  while (left.length > 0) {
    let best: Filling<T> | null = null;
    let most = 0;
    for (let i = 0; i < options.tries && (i === 0 || options.budget.left > 0); i++) {
      const share = i === 0 ? 1 : SHARES[Math.floor(random() * SHARES.length)]!;
      const filled = oneSheet(
        left,
        sheet,
        { room: options.room, pull: PULLS[i % PULLS.length]! },
        () => random() < share,
      );
      const worth = filled.placements.reduce((sum, { item }) => sum + worthOf(item), 0);
      if (best === null || worth > most) [best, most] = [filled, worth];
      if (filled.rest.length === 0) break;
    }
    if (best === null || best.placements.length === 0) return null;
    sheets.push(best.placements);
    const gone = new Set(best.placements.map(({ item }) => item));
    left = left.filter((item) => !gone.has(item));
    options.placed?.(items.length - left.length);
  }
  return sheets;
}

/** @param items largest first; the first is always on the sheet */
function oneSheet<T extends Packable>(
  items: readonly T[],
  sheet: OpenSheet,
  options: { readonly room: number; readonly pull: Pull },
  offered: () => boolean,
): Filling<T> {
  const [now, later]: [T[], T[]] = [[], []];
  items.forEach((item, i) => {
    (i === 0 || offered() ? now : later).push(item);
  });
  const first = fill(now, sheet, { ...options, stepDown: STEP_DOWN })!;
  const second = fill(later, sheet, { ...options, kept: first.placements, stepDown: STEP_DOWN })!;
  return { ...second, rest: [...first.rest, ...second.rest] };
}

/** Between its own area and that of its upright rectangle: else what fits badly would be left for the last sheets. */
const worthOf = ({ ways, grown }: Packable): number => Math.sqrt(grown * ways[0]!.width * ways[0]!.height);
