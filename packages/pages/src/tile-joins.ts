import { boundingBox, type Point, type Segment } from '@seamwright/geometry';
import { clippedSegments } from './clip.ts';
import { polygonMark, STROKES, segmentMark, textMark } from './marks.ts';
import { CAP_HEIGHT, textWidth } from './metrics.ts';
import type { Mark } from './model.ts';
import { OVERLAP, type Tile, type TileGrid } from './tile-grid.ts';

/** A tile, the key of its foundation, its neighbours' names, and the foundation's lines that the words keep clear of if they can. */
export interface JoinedTile {
  readonly key: string;
  readonly grid: TileGrid;
  readonly tile: Tile;
  readonly nameAt: (column: number, row: number) => string | null;
  readonly lines: readonly Segment<'page'>[];
}

/** Points: from the middle of an alignment mark to its corners. */
const DIAMOND = 9;

/** Where along a join, between its ends, the two diamonds stand. */
const DIAMOND_PLACES = [0.25, 0.75] as const;

/** How the neighbour's name is set; `gap` is kept free before and after it, points. */
const JOIN_NOTE = { size: 7, ink: 0.6, gap: 4 };

/** Where along a join the neighbour's name may stand, the first that is clear. */
const NOTE_PLACES = [0.5, 0.4, 0.6, 0.12, 0.88] as const;

/** On each side with a neighbour: the line on which the two meet, two diamonds across it, the neighbour's name. */
export function joinMarks(joined: JoinedTile): readonly Mark[] {
  const { grid, tile, nameAt } = joined;
  const { columns, rows } = grid;
  const { column, row } = tile;
  const sides = [
    { axis: 'x', join: columns.joins[column - 1], name: nameAt(column - 1, row), outward: -1 },
    { axis: 'x', join: columns.joins[column], name: nameAt(column + 1, row), outward: 1 },
    { axis: 'y', join: rows.joins[row - 1], name: nameAt(column, row - 1), outward: -1 },
    { axis: 'y', join: rows.joins[row], name: nameAt(column, row + 1), outward: 1 },
  ] as const;
  return sides.flatMap(({ axis, join, name, outward }) =>
    join === undefined || name === null ? [] : joinSide(joined, axis, join, outward, name),
  );
}

function joinSide(
  { key, tile: { window }, lines }: JoinedTile,
  axis: 'x' | 'y',
  join: number,
  outward: 1 | -1,
  neighbour: string,
): readonly Mark[] {
  const [low, high] = axis === 'x' ? [window.minY, window.maxY] : [window.minX, window.maxX];
  /** The point at `along` on the join line, `off` points to its far side. */
  const at = (along: number, off = 0): Point<'page'> =>
    axis === 'x' ? { x: join + off, y: along } : { x: along, y: join + off };
  const diamond = (share: number): Mark => {
    const middle = low + (high - low) * share;
    return polygonMark(
      'alignment-mark',
      key,
      [at(middle - DIAMOND), at(middle, DIAMOND), at(middle + DIAMOND), at(middle, -DIAMOND)],
      STROKES.alignmentMark,
    );
  };
  const note = `${neighbour} joins here`;
  const half = textWidth(note, JOIN_NOTE.size, 'regular') / 2 + JOIN_NOTE.gap;
  // In the strip beyond the join line, which the neighbour covers; a text turned clockwise rises to the right.
  const strip = (outward * OVERLAP) / 4;
  const rise = JOIN_NOTE.size * CAP_HEIGHT;
  const isClear = (middle: number) => {
    const corners = [at(middle - half, strip - rise), at(middle + half, strip + rise)];
    return clippedSegments(lines, boundingBox<'page'>(corners)).length === 0;
  };
  const places = NOTE_PLACES.map((share) => low + (high - low) * share);
  const base = at(places.find(isClear) ?? places[0]!, axis === 'x' ? strip - rise / 2 : strip + rise / 2);
  return [
    segmentMark('tile-edge', key, { a: at(low), b: at(high) }, STROKES.tileEdge),
    ...DIAMOND_PLACES.map(diamond),
    textMark('alignment-mark', key, note, base, {
      size: JOIN_NOTE.size,
      ink: JOIN_NOTE.ink,
      anchor: 'middle',
      angle: axis === 'x' ? 90 : 0,
    }),
  ];
}
