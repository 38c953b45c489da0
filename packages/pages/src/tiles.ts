import {
  type Box,
  contains,
  edgesOf,
  POINTS_PER_INCH,
  type Point,
  type Segment,
  subtract,
} from '@seamwright/geometry';
import { captionFor } from './caption.ts';
import { clipped, clippedSegments } from './clip.ts';
import type { Foundation } from './foundation.ts';
import {
  CUT_WORD_ROOM,
  type DrawnFoundation,
  foundationMarks,
  type SheetLines,
  sizeOnSheet,
  type Turn,
  wordMarks,
} from './foundation-marks.ts';
import type { CheckedJob } from './job.ts';
import { moved, polygonMark, STROKES, segmentMark } from './marks.ts';
import type { Mark } from './model.ts';
import type { Regions } from './sheet-frame.ts';
import { cover, type Tile, type TileGrid, tilesOf } from './tile-grid.ts';
import { joinMarks } from './tile-joins.ts';

/** A sheet's worth of a foundation that is larger than a sheet. */
export interface TileSheet {
  /** `A 1/4` */
  readonly name: string;
  readonly marks: readonly Mark[];
}

/** Points: what the caption of a tile takes, with the room for the word `cut` below it; more where it has notes. */
const CAPTION_ROOM = 56;

/** Points. The small map of the tiles, at most this wide and high. */
const MAP = { width: 60, height: 30 };

/** The foundation cut into tiles: as few sheets as it finds, of the ways to turn it and the two regions. */
export function tileSheets(job: CheckedJob, foundation: Foundation, regions: Regions): readonly TileSheet[] {
  const ways = (['upright', 'turned'] as const).flatMap((turn) =>
    [regions.wide, regions.tall].map((region) => wayOf(job, foundation, turn, region)),
  );
  const best = ways.reduce((fewest, way) => (way.tiles.length < fewest.tiles.length ? way : fewest));
  return best.tiles.map((tile, i) => tileSheet(job, foundation, best, tile, i));
}

/** One way to cut a foundation into tiles. */
interface Way {
  readonly turn: Turn;
  readonly region: Box<'page'>;
  /** Points: what is kept free above each tile. */
  readonly captionRoom: number;
  readonly grid: TileGrid;
  readonly drawn: DrawnFoundation;
  /** Those that show something of the foundation. */
  readonly tiles: readonly Tile[];
}

function wayOf(job: CheckedJob, foundation: Foundation, turn: Turn, region: Box<'page'>): Way {
  const drawn = foundationMarks(foundation, turn);
  const { marks, lines } = drawn;
  const size = sizeOnSheet(foundation, turn);
  const captionRoom = captionRoomFor(job, foundation, turn, region);
  const grid = {
    columns: cover(size.width, region.maxX - region.minX, crowded(marks, 'x')),
    rows: cover(size.height, region.maxY - region.minY - captionRoom, crowded(marks, 'y')),
  };
  const tiles = tilesOf(grid).filter(({ window }) => holdsPaper(lines, window));
  return { turn, region, captionRoom, grid, drawn, tiles };
}

/** Facts in the caption of every tile. */
const TAPING = ['lay the grey lines edge to edge, diamond on diamond, and tape'];

/** As wide as the name of a tile can be: no block has more of them. */
const widestName = ({ letter }: Foundation): string => `${letter} 888/888`;

function captionRoomFor(job: CheckedJob, foundation: Foundation, turn: Turn, region: Box<'page'>): number {
  const plain =
    foundation.letters.length === 1 &&
    foundation.mirroredOf === null &&
    foundation.openStretches.length === 0;
  if (plain) return CAPTION_ROOM;
  const name = widestName(foundation);
  const { height } = captionFor(job, foundation, turn, captionWidth(region), name, TAPING);
  return Math.max(CAPTION_ROOM, height + CUT_WORD_ROOM);
}

/** The map stands to the right of the caption. */
const captionWidth = ({ minX, maxX }: Box<'page'>): number => maxX - minX - MAP.width - 8;

/** Whether any of the foundation lies in the window, be it only the blank middle of a large patch. */
function holdsPaper({ cuttingLine }: SheetLines, window: Box<'page'>): boolean {
  if (clippedSegments(cuttingLine, window).length > 0) return true;
  const corner = { x: window.minX, y: window.minY };
  return (
    contains(
      cuttingLine.map(({ a }) => a),
      corner,
    ) === 'inside'
  );
}

/** Where a join (upright for 'x', level for 'y') would run along a line, or through a piece number. */
function crowded(marks: readonly Mark[], axis: 'x' | 'y'): readonly number[] {
  const other = axis === 'x' ? 'y' : 'x';
  return marks.flatMap((mark) => {
    if (mark.kind === 'text') return [mark.at[axis]];
    return edgesOf(mark.points).flatMap(({ a, b }) => {
      const along = Math.abs(a[axis] - b[axis]) < 1 && Math.abs(a[other] - b[other]) > POINTS_PER_INCH / 2;
      return along ? [a[axis]] : [];
    });
  });
}

function tileSheet(job: CheckedJob, foundation: Foundation, way: Way, tile: Tile, index: number): TileSheet {
  const { key, letter } = foundation;
  const { region, tiles, drawn } = way;
  const nameOf = (i: number) => `${letter} ${i + 1}/${tiles.length}`;
  const name = nameOf(index);
  const caption = captionFor(job, foundation, way.turn, captionWidth(region), name, TAPING);
  const shown = drawn.marks.flatMap((mark) => clipped(mark, tile.window));
  const nameAt = (column: number, row: number) => {
    const found = tiles.findIndex((other) => other.column === column && other.row === row);
    return found < 0 ? null : nameOf(found);
  };
  const joins = joinMarks({ key, grid: way.grid, tile, nameAt, lines: Object.values(drawn.lines).flat() });
  const joinLines = joins.flatMap((mark) => (mark.kind === 'path' ? edgesOf(mark.points) : []));
  const inWindow = {
    lines: shownLines(drawn.lines, joinLines, tile.window),
    ticks: drawn.ticks.filter((tick) => clippedSegments([tick], tile.window).length > 0),
    openStretches: drawn.openStretches.flatMap((stretch) =>
      clippedSegments([stretch], tile.window).map((shownPart) => ({ ...stretch, ...shownPart })),
    ),
    numbers: drawn.numbers,
  };
  const words = wordMarks(foundation, inWindow, roomAbove(tile.window));
  const toSheet = subtract<'page'>(
    { x: region.minX, y: region.minY + way.captionRoom },
    { x: tile.window.minX, y: tile.window.minY },
  );
  const atTop = { x: region.minX, y: region.minY };
  return {
    name,
    marks: [
      ...caption.marks.map((mark) => moved(mark, atTop)),
      ...mapMarks(key, way, tile).map((mark) => moved(mark, { x: region.maxX, y: region.minY })),
      ...[...joins, ...shown, ...words].map((mark) => moved(mark, toSheet)),
    ],
  };
}

/** What the words on a tile have to keep clear of. */
const shownLines = (
  lines: SheetLines,
  joinLines: readonly Segment<'page'>[],
  window: Box<'page'>,
): SheetLines => ({
  outline: clippedSegments(lines.outline, window),
  cuttingLine: clippedSegments(lines.cuttingLine, window),
  crossings: [...clippedSegments(lines.crossings, window), ...joinLines],
  sewLines: clippedSegments(lines.sewLines, window),
});

/** The window, and the strip below the caption for the word `cut`. */
const roomAbove = (window: Box<'page'>): Box<'page'> => ({ ...window, minY: window.minY - CUT_WORD_ROOM });

/** The grid of tiles in little, this one dark; its top right corner at (0, 0). */
function mapMarks(key: string, { grid }: Way, { column, row }: Tile): readonly Mark[] {
  const across = grid.columns.starts.length;
  const down = grid.rows.starts.length;
  const unit = Math.min(MAP.width / (across * grid.columns.size), MAP.height / (down * grid.rows.size));
  const [width, height] = [unit * grid.columns.size, unit * grid.rows.size];
  const at = (c: number, r: number): Point<'page'> => ({ x: (c - across) * width, y: r * height });
  const line = (a: Point<'page'>, b: Point<'page'>) => segmentMark('caption', key, { a, b }, STROKES.rule);
  const corners = [at(column, row), at(column + 1, row), at(column + 1, row + 1), at(column, row + 1)];
  return [
    { ...polygonMark('caption', key, corners, STROKES.rule), fill: 0.6 },
    ...Array.from({ length: across + 1 }, (_, c) => line(at(c, 0), at(c, down))),
    ...Array.from({ length: down + 1 }, (_, r) => line(at(0, r), at(across, r))),
  ];
}
