import { distance, type Point, SNAP_DISTANCE } from '@seamwright/geometry';
import type { Placement } from '../placement.ts';

/** A place that is worth catching. */
export interface CatchPlace extends Placement {
  readonly kind: 'corner' | 'end' | 'crossing' | 'middle';
  /** What it is, for beside the pointer: e.g. `end of a line`. */
  readonly reason: string;
}

/**
 * Places to catch, each of them once: what comes within {@link SNAP_DISTANCE} of an earlier one would be the same
 * place under another name, and is left out.
 */
export class Places {
  readonly all: CatchPlace[] = [];
  private readonly cells = new Map<string, CatchPlace[]>();

  add(place: CatchPlace): void {
    const [column, row] = [cellOf(place.at.x), cellOf(place.at.y)];
    if (this.isTaken(place.at, column, row)) return;
    const key = `${column} ${row}`;
    const cell = this.cells.get(key);
    if (cell === undefined) this.cells.set(key, [place]);
    else cell.push(place);
    this.all.push(place);
  }

  private isTaken(at: Point, column: number, row: number): boolean {
    for (let i = column - 1; i <= column + 1; i++) {
      for (let j = row - 1; j <= row + 1; j++) {
        const cell = this.cells.get(`${i} ${j}`);
        if (cell?.some((there) => distance(there.at, at) <= SNAP_DISTANCE)) return true;
      }
    }
    return false;
  }
}

const cellOf = (coordinate: number): number => Math.floor(coordinate / SNAP_DISTANCE);
