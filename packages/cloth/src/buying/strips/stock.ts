/**
 * The two-stage cutting-stock problem (Gilmore and Gomory, Operations Research 13, 1965): strips are cut across a
 * fabric of endless length, then each strip is cut into pieces. Here lengths are whole numbers of grid steps
 * ({@link toGrid}), so that sums and comparisons are exact.
 */

/** One way in which a piece lies in a strip: `length` along it, `height` across. */
export interface Way {
  readonly length: number;
  readonly height: number;
}

/** Pieces of one size. */
export interface Item {
  readonly count: number;
  /** One or two, none longer than the strip. */
  readonly ways: readonly Way[];
}

export interface Stock {
  /** Length of every strip: the usable width of the fabric. */
  readonly capacity: number;
  /** Whether a piece may lie in a strip that is higher than it, and be trimmed. */
  readonly trim: boolean;
  readonly items: readonly Item[];
}

/** What is cut from one strip. */
export interface StripPattern {
  readonly height: number;
  readonly cuts: readonly Cut[];
}

export interface Cut {
  /** Index in the stock's items. */
  readonly item: number;
  readonly way: Way;
  readonly count: number;
}

/** Strips that are cut alike. */
export interface Strips {
  readonly pattern: StripPattern;
  readonly count: number;
}

/** The heights that strips can have, the greatest first. */
export const heightsOf = ({ items }: Stock): number[] =>
  [...new Set(items.flatMap(({ ways }) => ways.map(({ height }) => height)))].sort((a, b) => b - a);

/** How an item lies in strips of a height: of two ways, the one that takes less of the strip. */
export function wayIn({ items, trim }: Stock, item: number, height: number): Way | undefined {
  const fitting = items[item]!.ways.filter((way) => (trim ? way.height <= height : way.height === height));
  return fitting.reduce<Way | undefined>(
    (best, way) => (best === undefined || way.length < best.length ? way : best),
    undefined,
  );
}

/** The fabric that strips take, in grid steps. */
export const lengthOf = (strips: readonly Strips[]): number =>
  strips.reduce((sum, { pattern, count }) => sum + pattern.height * count, 0);

/** Strips that are cut alike put together, the highest first; in the order of their first. */
export function gathered(strips: readonly Strips[]): Strips[] {
  const groups = new Map<string, { pattern: StripPattern; count: number }>();
  for (const { pattern, count } of strips) {
    const cuts = pattern.cuts.map(({ item, way, count: n }) => [item, way.length, way.height, n].join('/'));
    const key = [pattern.height, ...cuts.sort()].join(' ');
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { pattern, count });
    else group.count += count;
  }
  return [...groups.values()].sort((a, b) => b.pattern.height - a.pattern.height);
}
