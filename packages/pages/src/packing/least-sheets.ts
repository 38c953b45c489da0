import {
  area,
  boundingBox,
  contains,
  isClockwise,
  type Polygon,
  perimeter,
  turn,
} from '@seamwright/geometry';
import type { Regions } from '../sheet/sheet-frame.ts';

/**
 * Square points of everything nearer to the outline than `reach`, or a little less; never more.
 *
 * Convex outlines: area + perimeter · reach + π · reach², J. Steiner, 1840. Others: at least as much as a round shape of
 * the same area would take, by the inequality of Brunn and Minkowski. Both from memory.
 */
export function grownArea(outline: Polygon<'page'>, reach: number): number {
  const disc = Math.PI * reach * reach;
  return isConvex(outline)
    ? area(outline) + perimeter(outline) * reach + disc
    : (Math.sqrt(area(outline)) + Math.sqrt(Math.PI) * reach) ** 2;
}

/**
 * Square points of a sheet's room and of everything nearer to it than `reach`, or a little more; never less. The room is
 * six-cornered: Steiner's sum for it counts five quarter discs at its outer corners, and at the inner one a square
 * twice. That surplus is larger than any rounding, so a foundation that fills the room fits in it in numbers, too.
 */
export function grownRoom({ wide, tall }: Regions, reach: number): number {
  const boxes = [wide, tall];
  const [minX, minY] = [Math.min(wide.minX, tall.minX), Math.min(wide.minY, tall.minY)];
  const [maxX, maxY] = [Math.max(wide.maxX, tall.maxX), Math.max(wide.maxY, tall.maxY)];
  const areas = boxes.map((box) => (box.maxX - box.minX) * (box.maxY - box.minY));
  const both =
    Math.max(0, Math.min(wide.maxX, tall.maxX) - Math.max(wide.minX, tall.minX)) *
    Math.max(0, Math.min(wide.maxY, tall.maxY) - Math.max(wide.minY, tall.minY));
  const around = 2 * (maxX - minX + maxY - minY);
  return areas[0]! + areas[1]! - both + around * reach + (5 / 4) * Math.PI * reach * reach;
}

/** A cutting line, page points, and how many are to lie on sheets. */
export interface CountedOutline {
  readonly outline: Polygon<'page'>;
  readonly count: number;
}

export const once = (outline: Polygon<'page'>): CountedOutline => ({ outline, count: 1 });

/** What a bound needs to know of the foundations. */
export interface Demand {
  /** Those that lie on one sheet in one piece. */
  readonly whole: readonly CountedOutline[];
  /** Those that are cut up into tiles. */
  readonly cutUp: readonly CountedOutline[];
}

export interface LeastSheets {
  /** No way to place the foundations a gap apart takes fewer sheets. */
  readonly atLeast: number;
  /** By area alone: how many sheets the foundations would fill without any waste. Not rounded. */
  readonly byArea: number;
}

/**
 * How many sheets are needed at least, however the foundations are placed, turned by quarters.
 *
 * - **Area.** Foundations a gap apart, each grown by half of it, do not overlap, and lie in the sheet's room grown by as
 *   much. So the sheets' grown rooms hold the grown areas. (What is cut up counts with its bare area, and takes two sheets
 *   at least: its parts may stand beside others.)
 * - **What cannot share.** Let k be any area. A foundation of more than a room less k leaves no place for any of k or
 *   more. Of a set of foundations no two of which can share a sheet, each needs its own; what the others of k or more need
 *   beyond the places left there needs further sheets. Such sets are those of more than half a room, and those that
 *   hold a rectangle whose short side is more than half the room's long one, less a part of the gap: two rectangles a
 *   gap apart are apart by at least gap/√2 across or down, and in neither direction is there room for two.
 *   This is the bound L2 of S. Martello and P. Toth, Knapsack problems, 1990 (from memory), with a second set.
 *
 * @param reach half the gap, points
 */
export function leastSheets({ whole, cutUp }: Demand, regions: Regions, reach: number): LeastSheets {
  const room = grownRoom(regions, reach);
  // One that stands alone, close to the check squares, takes a sheet's room at most.
  const grown = Float64Array.from(whole, ({ outline }) => Math.min(room, grownArea(outline, reach)));
  const counts = Float64Array.from(whole, ({ count }) => count);
  const sum = grown.reduce((total, area, i) => total + area * counts[i]!, 0);
  const byArea = (sum + cutUp.reduce((total, { outline, count }) => total + count * area(outline), 0)) / room;
  const thresholds = new Set([0, ...grown.filter((area) => area <= room / 2)]);
  const longest = longestSharable(regions, reach);
  const sets = [
    Uint8Array.from(grown, (area) => Number(area > room / 2)),
    Uint8Array.from(whole, ({ outline }) => Number(shortSideInside(outline) > longest)),
  ];
  let atLeast = Math.max(Math.ceil(byArea), cutUp.length > 0 ? 2 : 0);
  for (const k of thresholds)
    for (const alone of sets) atLeast = Math.max(atLeast, boundAt(grown, counts, room, k, alone));
  return { atLeast, byArea };
}

/** @param alone of each, whether it is of the set in which no two share a sheet: 1 or 0 */
function boundAt(
  grown: Float64Array,
  counts: Float64Array,
  room: number,
  k: number,
  alone: Uint8Array,
): number {
  let fill = 0;
  let own = 0;
  let placesLeft = 0;
  let others = 0;
  for (let i = 0; i < grown.length; i++) {
    const area = grown[i]!;
    const count = counts[i]!;
    if (area > room - k) fill += count;
    else if (alone[i] === 1) {
      own += count;
      placesLeft += count * (room - area);
    } else if (area >= k) others += count * area;
  }
  return fill + own + Math.max(0, Math.ceil((others - placesLeft) / room));
}

/** Points: two rectangles whose short sides are longer never stand on one sheet, a gap apart. */
function longestSharable({ wide, tall }: Regions, reach: number): number {
  const across = Math.max(wide.maxX, tall.maxX) - Math.min(wide.minX, tall.minX);
  const down = Math.max(wide.maxY, tall.maxY) - Math.min(wide.minY, tall.minY);
  return (Math.max(across, down) - Math.SQRT2 * reach) / 2;
}

/** How far a rectangle is shrunk towards the middle until it lies in the outline. */
const SHRUNK = [1, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7] as const;

/** The short side of an upright rectangle that lies in a convex outline, a large one; 0 where none is found. */
function shortSideInside(outline: Polygon<'page'>): number {
  if (!isConvex(outline)) return 0;
  const { minX, minY, maxX, maxY } = boundingBox(outline);
  const [x, y] = [(minX + maxX) / 2, (minY + maxY) / 2];
  for (const share of SHRUNK) {
    const [across, down] = [((maxX - minX) / 2) * share, ((maxY - minY) / 2) * share];
    const corners = [
      { x: x - across, y: y - down },
      { x: x + across, y: y - down },
      { x: x + across, y: y + down },
      { x: x - across, y: y + down },
    ];
    if (corners.every((corner) => contains<'page'>(outline, corner) !== 'outside'))
      return 2 * Math.min(across, down);
  }
  return 0;
}

function isConvex(outline: Polygon<'page'>): boolean {
  const way = isClockwise(outline) ? 1 : -1;
  const count = outline.length;
  return outline.every((b, i) => {
    const side = turn(outline[(i + count - 1) % count]!, b, outline[(i + 1) % count]!);
    return side === 0 || side === way;
  });
}
