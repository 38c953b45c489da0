import type { Regions } from '../sheet/sheet-frame.ts';
import { ROW, type Rows } from './outline-rows.ts';
import type { Way } from './placement.ts';

/** Where on a sheet something may be put: its top left corner, and how good a place that is (less is better). */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly row: number;
  readonly rank: number;
}

/** How much the way down, and the way to the right, of a thing's centre count when places are compared. */
export interface Pull {
  readonly down: number;
  readonly right: number;
}

/** Counts the rows that are looked at, so that a search ends at the same point on every computer. */
export interface Budget {
  left: number;
}

/** One sheet while it is being filled: which stretches of its rows are taken. */
export class OpenSheet {
  /** Of each row the starts and ends of what is taken, from left to right. */
  private readonly taken: number[][];
  /** The longest stretch of each row that is not taken. */
  private readonly longest: number[];
  private readonly regions: Regions['wide'][];
  private readonly top: number;
  private readonly left: number;
  private readonly right: number;

  constructor(
    { wide, tall }: Regions,
    reach: number,
    private readonly budget: Budget,
  ) {
    this.top = Math.min(wide.minY, tall.minY);
    const bottom = Math.max(wide.maxY, tall.maxY);
    const count = Math.ceil((bottom - this.top + 2 * reach) / ROW) + 1;
    this.left = Math.min(wide.minX, tall.minX) - reach;
    this.right = Math.max(wide.maxX, tall.maxX) + reach;
    this.regions = [wide, tall];
    this.taken = Array.from({ length: count }, () => []);
    this.longest = new Array<number>(count).fill(this.right - this.left);
  }

  /** The best free place for a thing that lies this way; null when there is none that ranks before `before`. */
  spotFor(way: Way, { down, right }: Pull, before = Number.POSITIVE_INFINITY): Spot | null {
    const { width, height, centre, rows } = way;
    let best: Spot | null = null;
    let least = before;
    for (const { minX, minY, maxX, maxY } of this.regions) {
      const spareX = maxX - minX - width;
      if (spareX < 0 || maxY - minY < height) continue;
      for (let row = Math.ceil((minY - this.top) / ROW); ; row++) {
        const y = this.top + row * ROW;
        if (y + height > maxY) break;
        const level = (y + centre.y) * down + centre.x * right;
        if (level + minX * right >= least || rows.widest > this.longest[row + rows.widestAt]!) continue;
        const x = this.slide(rows, row, minX, minX + spareX);
        if (x > minX + spareX || level + x * right >= least) continue;
        least = level + x * right;
        best = { x, y, row, rank: least };
      }
    }
    return best;
  }

  take({ from, to }: Rows, { x, row }: Spot): void {
    for (let j = 0; j < from.length; j++) {
      const taken = this.taken[row + j]!;
      const start = x + from[j]!;
      let at = taken.length;
      while (at > 0 && taken[at - 2]! > start) at -= 2;
      taken.splice(at, 0, start, x + to[j]!);
      this.longest[row + j] = this.longestFree(taken);
    }
  }

  private longestFree(taken: readonly number[]): number {
    let longest = 0;
    let from = this.left;
    for (let i = 0; i < taken.length; i += 2) {
      longest = Math.max(longest, taken[i]! - from);
      from = taken[i + 1]!;
    }
    return Math.max(longest, this.right - from);
  }

  /** The first x from `left` to `right` at which all rows are free; a greater one when there is none. */
  private slide({ from, to }: Rows, top: number, left: number, right: number): number {
    const count = from.length;
    let x = left;
    // Row by row, a stride apart so that a large obstacle is met early, until all are free one after another.
    const stride = strideFor(count);
    let [free, looked, j] = [0, 0, 0];
    while (free < count && x <= right) {
      const taken = this.taken[top + j]!;
      const start = from[j]!;
      const end = to[j]!;
      free++;
      for (let i = 0; i < taken.length; i += 2) {
        const behind = taken[i + 1]! - start;
        if (behind <= x) continue;
        if (taken[i]! - end >= x) break;
        x = behind;
        free = 1;
      }
      looked++;
      j += stride;
      if (j >= count) j -= count;
    }
    this.budget.left -= looked;
    return x;
  }
}

const STRIDES: number[] = [];

/** Near 0.382 of the count, which spreads the steps evenly, and without a common factor, so that none is left out. */
function strideFor(count: number): number {
  let stride = STRIDES[count];
  if (stride === undefined) {
    stride = Math.max(1, Math.round(count * 0.382));
    while (commonFactor(stride, count) !== 1) stride++;
    STRIDES[count] = stride;
  }
  return stride;
}

const commonFactor = (p: number, q: number): number => (q === 0 ? p : commonFactor(q, p % q));
