import { type Box, POINTS_PER_INCH } from '@seamwright/geometry';

/** Points by which neighbouring tiles show the same: 1/2 in, enough for tape and for marks on both sides. */
export const OVERLAP = POINTS_PER_INCH / 2;

/** How one length is covered by tiles that overlap. */
export interface Cover {
  /** Where each tile begins, points; all are `size` long. */
  readonly starts: readonly number[];
  readonly size: number;
  /** The middles of the overlaps: where tiles are laid edge to edge. */
  readonly joins: readonly number[];
}

/** Points: how far a join is kept from lines and numbers, so that no paper edge lies along a seam. */
const CLEARANCE = POINTS_PER_INCH / 4;

/**
 * The fewest tiles of at most `most` points that cover `length`, all alike, each overlapping the next by
 * {@link OVERLAP}; and of their places the first that keeps every join clear of `avoid`, or the middle one.
 *
 * The tiles may begin before 0 and end past `length`: the slack is what moves them off the seams.
 */
export function cover(length: number, most: number, avoid: readonly number[]): Cover {
  const count = length <= most ? 1 : Math.ceil((length - OVERLAP) / (most - OVERLAP));
  const size = Math.min(most, (length + (count - 1) * OVERLAP) / count + slackWanted(count));
  const reach = count * size - (count - 1) * OVERLAP;
  const slack = reach - length;
  const at = (shift: number): Cover => {
    const starts = Array.from({ length: count }, (_, i) => shift + i * (size - OVERLAP));
    return { starts, size, joins: starts.slice(1).map((start) => start + OVERLAP / 2) };
  };
  if (count === 1) return { starts: [0], size: length, joins: [] };
  const shifts = [0.5, 0.25, 0.75, 0, 1].map((share) => -slack * share);
  const clear = shifts.map(at).find(({ joins }) => joins.every((join) => clearOf(join, avoid)));
  return clear ?? at(-slack / 2);
}

/** A little more than needed, where the paper has it, so that there is something to move. */
const slackWanted = (count: number): number => (count === 1 ? 0 : (4 * CLEARANCE) / count);

const clearOf = (join: number, avoid: readonly number[]): boolean =>
  avoid.every((seam) => Math.abs(seam - join) >= CLEARANCE);

/** One tile: what it shows of the foundation, and where it stands in the grid. */
export interface Tile {
  readonly column: number;
  readonly row: number;
  readonly window: Box<'page'>;
}

export interface TileGrid {
  readonly columns: Cover;
  readonly rows: Cover;
}

/** All tiles, row by row. */
export const tilesOf = ({ columns, rows }: TileGrid): readonly Tile[] =>
  rows.starts.flatMap((minY, row) =>
    columns.starts.map((minX, column) => ({
      column,
      row,
      window: { minX, minY, maxX: minX + columns.size, maxY: minY + rows.size },
    })),
  );
