import type { Drawing } from '@seamwright/arrangement';
import { boundingBox, distance, lerp, type Point, parameterOn, SNAP_DISTANCE } from '@seamwright/geometry';
import { outlineOf } from '../checks.ts';
import type { DrawnLine } from '../lines.ts';
import { nearest } from '../nearest.ts';

/** Level and upright lines at equal distances, inches. */
export interface Grid {
  /** A place where two of its lines cross. */
  readonly origin: Point;
  /** From one upright line to the next. */
  readonly across: number;
  /** From one level line to the next. */
  readonly down: number;
  /** Into how many parts every edge of the outline is divided, too. */
  readonly parts?: number;
}

/** A grid of this spacing, its lines through the block's origin; null for 0. */
export function gridOf(grid: number | Grid): Grid | null {
  if (typeof grid !== 'number') return grid;
  return grid > 0 ? { origin: { x: 0, y: 0 }, across: grid, down: grid } : null;
}

/** The grid that divides the block into so many columns and rows, and each of its edges into as many parts. */
export function gridInParts(drawing: Drawing, columns: number, rows = columns): Grid {
  const { minX, minY, maxX, maxY } = boundingBox(outlineOf(drawing));
  return {
    origin: { x: minX, y: minY },
    across: (maxX - minX) / columns,
    down: (maxY - minY) / rows,
    ...(rows === columns && { parts: columns }),
  };
}

const STEP = { x: 'across', y: 'down' } as const;

/** The coordinate of the grid's line of this number, without rounding where the grid begins at 0. */
const lineAt = (grid: Grid, axis: 'x' | 'y', number: number): number =>
  // + 0 turns −0 into 0.
  grid.origin[axis] + number * grid[STEP[axis]] + 0;

const numberAt = (grid: Grid, axis: 'x' | 'y', coordinate: number): number =>
  (coordinate - grid.origin[axis]) / grid[STEP[axis]];

/** The crossing of the grid's lines nearest to a place. */
export function nearestOnGrid(at: Point, grid: Grid): Point {
  const coordinate = (axis: 'x' | 'y') => lineAt(grid, axis, Math.round(numberAt(grid, axis, at[axis])));
  return { x: coordinate('x'), y: coordinate('y') };
}

/** A place on a line that the grid gives it. */
export interface GridPlace {
  readonly at: Point;
  /** What it is, e.g. `at the grid`. */
  readonly reason: string;
}

/**
 * Of the places where a stretch crosses a line of the grid, or where an edge is divided into parts, the one nearest to
 * `foot`; none on a short stretch.
 */
export function nearestGridPlace(
  foot: Point,
  { from, to }: { readonly from: Point; readonly to: Point },
  grid: Grid,
  kind?: DrawnLine['kind'],
): GridPlace | undefined {
  const places: GridPlace[] = [];
  if (kind === 'edge' && grid.parts !== undefined) {
    const part = Math.round(parameterOn(from, to, foot) * grid.parts);
    const at = lerp(from, to, part / grid.parts);
    if (part > 0 && part < grid.parts) places.push({ at, reason: `at ${part} of ${grid.parts} parts` });
  }
  for (const axis of ['x', 'y'] as const) {
    const run = to[axis] - from[axis];
    // Along the grid's own direction (up to rounding) there are no crossings, or all of the line is one.
    if (Math.abs(run) <= SNAP_DISTANCE) continue;
    const below = Math.floor(numberAt(grid, axis, foot[axis]));
    for (const number of [below, below + 1]) {
      const coordinate = lineAt(grid, axis, number);
      const share = (coordinate - from[axis]) / run;
      // The coordinate of the grid's own line without rounding, so that it reads as it is meant.
      if (share >= 0 && share <= 1)
        places.push({ at: { ...lerp(from, to, share), [axis]: coordinate }, reason: 'at the grid' });
    }
  }
  return nearest(places, Infinity, ({ at }) => distance(at, foot));
}
