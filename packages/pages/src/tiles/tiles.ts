import {
  type Box,
  boundingBox,
  edgesOf,
  fail,
  formatLength,
  ok,
  POINTS_PER_INCH,
  type Point,
  type Result,
  type Segment,
  subtract,
} from '@seamwright/geometry';
import type { Foundation } from '../foundation/foundation.ts';
import type { DrawnFoundation, SheetLines } from '../foundation/foundation-marks.ts';
import { CUT_WORD_ROOM, type Turn } from '../foundation/turns.ts';
import type { CheckedJob } from '../job.ts';
import { clipped, clippedSegments } from '../marks/clip.ts';
import { moved } from '../marks/marks.ts';
import { textCorners } from '../marks/metrics.ts';
import type { Mark } from '../marks/model.ts';
import { besideRegion, type Regions } from '../sheet/sheet-frame.ts';
import { type Caption, captionsOf } from '../words/caption.ts';
import { wordMarks } from '../words/line-words.ts';
import type { Tile } from './tile-grid.ts';
import { joinMarks } from './tile-joins.ts';
import { mapAndWords, SMALL_MAP, smallMap } from './tile-map.ts';
import { fewestSheets, labelRoom, type Way } from './tile-ways.ts';

/** A sheet's worth of a foundation that is larger than a sheet. */
export interface TileSheet {
  /** `A r1 c2` */
  readonly name: string;
  readonly marks: readonly Mark[];
}

/** Points between the caption of a tile and the small map to its right. */
const MAP_GAP = 8;

/**
 * The foundation cut into tiles: as few sheets as it finds, of the ways to turn it, the two regions and the places of the joins.
 * The map of all of them is on the first, beside the region that the tiles take.
 *
 * A Problem when the sheet is too small for tiles with the overlap that is asked for.
 */
export function tileSheets(
  job: CheckedJob,
  foundation: Foundation,
  regions: Regions,
): Result<readonly TileSheet[]> {
  const overlap = job.overlap * POINTS_PER_INCH;
  const captionRoom = (drawn: DrawnFoundation, turn: Turn, region: Box<'page'>) =>
    captionRoomFor(job, foundation, drawn, turn, region);
  const column = besideRegion(regions.tall, regions);
  const fitsAtLeft = (drawn: DrawnFoundation, turn: Turn) =>
    captionFor(job, foundation, drawn, turn, column.maxX - column.minX).height <=
    column.maxY - column.minY - SMALL_MAP.height - MAP_GAP;
  const { keepUpright } = job;
  const way = fewestSheets({ foundation, regions, overlap, keepUpright, captionRoom, fitsAtLeft });
  if (way === null)
    return fail(
      `The sheet is too small to print a large foundation in parts that overlap by ${formatLength(job.overlap, job.unit)}`,
      'overlap',
      'Choose a smaller overlap, narrower margins or larger paper',
    );
  return ok(way.tiles.map((tile, i) => tileSheet(job, foundation, regions, way, tile, i === 0)));
}

/** `r1 c2` */
export const placeOf = ({ row, column }: Pick<Tile, 'row' | 'column'>): string =>
  `r${row + 1} c${column + 1}`;

const nameOf = ({ letter }: Foundation, tile: Pick<Tile, 'row' | 'column'>): string =>
  `${letter} ${placeOf(tile)}`;

/** In the caption of every tile. */
export const placeFact = (row: number, rows: number, column: number, columns: number): string =>
  `row ${row} of ${rows}, column ${column} of ${columns}`;

/** More rows or columns than any block has: its caption is as high as one can be. */
const MANY = 88;

function captionRoomFor(
  job: CheckedJob,
  foundation: Foundation,
  drawn: DrawnFoundation,
  turn: Turn,
  region: Box<'page'>,
): number {
  const { height } = captionFor(job, foundation, drawn, turn, captionWidth(region));
  return Math.max(SMALL_MAP.height, height) + CUT_WORD_ROOM;
}

/** As high as the caption of a tile may be at that width, points. */
const captionFor = (
  job: CheckedJob,
  foundation: Foundation,
  drawn: DrawnFoundation,
  turn: Turn,
  width: number,
): Caption =>
  captionsOf(job, foundation)(turn, width, {
    heading: nameOf(foundation, { row: MANY, column: MANY }),
    extra: [placeFact(MANY, MANY, MANY, MANY)],
    found: drawn.notes,
  });

/** The map stands to the right of the caption. */
const captionWidth = ({ minX, maxX }: Box<'page'>): number => maxX - minX - SMALL_MAP.width - MAP_GAP;

function tileSheet(
  job: CheckedJob,
  foundation: Foundation,
  regions: Regions,
  way: Way,
  tile: Tile,
  isFirst: boolean,
): TileSheet {
  const { key } = foundation;
  const { region, tiles, drawn, grid } = way;
  const { core, row, column } = tile;
  const name = nameOf(foundation, tile);
  const fact = placeFact(row + 1, grid.rows.spans.length, column + 1, grid.columns.spans.length);
  const beside = besideRegion(region, regions);
  const isAbove = way.captionAt === 'above';
  const captionBox = isAbove ? region : beside;
  const width = isAbove ? captionWidth(region) : beside.maxX - beside.minX;
  const caption = captionsOf(job, foundation)(way.turn, width, {
    heading: name,
    extra: [fact],
    found: drawn.notes,
  });
  const nameAt = (c: number, r: number) => {
    const found = tiles.find((other) => other.column === c && other.row === r);
    return found ? nameOf(foundation, found) : null;
  };
  const joins = joinMarks({
    key,
    grid,
    tile,
    nameAt,
    overlap: job.overlap * POINTS_PER_INCH,
    lines: Object.values(drawn.lines).flat(),
    labels: drawn.labels.filter((side) => clippedSegments([side], core).length > 0),
  });
  const joinLines = joins.flatMap((mark) => (mark.kind === 'path' ? edgesOf(mark.points) : []));
  const inCore = {
    lines: linesIn(drawn.lines, joinLines, core),
    matches: drawn.matches.filter((match) => clippedSegments([match], core).length > 0),
    openStretches: drawn.openStretches.flatMap((stretch) =>
      clippedSegments([stretch], core).map((shownPart) => ({ ...stretch, ...shownPart })),
    ),
    labels: drawn.labels,
  };
  const seams = [...drawn.lines.sewLines, ...drawn.lines.outline];
  const lengthsIn = job.seamLengths ? job.unit : null;
  const words = wordMarks(foundation, inCore, roomForWords(tile), lengthsIn, seams);
  const seen = withWholeStrokes(tile, way);
  const shown = drawn.marks.flatMap((mark) =>
    mark.role === 'label' ? labelOn(tile, mark) : clipped(mark, seen),
  );
  const toSheet = subtract<'page'>(cornerIn(way, tile), { x: tile.window.minX, y: tile.window.minY });
  const atTop = { x: captionBox.minX, y: captionBox.minY };
  const map = smallMap(key, way, tile);
  const mapAt = isAbove
    ? { x: region.maxX - map.width, y: region.minY }
    : { x: beside.minX, y: beside.minY + caption.height + MAP_GAP };
  const below = isAbove ? beside : { ...beside, minY: mapAt.y + SMALL_MAP.height + 2 * MAP_GAP };
  return {
    name,
    marks: [
      ...caption.draw().map((mark) => moved(mark, atTop)),
      ...map.marks.map((mark) => moved(mark, mapAt)),
      ...(isFirst ? mapAndWords(key, way, placeOf, below) : []),
      ...[...joins, ...shown, ...words].map((mark) => moved(mark, toSheet)),
    ],
  };
}

/** What belongs to a label stands on the tile that keeps it when the joins are trimmed, not in the overlap of another as well. */
function labelOn(tile: Tile, mark: Mark): readonly Mark[] {
  const { minX, minY, maxX, maxY } = boundingBox(mark.kind === 'text' ? textCorners(mark) : mark.points);
  const kept = roomForWords(tile);
  const isBeyond = maxX <= kept.minX || minX >= kept.maxX || maxY <= kept.minY || minY >= kept.maxY;
  return isBeyond ? [] : clipped(mark, labelRoom(tile));
}

/** Points: more than half of any stroke. */
const STROKE_ROOM = 0.75;

/** What the tile shows, a little wider where the foundation ends: the stroke of an edge there is not cut in half. */
export const withWholeStrokes = (
  { window, row, column }: Tile,
  { grid }: Pick<Way, 'grid'>,
): Box<'page'> => ({
  minX: window.minX - (column === 0 ? STROKE_ROOM : 0),
  minY: window.minY - (row === 0 ? STROKE_ROOM : 0),
  maxX: window.maxX + (column === grid.columns.joins.length ? STROKE_ROOM : 0),
  maxY: window.maxY + (row === grid.rows.joins.length ? STROKE_ROOM : 0),
});

/** Where the tile's corner stands: that stroke in the region, too, as far as there is room for it. */
export function cornerIn(
  { region, captionRoom }: Pick<Way, 'region' | 'captionRoom'>,
  { window }: Tile,
): Point<'page'> {
  const spare = (long: number, taken: number) => Math.min(STROKE_ROOM, Math.max(0, (long - taken) / 2));
  return {
    x: region.minX + spare(region.maxX - region.minX, window.maxX - window.minX),
    y: region.minY + captionRoom + spare(region.maxY - region.minY - captionRoom, window.maxY - window.minY),
  };
}

/** What the words on a tile stand along, and have to keep clear of: words stay on one side of every join. */
const linesIn = (
  lines: SheetLines,
  joinLines: readonly Segment<'page'>[],
  core: Box<'page'>,
): SheetLines => ({
  outline: clippedSegments(lines.outline, core),
  cuttingLine: clippedSegments(lines.cuttingLine, core),
  crossings: [...clippedSegments(lines.crossings, core), ...joinLines],
  sewLines: clippedSegments(lines.sewLines, core),
});

/** What is left of the tile when it is trimmed, and on the topmost the strip below the caption for the word `cut`. */
const roomForWords = ({ core, row }: Tile): Box<'page'> =>
  row === 0 ? { ...core, minY: core.minY - CUT_WORD_ROOM } : core;
