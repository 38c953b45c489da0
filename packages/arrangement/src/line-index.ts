import { distance, type Point } from '@seamwright/geometry';

/** Directions that are told apart: enough to part lines that run differently, few enough to look through for short ones. */
const DIRECTIONS = 256;
const STEP = Math.PI / DIRECTIONS;
const COSINES = Array.from({ length: DIRECTIONS }, (_, i) => Math.cos((i + 0.5) * STEP));
const SINES = Array.from({ length: DIRECTIONS }, (_, i) => Math.sin((i + 0.5) * STEP));

/**
 * Straight lines by their direction and their distance from a pivot, so that those that pass through two given points
 * are found without looking at all others: points of the dual plane, as in P. V. C. Hough's transform (US patent
 * 3,069,654, 1962; from memory), in square cells.
 */
export class LineIndex {
  private readonly cells = new Map<number, number[]>();
  /** For each line, where it runs now: its direction's cosine and sine, its distance from the pivot, its cell. */
  private readonly cosine: number[] = [];
  private readonly sine: number[] = [];
  private readonly offset: number[] = [];
  private readonly cellOf: number[] = [];
  private readonly cellSize: number;

  /**
   * @param pivot a point amid the lines
   * @param radius inches from the pivot within which points will be asked for
   */
  constructor(
    private readonly pivot: Point,
    radius: number,
  ) {
    // As wide as the distance of a point from the pivot varies while the direction turns by one step.
    this.cellSize = radius * STEP;
  }

  /** Adds the line through `a` and `b`, or says where it runs now; what it was before is found as well. */
  set(line: number, a: Point, b: Point): void {
    const turned = Math.atan2(b.y - a.y, b.x - a.x);
    const angle = turned < 0 ? turned + Math.PI : turned;
    // Half a turn is no turn.
    const direction = angle < Math.PI ? angle : 0;
    const [cosine, sine] = [Math.cos(direction), Math.sin(direction)];
    const offset = (a.y - this.pivot.y) * cosine - (a.x - this.pivot.x) * sine;
    this.cosine[line] = cosine;
    this.sine[line] = sine;
    this.offset[line] = offset;
    const key = this.keyOf(Math.floor(direction / STEP), Math.floor(offset / this.cellSize));
    if (this.cellOf[line] === key) return;
    this.cellOf[line] = key;
    const cell = this.cells.get(key);
    if (cell === undefined) this.cells.set(key, [line]);
    else cell.push(line);
  }

  /** All lines that pass within `reach` of both points, and some others; ascending. */
  near(a: Point, b: Point, reach: number): number[] {
    const x = (a.x + b.x) / 2 - this.pivot.x;
    const y = (a.y + b.y) / 2 - this.pivot.y;
    const turn = Math.asin(Math.min(1, (2 * reach) / distance(a, b)));
    const spread = Math.min(Math.ceil(turn / STEP) + 1, DIRECTIONS / 2);
    const middle = Math.floor(Math.atan2(b.y - a.y, b.x - a.x) / STEP);
    const margin = (Math.hypot(x, y) * STEP) / 2 + reach;
    const found: number[] = [];
    for (let i = middle - spread; i <= middle + spread; i += 1) {
      const direction = (i + 2 * DIRECTIONS) % DIRECTIONS;
      const offset = y * COSINES[direction]! - x * SINES[direction]!;
      const last = Math.floor((offset + margin) / this.cellSize);
      for (let k = Math.floor((offset - margin) / this.cellSize); k <= last; k += 1) {
        const cell = this.cells.get(this.keyOf(direction, k));
        if (cell === undefined) continue;
        for (const line of cell) {
          const off = y * this.cosine[line]! - x * this.sine[line]! - this.offset[line]!;
          // Twice, so that no rounding counts.
          if (Math.abs(off) <= 2 * reach) found.push(line);
        }
      }
    }
    return found.sort((k, l) => k - l).filter((line, i) => line !== found[i - 1]);
  }

  private keyOf(direction: number, offset: number): number {
    return offset * DIRECTIONS + direction;
  }
}
