import { type Filling, fill, PULLS, type Standing } from './fill.ts';
import type { NestOptions } from './nest.ts';
import { OpenSheet, type Pull } from './open-sheet.ts';
import type { Packable } from './placement.ts';
import { randomFrom } from './random.ts';

export interface RefineOptions extends Pick<NestOptions, 'grid' | 'room' | 'budget'> {
  /** With so few sheets the search ends; at least 1. */
  readonly enough: number;
  /** Called now and then, with what share of the budget is spent. */
  readonly spent?: (share: number) => void;
}

/** One in so many steps fills a sheet anew; the others take a few neighbours off and fill where they stood. */
const ANEW = 20;

/** So many neighbours at most. */
const NEIGHBOURS = 6;

/** So many of those that have no place are offered at a time, about: with all, a step would take longer and gain no more. */
const OFFERED = 14;

/** The less full of two sheets is the one that is changed, but for this share of the steps. */
const ANY_SHEET = 0.1;

/** How far from the largest to the smallest the order strays in which items are offered. */
const SPREAD = 0.75;

/** Shares of a sheet by which a step may leave less on it, about, at the beginning. */
const LOSS = 0.003;

/** A sheet is given up while less than so many sheets' worth has no place: a choice of what may fill a gap. */
const CHOICE = 1;

/** With more than so many sheets' worth without a place there is one sheet more. */
const BEYOND = 2;

/** Steps between two times at which all that has no place is tried on one sheet. */
const TRIED = 60;

/** What has no place is worth so much more of its size each time that this is looked at. */
const DEARER = 0.01;
/** So much of what things won that way they keep each time. */
const FADES = 0.99;

/** Steps for each sheet between two such times. */
const LOOKED_AT = 22;

/** So often progress is told. */
const TOLD = 100;

/**
 * Looks for a way to do with fewer sheets, until the budget ends: gives up the least full, and then finds places on the
 * others for what stood there. A step takes one sheet, lifts some neighbours off it, and fills the gap with these and
 * with what has no place, in an order of its own; it counts when the sheet is then fuller, or hardly less full, less and
 * less so as the search goes on. What is left out for long becomes worth more than its size, so that others make room
 * for it that find a place more easily. There are always two sheets less than in the best so far: what has no place is enough to
 * choose from, to the end, and it needs one sheet only. Gives the sheets as they came where nothing is gained.
 *
 * Ruin and recreate: G. Schrimpf, J. Schneider, H. Stamm-Wilbrandt, G. Dueck, Record breaking optimization results using the
 * ruin and recreate principle, Journal of Computational Physics 159, 2000 (from memory). The random numbers always start alike.
 */
export function refine<T extends Packable>(
  sheets: readonly (readonly Standing<T>[])[],
  options: RefineOptions,
): readonly (readonly Standing<T>[])[] {
  const { grid, enough, budget, room, spent } = options;
  const sheet = new OpenSheet(grid, budget);
  const random = randomFrom(2);
  const whole = budget.left;
  let best: readonly (readonly Standing<Sought<T>>[])[] | null = null;
  let fewest = sheets.length;
  let told = 0;
  const open: Filling<Sought<T>>[] = sheets.map((placements) => ({
    placements: placements.map((place) => ({ ...place, item: sought(place.item) })),
    grown: placements.reduce((sum, { item }) => sum + item.grown, 0),
    rest: [],
  }));
  const all = open.flatMap(({ placements }) => placements.map(({ item }) => item));
  let waiting: readonly Sought<T>[] = [];
  let without = 0;
  let steps = 0;
  let sinceLooked = 0;
  while (budget.left > 0) {
    const share = budget.left / whole;
    if (waiting.length === 0) {
      without = 0;
      if (open.length < fewest) {
        best = open.map(({ placements }) => placements);
        fewest = open.length;
      }
    } else if (++steps % TRIED === 0 && open.length + 1 < fewest && without < room) {
      const last = allOnOne(waiting, sheet, room, random);
      if (last !== null) {
        best = [...open, last].map(({ placements }) => placements);
        fewest = best.length;
      }
    }
    if (fewest <= enough) break;
    while (open.length > Math.max(1, enough - 1, fewest - 2) && without < CHOICE * room) {
      const { placements, grown } = leastFull(open);
      waiting = [...waiting, ...placements.map(({ item }) => item)];
      without += grown;
    }
    if (open.length + 1 < fewest && without > BEYOND * room)
      open.push({ placements: [], grown: 0, rest: [] });
    if (++sinceLooked >= LOOKED_AT * open.length) {
      raiseWorth(all, waiting);
      sinceLooked = 0;
    }
    const at = lessFull(open, random);
    const before = open[at]!;
    let least = -LOSS * room * share * seldomLarge(random);
    for (const { item } of before.placements) least += item.worth;
    const next = step(before, waiting, { sheet, room, least }, random);
    if (next !== null) {
      open[at] = next;
      waiting = next.rest;
      without += before.grown - next.grown;
    }
    if ((1 - share) * TOLD >= told) {
      told = Math.floor((1 - share) * TOLD) + 1;
      spent?.(1 - share);
    }
  }
  if (best === null) return sheets;
  return best.map((placements) => placements.map((place) => ({ ...place, item: place.item.item })));
}

/** A sheet with all of them; null when they have no room, or none was found in an order of its own. */
function allOnOne<T extends Packable>(
  items: readonly Sought<T>[],
  sheet: OpenSheet,
  room: number,
  random: () => number,
): Filling<Sought<T>> | null {
  const pull = pullOf(random);
  const order = items.slice();
  sortMoreOrLess(order, random);
  return fill(order, sheet, { room, pull, least: order.length, worthOf: () => 1 });
}

const pullOf = (random: () => number): Pull => PULLS[Math.floor(random() * PULLS.length)]!;

/** Something that is to have a place. */
interface Sought<T extends Packable> extends Packable<T['ways'][number]> {
  readonly item: T;
  /** Square points: its size and more, the longer it had no place. */
  worth: number;
}

const sought = <T extends Packable>(item: T): Sought<T> => ({
  item,
  ways: item.ways,
  grown: item.grown,
  worth: item.grown,
});

const worthOf = ({ worth }: Sought<Packable>): number => worth;

function raiseWorth(all: readonly Sought<Packable>[], waiting: readonly Sought<Packable>[]): void {
  for (const one of all) one.worth = one.grown + FADES * (one.worth - one.grown);
  for (const one of waiting) one.worth += DEARER * one.grown;
}

/** Takes the least full sheet away. */
function leastFull<T extends Packable>(open: Filling<T>[]): Filling<T> {
  let at = 0;
  for (let i = 1; i < open.length; i++) if (open[i]!.grown < open[at]!.grown) at = i;
  return open.splice(at, 1)[0]!;
}

function lessFull(open: readonly Filling<Packable>[], random: () => number): number {
  const one = Math.floor(random() * open.length);
  const other = Math.floor(random() * open.length);
  return random() > ANY_SHEET && open[other]!.grown < open[one]!.grown ? other : one;
}

interface StepOptions {
  readonly sheet: OpenSheet;
  readonly room: number;
  /** What all on it is to be worth. */
  readonly least: number;
}

/** The sheet after a change; its `rest` is all that then has no place. Null when it would be worth less than is wanted. */
function step<T extends Packable>(
  { placements }: Filling<Sought<T>>,
  waiting: readonly Sought<T>[],
  { sheet, room, least }: StepOptions,
  random: () => number,
): Filling<Sought<T>> | null {
  const pull = pullOf(random);
  if (placements.length === 0 || random() * ANEW < 1) {
    const items = waiting.slice();
    for (const { item } of placements) items.push(item);
    sortMoreOrLess(items, random);
    return fill(items, sheet, { room, pull, least, worthOf });
  }
  const [offered, notOffered]: [Sought<T>[], Sought<T>[]] = [[], []];
  for (const item of waiting) (random() * waiting.length < OFFERED ? offered : notOffered).push(item);
  const kept = liftNeighbours(placements, random, offered);
  sortMoreOrLess(offered, random);
  const filled = fill(offered, sheet, { room, pull, least, worthOf, kept });
  if (filled === null) return null;
  for (const item of filled.rest) notOffered.push(item);
  // Named one by one: objects that are spread together are made slowly.
  return { placements: filled.placements, grown: filled.grown, rest: notOffered };
}

/** Takes one off, and those nearest to it by their middles. Gives the others. */
function liftNeighbours<T extends Packable>(
  placements: readonly Standing<T>[],
  random: () => number,
  lifted: T[],
): readonly Standing<T>[] {
  const from = placements[Math.floor(random() * placements.length)]!;
  const count = 1 + Math.floor(random() * Math.min(NEIGHBOURS, placements.length));
  const x = from.x + from.way.width / 2;
  const y = from.y + from.way.height / 2;
  const away = placements.map((place) => {
    const dx = place.x + place.way.width / 2 - x;
    const dy = place.y + place.way.height / 2 - y;
    return dx * dx + dy * dy;
  });
  const reach = lowest(away, count);
  const kept: Standing<T>[] = [];
  for (let i = 0; i < placements.length; i++) {
    if (away[i]! <= reach) lifted.push(placements[i]!.item);
    else kept.push(placements[i]!);
  }
  return kept;
}

/** The largest of the so many lowest numbers. */
function lowest(numbers: readonly number[], count: number): number {
  const sorted: number[] = [];
  for (const number of numbers) {
    if (sorted.length === count && number >= sorted[count - 1]!) continue;
    let at = Math.min(sorted.length, count - 1);
    for (; at > 0 && sorted[at - 1]! > number; at--) sorted[at] = sorted[at - 1]!;
    sorted[at] = number;
  }
  return sorted[count - 1]!;
}

/** Large ones first, more or less. By insertion: it is a dozen, nearly always. */
function sortMoreOrLess(items: Sought<Packable>[], random: () => number): void {
  const stray = SPREAD * random();
  const keys: number[] = [];
  for (let i = 0; i < items.length; i++) {
    const item = items[i]!;
    const key = item.grown * (1 + stray * (2 * random() - 1));
    let at = i;
    for (; at > 0 && keys[at - 1]! < key; at--) {
      keys[at] = keys[at - 1]!;
      items[at] = items[at - 1]!;
    }
    keys[at] = key;
    items[at] = item;
  }
}

/** A number that is 1 on the average, about, and seldom much more. Without a logarithm, whose last digits may differ. */
function seldomLarge(random: () => number): number {
  const u = random();
  return (1 - u) / (2 * u + 0.1);
}
