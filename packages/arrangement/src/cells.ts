import type { Point } from '@seamwright/geometry';

/** More than the rows of any drawing; cells that are taken for each other beyond it cost time alone. */
const ROWS = 2 ** 26;

/** Numbered points by square cells of the plane, to find those within one cell's width of a place. */
export class Cells {
  private readonly cells = new Map<number, number[]>();

  /** @param size width of a cell, inches: the farthest distance at which {@link near} is complete */
  constructor(private readonly size: number) {}

  add(item: number, at: Point): void {
    const key = Math.floor(at.x / this.size) * ROWS + Math.floor(at.y / this.size);
    const cell = this.cells.get(key);
    if (cell === undefined) this.cells.set(key, [item]);
    else cell.push(item);
  }

  /** All items within the cell width of `at`, and some others. */
  near(at: Point): number[] {
    const key = Math.floor(at.x / this.size) * ROWS + Math.floor(at.y / this.size);
    const found: number[] = [];
    for (let column = -ROWS; column <= ROWS; column += ROWS) {
      for (let row = -1; row <= 1; row += 1) {
        const cell = this.cells.get(key + column + row);
        if (cell !== undefined) for (const item of cell) found.push(item);
      }
    }
    return found;
  }
}
