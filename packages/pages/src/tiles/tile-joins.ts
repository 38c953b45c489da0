import { type Box, boundingBox, type Point, type Segment } from '@seamwright/geometry';
import { clippedSegments } from '../marks/clip.ts';
import { polygonMark, STROKES, segmentMark, textMark } from '../marks/marks.ts';
import { CAP_HEIGHT, textWidth } from '../marks/metrics.ts';
import type { Mark, PathMark } from '../marks/model.ts';
import type { Tile, TileGrid } from './tile-grid.ts';

/** A tile, its neighbours' names, and what is printed about the joins. Points. */
export interface JoinedTile {
  readonly key: string;
  readonly grid: TileGrid;
  readonly overlap: number;
  readonly tile: Tile;
  readonly nameAt: (column: number, row: number) => string | null;
  /** The foundation's lines, which diamonds and words keep clear of if they can. */
  readonly lines: readonly Segment<'page'>[];
  /** Boxes round its labels, which they keep clear of before that. */
  readonly labels: readonly Segment<'page'>[];
}

/** Points: from the middle of an alignment mark to its corners. */
const DIAMOND = 9;

/** Where along a join, between its ends, the first of the two diamonds may stand; the other as far from the other end. */
const DIAMOND_PLACES = [0.25, 0.2, 0.3, 0.15, 0.35] as const;

/** How the neighbour's name is set; `gap` is kept free before and after it, points. */
const JOIN_NOTE = { size: 7, ink: 0.6, gap: 4 };

/** Points between the places along a join where the neighbour's name may stand. */
const NOTE_STEP = 4;

/** Points: from the corner of two joins to its crop marks, and how long they are where the overlap has the room. */
const CROP = { gap: 3, length: 12 };

/** One side of a tile on which it meets another. */
interface Side {
  /** Across which the tiles lie beside each other: 'x' for a join that is upright. */
  readonly axis: 'x' | 'y';
  readonly join: number;
  readonly outward: 1 | -1;
  readonly neighbour: string;
  /** Along the join: where it ends, and whether another join of this tile is there. */
  readonly ends: readonly [End, End];
}

interface End {
  readonly at: number;
  readonly outward: 1 | -1;
  readonly isCorner: boolean;
}

/**
 * On each side with a neighbour: the line on which the two meet, crop marks at its ends, two diamonds across it, the
 * neighbour's name.
 */
export function joinMarks(joined: JoinedTile): readonly Mark[] {
  return sidesOf(joined).flatMap((side) => [
    ...edgeAndCropMarks(joined, side),
    ...diamonds(joined, side),
    neighbourNote(joined, side),
  ]);
}

function sidesOf({ grid, tile, nameAt }: JoinedTile): readonly Side[] {
  const { columns, rows } = grid;
  const { column, row, core, window } = tile;
  const [left, right] = [nameAt(column - 1, row), nameAt(column + 1, row)];
  const [above, below] = [nameAt(column, row - 1), nameAt(column, row + 1)];
  const end = (neighbour: string | null, join: number, edge: number, outward: 1 | -1): End =>
    neighbour === null ? { at: edge, outward, isCorner: false } : { at: join, outward, isCorner: true };
  const across = [end(left, core.minX, window.minX, -1), end(right, core.maxX, window.maxX, 1)] as const;
  const down = [end(above, core.minY, window.minY, -1), end(below, core.maxY, window.maxY, 1)] as const;
  const sides = [
    { axis: 'x', join: columns.joins[column - 1], outward: -1, neighbour: left, ends: down },
    { axis: 'x', join: columns.joins[column], outward: 1, neighbour: right, ends: down },
    { axis: 'y', join: rows.joins[row - 1], outward: -1, neighbour: above, ends: across },
    { axis: 'y', join: rows.joins[row], outward: 1, neighbour: below, ends: across },
  ] as const;
  return sides.flatMap(({ join, neighbour, ...side }) =>
    join === undefined || neighbour === null ? [] : [{ ...side, join, neighbour }],
  );
}

/** The point at `along` on the join's line, `off` points to its far side. */
const onJoin = ({ axis, join }: Side, along: number, off = 0): Point<'page'> =>
  axis === 'x' ? { x: join + off, y: along } : { x: along, y: join + off };

/**
 * Crop marks stand in the overlap, beyond the corner that they mark, so that they stay on what is cut off; where the line ends at
 * the edge of the whole foundation there is nothing beyond, and they lie on its last stretch.
 */
function edgeAndCropMarks({ key, overlap }: JoinedTile, side: Side): readonly PathMark[] {
  const between = (from: number, to: number): Segment<'page'> => ({
    a: onJoin(side, from),
    b: onJoin(side, to),
  });
  const length = Math.min(CROP.length, overlap / 2 - CROP.gap);
  return [
    segmentMark('tile-edge', key, between(side.ends[0].at, side.ends[1].at), STROKES.tileEdge),
    ...side.ends.map(({ at, outward, isCorner }) => {
      const near = isCorner ? at + outward * CROP.gap : at;
      const far = isCorner ? near + outward * length : at - outward * length;
      return segmentMark('crop-mark', key, between(near, far), STROKES.cropMark);
    }),
  ];
}

function diamonds(joined: JoinedTile, side: Side): readonly PathMark[] {
  const [low, high] = windowAlong(joined.tile.window, side);
  const placed = (share: number) => [share, 1 - share].map((place) => low + (high - low) * place);
  const boxRound = (middle: number) => boxOn(side, middle, DIAMOND, -DIAMOND, DIAMOND);
  const isClear = (lines: readonly Segment<'page'>[]) => (share: number) =>
    placed(share).every((middle) => clippedSegments(lines, boxRound(middle)).length === 0);
  const share =
    DIAMOND_PLACES.find(isClear([...joined.labels, ...joined.lines])) ??
    DIAMOND_PLACES.find(isClear(joined.labels)) ??
    DIAMOND_PLACES[0];
  return placed(share).map((middle) =>
    polygonMark(
      'alignment-mark',
      joined.key,
      [
        onJoin(side, middle - DIAMOND),
        onJoin(side, middle, DIAMOND),
        onJoin(side, middle + DIAMOND),
        onJoin(side, middle, -DIAMOND),
      ],
      STROKES.alignmentMark,
    ),
  );
}

/** In the strip beyond the join, which the neighbour covers. */
function neighbourNote({ key, tile, overlap, lines, labels }: JoinedTile, side: Side): Mark {
  const { axis, outward, neighbour } = side;
  const [low, high] = windowAlong(tile.window, side);
  const note = `${neighbour} joins here`;
  const half = textWidth(note, JOIN_NOTE.size, 'regular') / 2 + JOIN_NOTE.gap;
  const strip = (outward * overlap) / 4;
  const rise = JOIN_NOTE.size * CAP_HEIGHT;
  const isClear = (middle: number) =>
    clippedSegments([...labels, ...lines], boxOn(side, middle, half, strip - rise, strip + rise)).length ===
    0;
  const places = placesFromMiddle(low + half, high - half);
  // A text turned clockwise rises to the right.
  const base = onJoin(
    side,
    places.find(isClear) ?? places[0]!,
    axis === 'x' ? strip - rise / 2 : strip + rise / 2,
  );
  return textMark('alignment-mark', key, note, base, {
    size: JOIN_NOTE.size,
    ink: JOIN_NOTE.ink,
    anchor: 'middle',
    angle: axis === 'x' ? 90 : 0,
  });
}

/** From the middle outwards: the first is the best that is clear. */
function placesFromMiddle(low: number, high: number): readonly number[] {
  const middle = (low + high) / 2;
  const steps = Math.max(0, Math.floor((high - middle) / NOTE_STEP));
  return [
    middle,
    ...Array.from({ length: steps }, (_, i) => (i + 1) * NOTE_STEP).flatMap((away) => [
      middle - away,
      middle + away,
    ]),
  ];
}

/** Where the tile begins and ends along the join: the neighbour does so, too. */
const windowAlong = ({ minX, minY, maxX, maxY }: Box<'page'>, { axis }: Side): readonly [number, number] =>
  axis === 'x' ? [minY, maxY] : [minX, maxX];

const boxOn = (side: Side, middle: number, half: number, from: number, to: number): Box<'page'> =>
  boundingBox<'page'>([onJoin(side, middle - half, from), onJoin(side, middle + half, to)]);
