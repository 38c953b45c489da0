import type { Drawing, DrawingPoint, LineId, PointId } from '@seamwright/arrangement';
import { distance, type Point, SAME_COORDINATE, SNAP_DISTANCE } from '@seamwright/geometry';
import { drawnLines } from '../lines.ts';

/** Finds a drawing's points by their place, and lines by their ends, without looking at all of them. */
export class PointIndex {
  private readonly cells = new Map<string, DrawingPoint[]>();
  private readonly lines = new Map<string, LineId>();

  constructor(drawing: Drawing) {
    for (const point of Object.values(drawing.points)) {
      const key = `${cellOf(point.x)} ${cellOf(point.y)}`;
      const cell = this.cells.get(key);
      if (cell === undefined) this.cells.set(key, [point]);
      else cell.push(point);
    }
    for (const { id, from, to } of drawnLines(drawing).values()) this.lines.set(keyOf(from.id, to.id), id);
  }

  /** The point in a place ({@link SAME_COORDINATE}). */
  at(place: Point): DrawingPoint | undefined {
    const [column, row] = [cellOf(place.x), cellOf(place.y)];
    for (let i = column - 1; i <= column + 1; i++) {
      for (let j = row - 1; j <= row + 1; j++) {
        const found = this.cells.get(`${i} ${j}`)?.find((point) => distance(point, place) <= SAME_COORDINATE);
        if (found !== undefined) return found;
      }
    }
    return undefined;
  }

  /** The line between two points, either way round. */
  between(one: PointId, other: PointId): LineId | undefined {
    return this.lines.get(keyOf(one, other));
  }
}

const cellOf = (coordinate: number): number => Math.floor(coordinate / SNAP_DISTANCE);

const keyOf = (one: PointId, other: PointId): string => (one < other ? `${one} ${other}` : `${other} ${one}`);
