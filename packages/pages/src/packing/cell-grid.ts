import { CELL_MARGIN } from '@seamwright/geometry';
import type { Regions } from '../sheet/sheet-frame.ts';
import type { Convex } from './no-fit.ts';
import type { Way } from './placement.ts';

/** Cells across the shorter side of a sheet's room: as many as a number has bits. */
const ACROSS = 32;

/** Runs of 1, 2, 4, 8 and 16 free cells are marked. */
const LEVELS = 5;

/** So many numbers tell of a run: its row, its level, how much longer it is than that, where it begins. */
const RUN = 4;

/** Points of a thing that lie a cell apart, as runs in rows. */
interface Lattice {
  readonly runs: Int32Array;
  readonly rows: number;
  /** From the corner of its upright rectangle to the first, across and down the grid; points. */
  readonly across: number;
  readonly down: number;
}

/**
 * The cells that a thing takes where it stands: numbers of rows from `first` to before `end`, that of `first` at `at`. Several share one list:
 * to make a short one for each takes longer than to fill it.
 */
export interface Cells {
  readonly x: number;
  readonly y: number;
  readonly list: Int32Array;
  readonly at: number;
  readonly first: number;
  readonly end: number;
}

/** Numbers in a list that cells share. */
const SHARED = 1 << 14;

/**
 * Tells quickly, for most things, that there is no place for them on a sheet; and of others, where one may be.
 *
 * The sheet is a grid of cells, a row of which is one number. A cell is taken when all of it is nearer than the gap to
 * something that stands there, or off the room. A thing carries a lattice of points as wide as a cell. Wherever it
 * stands, each of these lies in the cell that the place of the first one tells; where one of them is taken, it cannot stand.
 * Rows are compared by shifting bits: a run of free cells is two runs of a power of two that overlap.
 *
 * Where the room is wider than tall, rows run down it.
 */
export class CellGrid {
  readonly rows: number;
  private readonly side: number;
  private readonly turned: boolean;
  private readonly originX: number;
  private readonly originY: number;
  /** Cells off the room; and all that are taken. */
  private readonly outside: Int32Array;
  private readonly taken: Int32Array;
  private readonly lattices = new Map<Way, Lattice>();
  /** What was asked for last: half the time a thing is put where it stood before. */
  private readonly marked = new Map<Way, Cells>();
  /** Where the next cells are written. */
  private list = new Int32Array(0);
  private written = 0;
  /** For each level and row, at which cells a run of free ones begins; and the same of an empty sheet. */
  private readonly free: Int32Array;
  private readonly freeAtFirst: Int32Array;
  /** Of these rows more is taken than `free` tells. */
  private changedFirst = 0;
  private changedEnd = 0;
  private readonly low: Float64Array;
  private readonly high: Float64Array;

  /** Where the thing that was looked at last may stand: its corner. Points on the sheet. */
  minX = 0;
  minY = 0;
  maxX = 0;
  maxY = 0;

  /** @param gap points between things */
  constructor(
    readonly regions: Regions,
    readonly gap: number,
  ) {
    const { wide, tall } = regions;
    this.originX = Math.min(wide.minX, tall.minX);
    this.originY = Math.min(wide.minY, tall.minY);
    const width = Math.max(wide.maxX, tall.maxX) - this.originX;
    const height = Math.max(wide.maxY, tall.maxY) - this.originY;
    this.turned = width > height;
    this.side = Math.min(width, height) / ACROSS;
    this.rows = Math.ceil(Math.max(width, height) / this.side);
    this.outside = new Int32Array(this.rows);
    this.taken = new Int32Array(this.rows);
    this.free = new Int32Array(LEVELS * this.rows);
    this.low = new Float64Array(this.rows + 1);
    this.high = new Float64Array(this.rows + 1);
    for (let row = 0; row < this.rows; row++)
      for (let column = 0; column < ACROSS; column++)
        if (!this.meetsRoom(column, row)) this.outside[row]! |= 1 << column;
    this.taken.set(this.outside);
    this.changedEnd = this.rows;
    this.show();
    this.freeAtFirst = this.free.slice();
  }

  private meetsRoom(column: number, row: number): boolean {
    const [across, down] = this.turned ? [row, column] : [column, row];
    const x = this.originX + across * this.side;
    const y = this.originY + down * this.side;
    const { wide, tall } = this.regions;
    return [wide, tall].some(
      (box) => x + this.side > box.minX && x < box.maxX && y + this.side > box.minY && y < box.maxY,
    );
  }

  /** The cells that a thing takes where it stands. */
  cellsOf(way: Way, x: number, y: number): Cells {
    const last = this.marked.get(way);
    if (last !== undefined && last.x === x && last.y === y) return last;
    const { rows, side, turned, gap } = this;
    const from = turned ? x - this.originX : y - this.originY;
    const to = from + (turned ? way.width : way.height);
    const first = Math.max(0, Math.floor((from - gap) / side));
    const end = Math.min(rows, Math.ceil((to + gap) / side));
    if (this.written + rows > this.list.length) {
      this.list = new Int32Array(Math.max(SHARED, rows));
      this.written = 0;
    }
    const cells = { x, y, list: this.list, at: this.written, first, end };
    this.written += Math.max(0, end - first);
    for (const part of way.parts) this.mark(cells, part, x - this.originX, y - this.originY);
    this.marked.set(way, cells);
    return cells;
  }

  /** All of whose corners are nearer than the gap to a convex part: those between its edges, moved outward. */
  private mark(
    { list, at, first, end }: Cells,
    { x, y, outX, outY }: Convex,
    left: number,
    top: number,
  ): void {
    const { low, high, side } = this;
    const reach = this.gap - CELL_MARGIN;
    for (let line = first; line <= end; line++) {
      low[line] = Number.POSITIVE_INFINITY;
      high[line] = Number.NEGATIVE_INFINITY;
    }
    const count = x.length;
    let fromX = left + x[0]! + outX[count - 1]! * reach;
    let fromY = top + y[0]! + outY[count - 1]! * reach;
    for (let i = 0; i < count; i++) {
      const next = i + 1 === count ? 0 : i + 1;
      const startX = left + x[i]! + outX[i]! * reach;
      const startY = top + y[i]! + outY[i]! * reach;
      const endX = left + x[next]! + outX[i]! * reach;
      const endY = top + y[next]! + outY[i]! * reach;
      this.cross(fromX, fromY, startX, startY);
      this.cross(startX, startY, endX, endY);
      fromX = endX;
      fromY = endY;
    }
    for (let row = first; row < end; row++) {
      const start = Math.max(0, Math.ceil(Math.max(low[row]!, low[row + 1]!) / side));
      const stop = Math.min(ACROSS, Math.floor(Math.min(high[row]!, high[row + 1]!) / side));
      if (start < stop) list[at + row - first]! |= bits(start, stop);
    }
  }

  /** Notes where the stretch crosses the lines between rows. */
  private cross(ax: number, ay: number, bx: number, by: number): void {
    const { low, high, rows, side, turned } = this;
    const [au, av, bu, bv] = turned ? [ay, ax, by, bx] : [ax, ay, bx, by];
    const first = Math.max(0, Math.ceil(Math.min(av, bv) / side));
    const last = Math.min(rows, Math.floor(Math.max(av, bv) / side));
    for (let line = first; line <= last; line++) {
      const u = av === bv ? au : au + ((line * side - av) / (bv - av)) * (bu - au);
      if (u < low[line]!) low[line] = u;
      if (u > high[line]!) high[line] = u;
      if (av === bv) {
        if (bu < low[line]!) low[line] = bu;
        if (bu > high[line]!) high[line] = bu;
      }
    }
  }

  /** An empty sheet from now on. */
  clear(): void {
    this.taken.set(this.outside);
    this.free.set(this.freeAtFirst);
    this.changedFirst = this.rows;
    this.changedEnd = 0;
  }

  /** Marks the cells of something that stands there. */
  take({ list, at, first, end }: Cells): void {
    const { taken } = this;
    for (let row = first; row < end; row++) taken[row]! |= list[at + row - first]!;
    if (first < this.changedFirst) this.changedFirst = first;
    if (end > this.changedEnd) this.changedEnd = end;
  }

  /** Finds the runs of what is free. */
  private show(): void {
    const { free, taken, rows } = this;
    for (let row = this.changedFirst; row < this.changedEnd; row++) {
      let cells = ~taken[row]!;
      free[row] = cells;
      for (let level = 1, long = 1; level < LEVELS; level++, long *= 2) {
        cells &= cells >>> long;
        free[level * rows + row] = cells;
      }
    }
    this.changedFirst = rows;
    this.changedEnd = 0;
  }

  /** Whether there may be a place for a thing that lies this way; where, is in `minX` … `maxY` then. */
  mayHold(way: Way): boolean {
    let lattice = this.lattices.get(way);
    if (lattice === undefined) {
      lattice = this.latticeOf(way);
      this.lattices.set(way, lattice);
    }
    this.show();
    const { free, rows, side } = this;
    const { runs } = lattice;
    const count = runs.length;
    let columns = 0;
    let first = -1;
    let last = 0;
    for (let row = 0; row + lattice.rows <= rows; row++) {
      let places = -1;
      for (let k = 0; k < count && places !== 0; k += RUN) {
        const begins = free[runs[k]! + row]!;
        places &= (begins & (begins >>> runs[k + 2]!)) >>> runs[k + 3]!;
      }
      if (places === 0) continue;
      columns |= places;
      if (first < 0) first = row;
      last = row;
    }
    if (first < 0) return false;
    const lowest = 31 - Math.clz32(columns & -columns);
    const highest = 32 - Math.clz32(columns);
    const [minU, maxU] = [lowest * side - lattice.across, highest * side - lattice.across];
    const [minV, maxV] = [first * side - lattice.down, (last + 1) * side - lattice.down];
    this.minX = this.originX + (this.turned ? minV : minU);
    this.maxX = this.originX + (this.turned ? maxV : maxU);
    this.minY = this.originY + (this.turned ? minU : minV);
    this.maxY = this.originY + (this.turned ? maxU : maxV);
    return true;
  }

  private latticeOf({ parts, width, height }: Way): Lattice {
    const { side } = this;
    const [wide, tall] = this.turned ? [height, width] : [width, height];
    const spare = (length: number) => (length - side * Math.floor((length - 2 * CELL_MARGIN) / side)) / 2;
    const [across, down] = [spare(wide), spare(tall)];
    const rows = Math.floor((tall - 2 * CELL_MARGIN) / side) + 1;
    const runs: number[] = [];
    for (const row of farFromEachOther(rows))
      for (const part of parts) {
        const [low, high] = this.spanAt(part, down + row * side);
        const from = Math.ceil((low + CELL_MARGIN - across) / side);
        const long = Math.floor((high - CELL_MARGIN - across) / side) - from + 1;
        if (long <= 0) continue;
        const level = Math.min(LEVELS - 1, 31 - Math.clz32(long));
        runs.push(level * this.rows + row, level, long - (1 << level), from);
      }
    return { runs: Int32Array.from(runs), rows, across, down };
  }

  /** From where to where the part lies on a line, in the grid's directions. */
  private spanAt({ x, y }: Convex, line: number): readonly [number, number] {
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    const [us, vs] = this.turned ? [y, x] : [x, y];
    for (let i = 0; i < us.length; i++) {
      const next = i + 1 === us.length ? 0 : i + 1;
      const [au, av, bu, bv] = [us[i]!, vs[i]!, us[next]!, vs[next]!];
      if (line < Math.min(av, bv) || line > Math.max(av, bv)) continue;
      const u = av === bv ? au : au + ((line - av) / (bv - av)) * (bu - au);
      low = Math.min(low, u, av === bv ? bu : u);
      high = Math.max(high, u, av === bv ? bu : u);
    }
    return [low, high];
  }
}

/** The middle row, then those halfway to the ends, and so on: what one row has room for, the next one has, too. */
function farFromEachOther(rows: number): readonly number[] {
  const middle = rows >> 1;
  const order = [middle];
  for (let step = 1 << (31 - Math.clz32(rows)); step > 0; step >>= 1)
    for (let row = (middle + step) % (2 * step); row < rows; row += 2 * step) order.push(row);
  return order;
}

/** From the first cell to before the end. */
const bits = (first: number, end: number): number =>
  (end - first === ACROSS ? -1 : (1 << (end - first)) - 1) << first;
