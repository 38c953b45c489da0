import { PACKING_ROUNDING } from '@seamwright/geometry';
import type { CellGrid, Cells } from './cell-grid.ts';
import { type Convex, NoFitPolygons } from './no-fit.ts';
import type { Way } from './placement.ts';

/** Where on a sheet something may be put: its top left corner, and how good a place that is (less is better). */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly rank: number;
}

/** How much the way down, and the way to the right, of a thing's centre count when places are compared; both above 0. */
export interface Pull {
  readonly down: number;
  readonly right: number;
}

/** Counts the pairs of things that are looked at, so that a search ends at the same point on every computer. */
export interface Budget {
  left: number;
}

/** A step beyond the place at which something is left, for rounding; no unit. */
const BEYOND = 1 + 8 * Number.EPSILON;

/** One for all sheets: what it holds is of one search for a place. */
const noFit = new NoFitPolygons();

/** One sheet after the other, while it is being filled. */
export class OpenSheet {
  /** What stands on it, and where. */
  private readonly parts: Convex[] = [];
  private readonly lefts: number[] = [];
  private readonly tops: number[] = [];
  private count = 0;

  // One search: its pull, the places that are possible at all, and the best so far.
  private down = 0;
  private right = 0;
  private minX = 0;
  private minY = 0;
  private maxX = 0;
  private maxY = 0;
  private least = 0;
  private bestX = 0;
  private bestY = 0;
  /** What was in the way last, which is often in the way again. */
  private last = 0;

  constructor(
    readonly grid: CellGrid,
    private readonly budget: Budget,
  ) {}

  /** An empty sheet from now on. */
  clear(): void {
    this.count = 0;
    this.grid.clear();
  }

  /** @param cells what it takes of the grid */
  take({ parts }: Way, x: number, y: number, cells: Cells): void {
    this.grid.take(cells);
    for (const part of parts) {
      this.parts[this.count] = part;
      this.lefts[this.count] = x;
      this.tops[this.count] = y;
      this.count++;
    }
  }

  /**
   * The best free place for a thing that lies this way; null when there is none that ranks before `before`.
   *
   * The best place lies at a corner of the free ones: where an edge of what is taken meets another, or the edge of the
   * room. So each such edge is followed, towards worse places, from where it begins to the first place that is free.
   */
  spotFor(way: Way, { down, right }: Pull, before = Number.POSITIVE_INFINITY): Spot | null {
    const { grid } = this;
    if (!this.within(way)) return null;
    this.budget.left--;
    if (!grid.mayHold(way)) return null;
    this.minX = Math.max(this.minX, grid.minX);
    this.minY = Math.max(this.minY, grid.minY);
    this.maxX = Math.min(this.maxX, grid.maxX);
    this.maxY = Math.min(this.maxY, grid.maxY);
    if (this.minX > this.maxX || this.minY > this.maxY) return null;
    const { centre } = way;
    this.down = down;
    this.right = right;
    const centreRank = centre.y * down + centre.x * right;
    const start = before - centreRank;
    this.least = start;
    if (this.minX * right + this.minY * down >= start) return null;
    this.findTaken(way);
    this.budget.left -= noFit.count;
    this.last = 0;
    this.follow(this.minX, this.minY, this.minX, this.maxY, -1);
    this.follow(this.minX, this.minY, this.maxX, this.minY, -1);
    for (let k = 0; k < noFit.count; k++) this.followRound(k);
    return this.least < start ? { x: this.bestX, y: this.bestY, rank: this.least + centreRank } : null;
  }

  /** Finds where the thing may stand on an empty sheet: in one of the regions, which share their top and right edges. */
  private within({ width, height }: Way): boolean {
    const { wide, tall } = this.grid.regions;
    const inWide = width <= wide.maxX - wide.minX && height <= wide.maxY - wide.minY;
    const inTall = width <= tall.maxX - tall.minX && height <= tall.maxY - tall.minY;
    this.minX = inWide ? wide.minX : tall.minX;
    this.minY = wide.minY;
    this.maxX = wide.maxX - width;
    this.maxY = Math.max(inWide ? wide.maxY : 0, inTall ? tall.maxY : 0) - height;
    noFit.clear();
    // The places below the one region and at the left of the other, as if something stood there.
    if (inWide && inTall && wide.maxY < tall.maxY)
      noFit.addBox(this.minX - 1, wide.maxY - height, tall.minX, this.maxY + 1);
    return inWide || inTall;
  }

  /** Of what stands on the sheet, where it is in the way. */
  private findTaken({ opposites }: Way): void {
    const { parts, lefts, tops, count, minX, minY, maxX, maxY } = this;
    const { gap } = this.grid;
    // A mitre may stand out beyond the gap.
    const reach = 2 * gap;
    for (const opposite of opposites)
      for (let i = 0; i < count; i++) {
        const part = parts[i]!;
        const left = lefts[i]! + opposite.minX;
        const top = tops[i]! + opposite.minY;
        if (left + part.minX - reach >= maxX || lefts[i]! + opposite.maxX + part.maxX + reach <= minX)
          continue;
        if (top + part.minY - reach >= maxY || tops[i]! + opposite.maxY + part.maxY + reach <= minY) continue;
        noFit.add(part, lefts[i]!, tops[i]!, opposite, gap + 2 * PACKING_ROUNDING, PACKING_ROUNDING);
      }
  }

  /** Along the edges that have better places behind them: at a best place one of the two that meet there is such. */
  private followRound(k: number): void {
    const { x, y, outX, outY } = noFit;
    const { minX, minY, maxX, maxY, down, right } = this;
    if (noFit.minX[k]! * right + noFit.minY[k]! * down >= this.least) return;
    const end = noFit.start[k + 1]!;
    let before = end - 1;
    for (let i = noFit.start[k]!; i < end; before = i++) {
      if (outX[before]! * right + outY[before]! * down <= 0) continue;
      const [ax, ay, bx, by] = [x[before]!, y[before]!, x[i]!, y[i]!];
      if ((ax < minX && bx < minX) || (ax > maxX && bx > maxX)) continue;
      if ((ay < minY && by < minY) || (ay > maxY && by > maxY)) continue;
      this.follow(ax, ay, bx, by, k);
    }
  }

  /** @param own the polygon whose edge it is; −1 for the edge of the room */
  private follow(ax: number, ay: number, bx: number, by: number, own: number): void {
    const { minX, minY, maxX, maxY, down, right } = this;
    const [rankA, rankB] = [ax * right + ay * down, bx * right + by * down];
    if (rankB < rankA) {
      this.follow(bx, by, ax, ay, own);
      return;
    }
    if (rankA >= this.least) return;
    const [dx, dy] = [bx - ax, by - ay];
    let t = 0;
    let end = 1;
    if (dx !== 0) {
      const [one, other] = [(minX - ax) / dx, (maxX - ax) / dx];
      t = Math.max(t, Math.min(one, other));
      end = Math.min(end, Math.max(one, other));
    } else if (ax < minX || ax > maxX) return;
    if (dy !== 0) {
      const [one, other] = [(minY - ay) / dy, (maxY - ay) / dy];
      t = Math.max(t, Math.min(one, other));
      end = Math.min(end, Math.max(one, other));
    } else if (ay < minY || ay > maxY) return;
    if (rankB > rankA) end = Math.min(end, (this.least - rankA) / (rankB - rankA));
    t = this.firstFree(ax, ay, dx, dy, t, end, own);
    if (t > end) return;
    const x = Math.min(maxX, Math.max(minX, ax + t * dx));
    const y = Math.min(maxY, Math.max(minY, ay + t * dy));
    const rank = x * right + y * down;
    if (rank >= this.least) return;
    this.least = rank;
    this.bestX = x;
    this.bestY = y;
  }

  /** The first of the places (ax + t dx, ay + t dy), from t to `end`, that is in none of the polygons; beyond `end` if none is. */
  private firstFree(
    ax: number,
    ay: number,
    dx: number,
    dy: number,
    from: number,
    end: number,
    own: number,
  ): number {
    const { count, start, outX, outY, out } = noFit;
    let t = from;
    let k = this.last < count ? this.last : 0;
    for (let free = 0; free < count && t <= end; free++) {
      const x = ax + t * dx;
      const y = ay + t * dy;
      if (k !== own && x > noFit.minX[k]! && x < noFit.maxX[k]! && y > noFit.minY[k]! && y < noFit.maxY[k]!) {
        let exit = Number.POSITIVE_INFINITY;
        const stop = start[k + 1]!;
        let i = start[k]!;
        for (; i < stop; i++) {
          const inside = out[i]! - (outX[i]! * x + outY[i]! * y);
          if (inside <= 0) break;
          const speed = outX[i]! * dx + outY[i]! * dy;
          if (speed * exit > inside) exit = inside / speed;
        }
        if (i === stop) {
          t = Math.max(t + exit, t * BEYOND);
          free = -1;
          this.last = k;
        }
      }
      k = k + 1 === count ? 0 : k + 1;
    }
    return t;
  }
}
