import { type Filling, fill, PULLS } from './fill.ts';
import { type NestOptions, nest } from './nest.ts';
import type { Packable, Placement } from './placement.ts';
import { randomFrom } from './random.ts';

export interface RefineOptions extends Omit<NestOptions, 'placed'> {
  /** With so few sheets the search ends; at least 1. */
  readonly enough: number;
  /** Called now and then, with what share of the budget is spent. */
  readonly spent?: (share: number) => void;
}

/** One in so many steps fills a sheet anew; the others take a few neighbours off and fill where they stood. */
const ANEW = 20;

/** So many neighbours at most. */
const NEIGHBOURS = 4;

/** So many of those that have no place are offered at a time, about: with all, a step would take longer and gain no more. */
const OFFERED = 6;

/** The less full of two sheets is the one that is changed, but for this share of the steps. */
const ANY_SHEET = 0.1;

/** How far from the largest to the smallest the order strays in which items are offered. */
const SPREAD = 0.75;

/** Shares of a sheet by which a step may leave less on it, about, at the beginning. */
const LOSS = 0.01;

/** This share of the sheets is given up at a time, the least full. */
const GIVEN_UP = 0.02;

/** So often progress is told. */
const TOLD = 100;

/**
 * Looks for a way to do with fewer sheets, until the budget ends: gives up the least full, and then finds places on the
 * others for what stood there. A step takes one sheet, lifts some neighbours off it, and fills the gap with these and
 * with what has no place, in an order of its own; it counts when the sheet is then fuller, or hardly less full, less and
 * less so as the search goes on. Gives the sheets as they came where nothing is gained.
 *
 * Ruin and recreate: G. Schrimpf, J. Schneider, H. Stamm-Wilbrandt, G. Dueck, Record breaking optimization results using the
 * ruin and recreate principle, Journal of Computational Physics 159, 2000 (from memory). The random numbers always start alike.
 */
export function refine<T extends Packable>(
  sheets: readonly (readonly Placement<T>[])[],
  options: RefineOptions,
): readonly (readonly Placement<T>[])[] {
  const { enough, budget, room, spent } = options;
  const random = randomFrom(2);
  const whole = budget.left;
  let best = sheets;
  let told = 0;
  const open: Filling<T>[] = sheets.map((placements) => ({
    placements,
    grown: placements.reduce((sum, { item }) => sum + item.grown, 0),
    rest: [],
  }));
  let waiting: readonly T[] = [];
  while (budget.left > 0) {
    if (waiting.length === 0) {
      if (open.length < best.length) best = open.map(({ placements }) => placements);
      if (open.length <= enough) return best;
      waiting = giveUp(open, enough);
    }
    const at = lessFull(open, random);
    const sheet = open[at]!;
    const next = step(sheet, waiting, options, random);
    const loss = LOSS * room * (budget.left / whole) * seldomLarge(random);
    if (next.grown >= sheet.grown - loss) {
      open[at] = next;
      waiting = next.rest;
    }
    const share = Math.min(1, 1 - budget.left / whole);
    if (share * TOLD >= told) {
      told = Math.floor(share * TOLD) + 1;
      spent?.(share);
    }
  }
  const extra = nest(waiting, { ...options, budget: { left: whole } });
  return extra !== null && open.length + extra.length < best.length
    ? [...open.map(({ placements }) => placements), ...extra]
    : best;
}

/** Takes the least full sheets away; what stood on them. */
function giveUp<T extends Packable>(open: Filling<T>[], enough: number): readonly T[] {
  open.sort((p, q) => q.grown - p.grown);
  const count = Math.min(open.length - enough, Math.max(1, Math.round(open.length * GIVEN_UP)));
  return open.splice(open.length - count).flatMap(({ placements }) => placements.map(({ item }) => item));
}

function lessFull(open: readonly Filling<Packable>[], random: () => number): number {
  const one = Math.floor(random() * open.length);
  const other = Math.floor(random() * open.length);
  return random() > ANY_SHEET && open[other]!.grown < open[one]!.grown ? other : one;
}

/** The sheet after a change; its `rest` is all that then has no place. */
function step<T extends Packable>(
  { placements }: Filling<T>,
  waiting: readonly T[],
  options: RefineOptions,
  random: () => number,
): Filling<T> {
  const pull = PULLS[Math.floor(random() * PULLS.length)]!;
  if (random() * ANEW < 1) {
    const items = [...waiting, ...placements.map(({ item }) => item)];
    return fill(inSomeOrder(items, random), options, pull);
  }
  const lifted = new Set(someNeighbours(placements, random));
  const offered: T[] = [];
  const notOffered: T[] = [];
  for (const item of waiting) (random() * waiting.length < OFFERED ? offered : notOffered).push(item);
  for (const { item } of lifted) offered.push(item);
  const kept = placements.filter((placement) => !lifted.has(placement));
  const filled = fill(inSomeOrder(offered, random), options, pull, kept);
  return { ...filled, rest: [...notOffered, ...filled.rest] };
}

/** One and those nearest to it, by their middles. */
function someNeighbours<T extends Packable>(
  placements: readonly Placement<T>[],
  random: () => number,
): readonly Placement<T>[] {
  const middle = ({ x, y, way }: Placement<T>) => ({ x: x + way.width / 2, y: y + way.height / 2 });
  const from = middle(placements[Math.floor(random() * placements.length)]!);
  const away = (placement: Placement<T>): number => {
    const { x, y } = middle(placement);
    return (x - from.x) ** 2 + (y - from.y) ** 2;
  };
  const count = 1 + Math.floor(random() * Math.min(NEIGHBOURS, placements.length));
  return [...placements].sort((p, q) => away(p) - away(q)).slice(0, count);
}

/** Large ones first, more or less. */
function inSomeOrder<T extends Packable>(items: readonly T[], random: () => number): readonly T[] {
  const stray = SPREAD * random();
  return items
    .map((item) => ({ item, key: item.grown * (1 + stray * (2 * random() - 1)) }))
    .sort((p, q) => q.key - p.key)
    .map(({ item }) => item);
}

/** A number that is 1 on the average, about, and seldom much more. Without a logarithm, whose last digits may differ. */
function seldomLarge(random: () => number): number {
  const u = random();
  return (1 - u) / (2 * u + 0.1);
}
