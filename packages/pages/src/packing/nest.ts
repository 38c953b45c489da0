import type { Regions } from '../sheet/sheet-frame.ts';
import { type Budget, OpenSheet, type Pull, type Spot } from './open-sheet.ts';
import type { Packable, Placement } from './placement.ts';

/** Everything that the filling of a sheet needs to know. */
export interface NestOptions {
  readonly regions: Regions;
  /** Half the gap, points. */
  readonly reach: number;
  /** Square points of a sheet, with half the gap round it. */
  readonly room: number;
  /** How often each sheet is filled, the fullest counts. */
  readonly tries: number;
  readonly budget: Budget;
  /** Called when a sheet is full, with how many items have a place. */
  readonly placed?: (count: number) => void;
}

/** To the left first, to the top first, and between: which one fills a sheet best depends on what is left. */
const PULLS: readonly Pull[] = [
  { down: 0.3, right: 1 },
  { down: 1, right: 0.01 },
  { down: 1, right: 0.3 },
  { down: 1, right: 1 },
];

/** Of what is left, largest first, how large a share is offered to a sheet in the first round. */
const SHARES = [0.15, 0.3, 0.5, 0.75] as const;

/**
 * After something found no place, what is more than so large a share of it is not tried: it would hardly find one. It
 * keeps the search short where hundreds of nearly the same size are left.
 */
const STEP_DOWN = 0.96;

/**
 * Puts the items on sheets, one sheet after the other: the largest that is left, then whatever else there is room for,
 * largest first, each in the way and the place that lets its centre lie nearest to the top left. Each sheet is filled
 * several times, with different items left out at first, and the fullest counts; “full” weighs items by how hard they
 * are to place. Null when the budget ends before everything has a place.
 *
 * Bottom-left placement of irregular shapes by their centre, and filling bin after bin from a sorted list: J. A. Bennell
 * and J. F. Oliveira, A tutorial in irregular shape packing problems, Journal of the Operational Research Society 60,
 * 2009 (from memory). The choice among random fillings is our own; the random numbers always start alike.
 */
export function nest<T extends Packable>(
  items: readonly T[],
  options: NestOptions,
): readonly (readonly Placement<T>[])[] | null {
  const random = randomFrom(1);
  let left = [...items].sort((p, q) => q.grown - p.grown);
  const sheets: (readonly Placement<T>[])[] = [];
  while (left.length > 0) {
    let best: Filled<T> | null = null;
    for (let i = 0; i < options.tries && (i === 0 || options.budget.left > 0); i++) {
      const share = i === 0 ? 1 : SHARES[Math.floor(random() * SHARES.length)]!;
      const filled = fill(left, options, PULLS[i % PULLS.length]!, () => random() < share);
      if (best === null || filled.worth > best.worth) best = filled;
      if (filled.nested.length === left.length) break;
    }
    if (best === null || best.nested.length === 0) return null;
    sheets.push(best.nested);
    const gone = new Set(best.nested.map(({ item }) => item));
    left = left.filter((item) => !gone.has(item));
    options.placed?.(items.length - left.length);
  }
  return sheets;
}

interface Filled<T extends Packable> {
  readonly nested: readonly Placement<T>[];
  readonly worth: number;
}

/** @param items largest first; the first is always on the sheet */
function fill<T extends Packable>(
  items: readonly T[],
  { regions, reach, room, budget }: NestOptions,
  pull: Pull,
  offered: () => boolean,
): Filled<T> {
  const sheet = new OpenSheet(regions, reach, budget);
  const nested: Placement<T>[] = [];
  let free = room;
  let worth = 0;
  const offer = (list: readonly T[]) => {
    let largest = Number.POSITIVE_INFINITY;
    for (const item of list) {
      if (item.grown > free || item.grown > largest) continue;
      const found = bestPlace(sheet, item, pull);
      if (found === null) {
        largest = item.grown * STEP_DOWN;
        continue;
      }
      sheet.take(found.way.rows, found.spot);
      nested.push({ item, way: found.way, x: found.spot.x, y: found.spot.y });
      free -= item.grown;
      worth += worthOf(item);
    }
  };
  const [now, later]: [T[], T[]] = [[], []];
  items.forEach((item, i) => {
    (i === 0 || offered() ? now : later).push(item);
  });
  offer(now);
  offer(later);
  return { nested, worth };
}

/** Between its own area and that of its upright rectangle: else what fits badly would be left for the last sheets. */
const worthOf = ({ ways, grown }: Packable): number => Math.sqrt(grown * ways[0]!.width * ways[0]!.height);

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

/** Random numbers from 0 to 1, the same for the same seed. Mulberry32, T. Ettinger, 2017 (from memory). */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
