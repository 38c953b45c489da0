import { type Box, POINTS_PER_INCH, SAME_COORDINATE } from '@seamwright/geometry';

/** How one length is covered by tiles that overlap. */
export interface Cover {
  /** What each tile shows, points, in order. */
  readonly spans: readonly Span[];
  /** The middles of the overlaps: where tiles are laid edge to edge. */
  readonly joins: readonly number[];
  /** How many labels the joins run through. */
  readonly crossed: number;
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/** What joins are kept off, points along the length. */
export interface Obstacles {
  /** From end to end of each label. */
  readonly labels: readonly Span[];
  /** From end to end of each match mark: what is written beside it needs room. */
  readonly ticks: readonly Span[];
  /** Where lines run square to the length, beside which a join would run along. */
  readonly lines: readonly number[];
}

/** Where the joins go if nothing is in the way: all tiles alike, or all full but the last, or all full but the first. */
export type Leaning = 'even' | 'early' | 'late';

/** How a length is to be covered; points. */
export interface CoverOrder {
  /** The longest that a tile can be; at least three overlaps. */
  readonly most: number;
  readonly overlap: number;
  readonly obstacles: Obstacles;
  readonly leaning?: Leaning;
}

/** Points: how far a join is kept from lines if it can, so that no paper edge lies along a seam. */
const CLEARANCE = POINTS_PER_INCH / 4;

/** Points: how far a join is kept from a label. */
const LABEL_GAP = 2;

/** Points between the places that are tried for a join. Finer would find only gaps too narrow to cut in. */
const STEP = 1.5;

/** Points: how far a join is kept from a match mark if it can. */
const TICK_GAP = 12;

/**
 * What a join costs: through a label, close by a match mark, along a line, a tile's length away from where it would lean.
 * Any one label outweighs all else.
 */
const COST = { label: 1e6, tick: 300, line: 100, away: 1 };

/** The fewest tiles of at most `most` points, each overlapping the next by `overlap`, that cover the length. */
const fewestTiles = (length: number, most: number, overlap: number): number =>
  length <= most ? 1 : Math.ceil((length - overlap) / (most - overlap));

/**
 * The length from 0 covered by the fewest tiles, their joins at the places that cost least: off
 * labels, clear of lines, near where `leaning` would have them.
 *
 * Algorithm: dynamic programming over the joins in order, each at the cheapest of its places that the one before
 * leaves open. R. Bellman, Dynamic Programming, 1957 (from memory).
 */
export function cover(length: number, order: CoverOrder): Cover {
  const { most, overlap, obstacles, leaning = 'even' } = order;
  const count = fewestTiles(length, most, overlap);
  if (count === 1) return { spans: [alone(length, most)], joins: [], crossed: 0 };
  const core = most - overlap;
  const within = SAME_COORDINATE * POINTS_PER_INCH;
  let rows: readonly Place[] = [{ at: overlap / 2, cost: 0, before: null }];
  for (let k = 1; k < count; k++) {
    const last = Math.min(k * core + overlap / 2, length - overlap);
    const first = Math.max(length - (count - k) * core - overlap / 2, overlap);
    const target = { even: (k * length) / count, early: last, late: first }[leaning];
    const before = rows;
    const least = k === 1 ? overlap / 2 : overlap;
    rows = placesBetween(first, last, target).flatMap((at) => {
      const reachable = before.filter((place) => {
        const between = at - place.at;
        return between >= least - within && between <= core + within;
      });
      const best = cheapest(reachable);
      if (best === null) return [];
      const away = COST.away * ((at - target) / most) ** 2;
      return [{ at, cost: best.cost + joinCost(at, obstacles) + away, before: best }];
    });
  }
  const joins: number[] = [];
  for (let place = cheapest(rows); place?.before; place = place.before) joins.unshift(place.at);
  return {
    joins,
    spans: [0, ...joins].map((from, k) => ({
      from: k === 0 ? 0 : from - overlap / 2,
      to: k === joins.length ? length : joins[k]! + overlap / 2,
    })),
    crossed: joins.reduce((sum, join) => sum + labelsAt(join, obstacles), 0),
  };
}

/** Points: a narrow foundation gets so wide a tile, that its marks have room. */
const LEAST_SPAN = 1.5 * POINTS_PER_INCH;

/** One tile for all of the length. */
function alone(length: number, most: number): Span {
  const room = Math.max(0, Math.min(LEAST_SPAN, most) - length) / 2;
  return { from: -room, to: length + room };
}

/** A place for a join, what it and those before it cost together, and the one before. */
interface Place {
  readonly at: number;
  readonly cost: number;
  readonly before: Place | null;
}

const cheapest = (places: readonly Place[]): Place | null =>
  places.reduce<Place | null>(
    (best, place) => (best === null || place.cost < best.cost ? place : best),
    null,
  );

/** Every step from `first` to `last` as counted from `target`, and the two ends. */
function placesBetween(first: number, last: number, target: number): readonly number[] {
  // With no slack at all the two differ by their rounding.
  if (first >= last) return [(first + last) / 2];
  const start = target - Math.floor((target - first) / STEP) * STEP;
  const inner = Array.from({ length: Math.floor((last - start) / STEP) + 1 }, (_, i) => start + i * STEP);
  return [first, ...inner, last];
}

const countAt = (join: number, spans: readonly Span[], gap: number): number =>
  spans.filter(({ from, to }) => join > from - gap && join < to + gap).length;

const labelsAt = (join: number, { labels }: Obstacles): number => countAt(join, labels, LABEL_GAP);

function joinCost(join: number, obstacles: Obstacles): number {
  let cost = COST.label * labelsAt(join, obstacles) + COST.tick * countAt(join, obstacles.ticks, TICK_GAP);
  for (const line of obstacles.lines) cost += COST.line * Math.max(0, 1 - Math.abs(line - join) / CLEARANCE);
  return cost;
}

/** One tile: what it shows of the foundation, and where it stands in the grid. */
export interface Tile {
  readonly column: number;
  readonly row: number;
  /** All that it shows. */
  readonly window: Box<'page'>;
  /** What is left of that when every side with a join is trimmed there. */
  readonly core: Box<'page'>;
}

export interface TileGrid {
  readonly columns: Cover;
  readonly rows: Cover;
}

/** All tiles, row by row. */
export const tilesOf = ({ columns, rows }: TileGrid): readonly Tile[] =>
  rows.spans.flatMap((down, row) =>
    columns.spans.map((across, column) => ({
      column,
      row,
      window: boxOf(across, down),
      core: boxOf(trimmed(columns, column), trimmed(rows, row)),
    })),
  );

const boxOf = (across: Span, down: Span): Box<'page'> => ({
  minX: across.from,
  minY: down.from,
  maxX: across.to,
  maxY: down.to,
});

const trimmed = ({ spans, joins }: Cover, index: number): Span => ({
  from: joins[index - 1] ?? spans[index]!.from,
  to: joins[index] ?? spans[index]!.to,
});
