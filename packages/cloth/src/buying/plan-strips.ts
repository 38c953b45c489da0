import { fail, formatSize, ok, type Result, SAME_COORDINATE } from '@seamwright/geometry';
import { fromGrid, roomOnGrid, toGrid } from './strips/grid.ts';
import { type LoadSolver, leastStrips } from './strips/least.ts';
import { type Item, lengthOf, type Strips, type Way } from './strips/stock.ts';

/** Rectangles of one size that are to be cut, inches. */
export interface Rectangles {
  readonly width: number;
  readonly height: number;
  readonly count: number;
}

export interface StripRules {
  /** Length of a strip, selvedge to selvedge less what is not used, inches. */
  readonly usableWidth: number;
  /** Length of the fabric, so that no strip is higher, inches; there is no end to it when left out. */
  readonly longest?: number;
  /** Widths lie across the fabric, and no piece is turned by a quarter: the print has an up, or the grain is followed. */
  readonly upright?: boolean;
  /**
   * Whether pieces may be cut from a strip that is higher than they are, and trimmed: one more cut for each of them, and
   * less fabric. Otherwise a strip is as high as all its pieces.
   */
  readonly trim?: boolean;
}

/** Pieces cut one after the other from a strip. */
export interface SubCut {
  /** Along the strip, inches. */
  readonly width: number;
  readonly count: number;
  /** To what height each is trimmed; left out where it is the strip's. */
  readonly height?: number;
}

/** Strips across the fabric that are cut alike. */
export interface Strip {
  /** Along the fabric's length, inches. */
  readonly height: number;
  readonly count: number;
  readonly cuts: readonly SubCut[];
  /** What is left at the end of each, inches. */
  readonly leftover: number;
}

export interface StripPlan {
  readonly strips: readonly Strip[];
  /** Whether pieces might be trimmed from higher strips ({@link StripRules.trim}): of what kind of plan the bound is. */
  readonly trim: boolean;
  /** Fabric that the strips take, inches. */
  readonly lengthInches: number;
  /** Fabric that no plan of the kind does without, inches. */
  readonly atLeast: number;
  /** Whether these two meet. */
  readonly provenLeast: boolean;
  /** Longer than the fabric is wide, and so cut along its length; of a directional print, with the print lying on its side. */
  readonly alongLength: readonly Rectangles[];
  /** Wider than the fabric both ways: cut from nothing here. */
  readonly tooLarge: readonly Rectangles[];
}

/**
 * Plans strips across the fabric that yield all the rectangles from the least length: what is left over within strips
 * counts as lost.
 *
 * Problems: a usable width or a size that is no length above 0, a count that is no whole number.
 *
 * @param load loads HiGHS when first fit does not meet the bound; without it, first fit is all that is tried
 */
export async function planStrips(
  rectangles: readonly Rectangles[],
  { usableWidth, longest = Number.POSITIVE_INFINITY, upright = false, trim = false }: StripRules,
  load?: LoadSolver,
): Promise<Result<StripPlan>> {
  if (!isLength(usableWidth))
    return fail('The usable width of the fabric is no length above 0', '', 'Give it, such as 40');
  const bad = rectangles.find(
    ({ width, height, count }) =>
      !isLength(width) || !isLength(height) || !Number.isInteger(count) || count < 0,
  );
  if (bad !== undefined)
    return fail(
      'A piece has no size above 0, or no whole count',
      formatSize(bad.width, bad.height, 'in'),
      'Correct its cut size or count',
    );

  const capacity = roomOnGrid(usableWidth);
  const highest = roomOnGrid(longest);
  const alongLength: Rectangles[] = [];
  const tooLarge: Rectangles[] = [];
  const items = new Map<string, Item>();
  for (const rectangle of rectangles) {
    if (rectangle.count === 0) continue;
    const lying: Way = { length: toGrid(rectangle.width), height: toGrid(rectangle.height) };
    const standing: Way = { length: lying.height, height: lying.length };
    // A print goes with its upright way as long as that fits; where it does not, the fabric's length is the way out.
    const inOrder = upright && fitsIn(lying, capacity, highest) ? [lying] : [lying, standing];
    const ways = inOrder.filter((way) => fitsIn(way, capacity, highest));
    if (ways.length === 0 || (upright && longest !== Number.POSITIVE_INFINITY && ways[0] !== lying)) {
      tooLarge.push(rectangle);
      continue;
    }
    if (ways[0] === standing || (!upright && standing.length > capacity)) alongLength.push(rectangle);
    const different = lying.length === lying.height ? ways.slice(0, 1) : ways;
    const key = different
      .map(({ length, height }) => `${length}/${height}`)
      .sort()
      .join(' ');
    items.set(key, { ways: different, count: rectangle.count + (items.get(key)?.count ?? 0) });
  }
  const least = await leastStrips({ capacity, trim, items: [...items.values()] }, load);
  const length = lengthOf(least.strips);
  return ok({
    strips: least.strips.map((strips) => stripOf(strips, usableWidth)),
    trim,
    lengthInches: fromGrid(length),
    atLeast: fromGrid(least.atLeast),
    provenLeast: length === least.atLeast,
    alongLength,
    tooLarge,
  });
}

function stripOf({ pattern, count }: Strips, usableWidth: number): Strip {
  const cuts = new Map<string, { way: Way; count: number }>();
  for (const cut of pattern.cuts) {
    const key = `${cut.way.length}/${cut.way.height}`;
    cuts.set(key, { way: cut.way, count: cut.count + (cuts.get(key)?.count ?? 0) });
  }
  const sorted = [...cuts.values()].sort(
    (a, b) => b.way.height - a.way.height || b.way.length - a.way.length,
  );
  const used = sorted.reduce((sum, { way, count: n }) => sum + way.length * n, 0);
  return {
    height: fromGrid(pattern.height),
    count,
    cuts: sorted.map(({ way, count: n }) => ({
      width: fromGrid(way.length),
      count: n,
      ...(way.height < pattern.height && { height: fromGrid(way.height) }),
    })),
    leftover: Math.max(0, usableWidth - fromGrid(used)),
  };
}

const fitsIn = ({ length, height }: Way, capacity: number, highest: number): boolean =>
  length <= capacity && height <= highest;

const isLength = (inches: number): boolean => Number.isFinite(inches) && inches > SAME_COORDINATE;
