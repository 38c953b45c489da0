import type { Point } from '@seamwright/geometry';

/** Numbered points by square cells of the plane, to find those within one cell's width of a place. */
export class Cells {
  private readonly cells = new Map<string, number[]>();

  /** @param size width of a cell, inches: the farthest distance at which {@link near} is complete */
  constructor(private readonly size: number) {}

  add(item: number, at: Point): void {
    const key = `${Math.floor(at.x / this.size)} ${Math.floor(at.y / this.size)}`;
    const cell = this.cells.get(key);
    if (cell === undefined) this.cells.set(key, [item]);
    else cell.push(item);
  }

  /** All items within the cell width of `at`, and some a little farther. */
  *near(at: Point): Generator<number> {
    const column = Math.floor(at.x / this.size);
    const row = Math.floor(at.y / this.size);
    for (let i = column - 1; i <= column + 1; i += 1) {
      for (let j = row - 1; j <= row + 1; j += 1) yield* this.cells.get(`${i} ${j}`) ?? [];
    }
  }
}
