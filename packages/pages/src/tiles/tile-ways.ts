import {
  area,
  type Box,
  boundingBox,
  contains,
  edgesOf,
  POINTS_PER_INCH,
  type Polygon,
  type Segment,
} from '@seamwright/geometry';
import type { Foundation } from '../foundation/foundation.ts';
import { type DrawnFoundation, foundationMarks } from '../foundation/foundation-marks.ts';
import { CUT_WORD_ROOM, sizeOnSheet, type Turn } from '../foundation/turns.ts';
import { clippedSegments } from '../marks/clip.ts';
import { textCorners } from '../marks/metrics.ts';
import type { Mark } from '../marks/model.ts';
import type { Regions } from '../sheet/sheet-frame.ts';
import { cover, type Leaning, type Obstacles, type Tile, type TileGrid, tilesOf } from './tile-grid.ts';

/** What of the tile labels may stand in: on the topmost the strip above the foundation, too, where others have none. */
export const labelRoom = ({ window, row }: Tile): Box<'page'> =>
  row === 0 ? { ...window, minY: window.minY - CUT_WORD_ROOM } : window;

export type CaptionSide = 'above' | 'left';

/** One way to cut a foundation into tiles. */
export interface Way {
  readonly turn: Turn;
  readonly region: Box<'page'>;
  /** The caption stands above the tile, or at its left, above the check squares. */
  readonly captionAt: CaptionSide;
  /** Points: what is kept free above each tile. */
  readonly captionRoom: number;
  readonly grid: TileGrid;
  readonly drawn: DrawnFoundation;
  /** Those that show something of the foundation. */
  readonly tiles: readonly Tile[];
}

export interface WaysOrder {
  readonly foundation: Foundation;
  readonly regions: Regions;
  /** Points. */
  readonly overlap: number;
  /** The foundation is not turned. */
  readonly keepUpright: boolean;
  /** Points that are kept free above each tile. */
  readonly captionRoom: (drawn: DrawnFoundation, turn: Turn, region: Box<'page'>) => number;
  /** Whether the caption has room at the left of the tall region. */
  readonly fitsAtLeft: (drawn: DrawnFoundation, turn: Turn) => boolean;
}

const TURNS: readonly Turn[] = ['upright', 'turned'];
const LEANINGS: readonly Leaning[] = ['even', 'early', 'late'];

/** Tiles have to be so many overlaps long and wide at least, so that joins keep apart. */
const LEAST_OVERLAPS = 3;

/** How often the caption may turn out to need more room when labels have moved off the joins. */
const ROUNDS = 3;

/**
 * Of all ways to turn the foundation, to choose the region and to place the joins, the first with the fewest sheets; null when
 * the regions are too small for the overlap. Labels that its joins would run through stand on one side of them.
 */
export function fewestSheets(order: WaysOrder): Way | null {
  let least = 0;
  for (let round = 1; ; round++) {
    const way = fewestOf(order, least);
    if (way === null || crossedBy(way) === 0) return way;
    const drawn = foundationMarks(order.foundation, way.turn, 0, joinLines(way));
    // Words that no longer fit in their patches go into the caption.
    const captionRoom = way.captionAt === 'left' ? 0 : order.captionRoom(drawn, way.turn, way.region);
    if (captionRoom <= way.captionRoom || round === ROUNDS) return { ...way, drawn };
    least = captionRoom;
  }
}

/** @param leastCaption points */
function fewestOf(order: WaysOrder, leastCaption: number): Way | null {
  const ways = TURNS.slice(0, order.keepUpright ? 1 : 2).flatMap((turn) => {
    const drawn = foundationMarks(order.foundation, turn);
    const { wide, tall } = order.regions;
    return [
      ...[wide, tall].flatMap((region) => {
        const captionRoom = Math.max(leastCaption, order.captionRoom(drawn, turn, region));
        return waysIn(order, { turn, drawn, region, captionAt: 'above', captionRoom });
      }),
      ...(order.fitsAtLeft(drawn, turn)
        ? waysIn(order, { turn, drawn, region: tall, captionAt: 'left', captionRoom: CUT_WORD_ROOM })
        : []),
    ];
  });
  return ways.reduce<Way | null>(
    (best, way) => (best === null || compareWays(way, best) < 0 ? way : best),
    null,
  );
}

/** Where tiles are laid edge to edge, all across the foundation. */
function joinLines({ grid: { columns, rows } }: Way): readonly Segment<'page'>[] {
  const [left, right] = [columns.spans[0]!.from, columns.spans.at(-1)!.to];
  const [top, bottom] = [rows.spans[0]!.from, rows.spans.at(-1)!.to];
  return [
    ...columns.joins.map((x) => ({ a: { x, y: top }, b: { x, y: bottom } })),
    ...rows.joins.map((y) => ({ a: { x: left, y }, b: { x: right, y } })),
  ];
}

/** A caption above its tile is the usual one. */
const compareWays = (p: Way, q: Way): number =>
  p.tiles.length - q.tiles.length ||
  Number(p.captionAt === 'left') - Number(q.captionAt === 'left') ||
  crossedBy(p) - crossedBy(q);

const crossedBy = ({ grid }: Way): number => grid.columns.crossed + grid.rows.crossed;

function waysIn(
  order: WaysOrder,
  stand: Pick<Way, 'turn' | 'drawn' | 'region' | 'captionAt' | 'captionRoom'>,
): readonly Way[] {
  const { turn, drawn, region, captionRoom } = stand;
  const { foundation, overlap } = order;
  const { width, height } = sizeOnSheet(foundation, turn);
  const across = { most: region.maxX - region.minX, overlap, obstacles: obstaclesOf(drawn.marks, 'x') };
  const down = {
    most: region.maxY - region.minY - captionRoom,
    overlap,
    obstacles: obstaclesOf(drawn.marks, 'y'),
  };
  if (Math.min(across.most, down.most) < LEAST_OVERLAPS * overlap) return [];
  const cuttingLine = drawn.lines.cuttingLine.map(({ a }) => a);
  // Joins that lean leave more tiles blank, and only where a corner of the rectangle round the foundation is.
  const leanings = area(cuttingLine) < 0.99 * width * height ? LEANINGS : LEANINGS.slice(0, 1);
  const columns = leanings.map((leaning) => cover(width, { ...across, leaning }));
  const rows = leanings.map((leaning) => cover(height, { ...down, leaning }));
  return columns.flatMap((columnsCover) =>
    rows.map((rowsCover): Way => {
      const grid = { columns: columnsCover, rows: rowsCover };
      const tiles = tilesOf(grid).filter(({ core }) => holdsPaper(cuttingLine, core));
      return { ...stand, grid, tiles };
    }),
  );
}

/** Whether anything inside the cutting line lies in the box, be it only the blank middle of a large patch. */
export function holdsPaper(cuttingLine: Polygon<'page'>, box: Box<'page'>): boolean {
  if (clippedSegments(edgesOf(cuttingLine), box).length > 0) return true;
  return contains(cuttingLine, { x: box.minX, y: box.minY }) === 'inside';
}

/** What joins that are upright (for 'x') or level (for 'y') are kept off. */
export function obstaclesOf(marks: readonly Mark[], axis: 'x' | 'y'): Obstacles {
  const spanOf = (mark: Mark) => {
    const { minX, minY, maxX, maxY } = boundingBox(mark.kind === 'text' ? textCorners(mark) : mark.points);
    return axis === 'x' ? { from: minX, to: maxX } : { from: minY, to: maxY };
  };
  const isLabel = ({ role }: Mark) => role === 'label';
  const isTick = ({ role }: Mark) => role === 'match-mark';
  return {
    labels: marks.filter(isLabel).map(spanOf),
    ticks: marks.filter(isTick).map(spanOf),
    lines: marks.flatMap((mark) =>
      mark.kind === 'text' || isLabel(mark) || isTick(mark) ? [] : linesSquareTo(mark.points, axis),
    ),
  };
}

/** Where stretches of the path that are no shorter than half an inch run square to the axis. */
function linesSquareTo(
  points: Extract<Mark, { kind: 'path' }>['points'],
  axis: 'x' | 'y',
): readonly number[] {
  const other = axis === 'x' ? 'y' : 'x';
  return edgesOf(points).flatMap(({ a, b }) => {
    const along = Math.abs(a[axis] - b[axis]) < 1 && Math.abs(a[other] - b[other]) > POINTS_PER_INCH / 2;
    return along ? [a[axis]] : [];
  });
}
