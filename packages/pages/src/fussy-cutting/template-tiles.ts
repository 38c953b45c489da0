import { type Box, edgesOf, POINTS_PER_INCH, subtract } from '@seamwright/geometry';
import { clipped } from '../marks/clip.ts';
import { moved } from '../marks/marks.ts';
import { textCorners } from '../marks/metrics.ts';
import type { Mark } from '../marks/model.ts';
import type { Regions } from '../sheet/sheet-frame.ts';
import { USUAL_OVERLAP } from '../sheet/usual.ts';
import { cover, type Tile, type TileGrid, tilesOf } from '../tiles/tile-grid.ts';
import { joinMarks } from '../tiles/tile-joins.ts';
import { holdsPaper, obstaclesOf } from '../tiles/tile-ways.ts';
import { cornerIn, placeFact, placeOf, withWholeStrokes } from '../tiles/tiles.ts';
import {
  CAPTION,
  captionMarks,
  cutText,
  type DrawnTemplate,
  drawnTemplate,
  factsOf,
} from './template-card.ts';
import type { CheckedTemplates } from './template-job.ts';

const OVERLAP = USUAL_OVERLAP * POINTS_PER_INCH;

/** One way to cut a template into tiles. */
interface Way {
  readonly drawn: DrawnTemplate;
  readonly region: Box<'page'>;
  /** Points: what is kept free above each tile. */
  readonly captionRoom: number;
  readonly grid: TileGrid;
  /** Those that show something of the template. */
  readonly tiles: readonly Tile[];
}

/**
 * A template that is larger than a sheet, cut into tiles, the fewest of the ways to turn it and of the two regions. The marks of
 * each lie as on its sheet. The smallest sheets that `checkRoom` lets pass have room for tiles of several overlaps.
 */
export function templateTiles(
  job: CheckedTemplates,
  index: number,
  name: string,
  { wide, tall }: Regions,
): readonly (readonly Mark[])[] {
  const ways = ([0, 90] as const).flatMap((turn) => {
    const drawn = drawnTemplate(job, index, name, turn);
    return [wide, tall].map((region) => wayIn(drawn, region));
  });
  const best = ways.reduce((least, way) => (way.tiles.length < least.tiles.length ? way : least));
  const cut = cutText(job, index);
  return best.tiles.map((tile) =>
    tileMarks(cut === null ? factsOf(job) : `${factsOf(job)}; ${cut}`, name, best, tile),
  );
}

function wayIn(drawn: DrawnTemplate, region: Box<'page'>): Way {
  const across = region.maxX - region.minX;
  const down = region.maxY - region.minY - CAPTION;
  const covered = (length: number, most: number, axis: 'x' | 'y') =>
    cover(length, { most, overlap: OVERLAP, obstacles: obstaclesOf(drawn.marks, axis) });
  const grid = { columns: covered(drawn.width, across, 'x'), rows: covered(drawn.height, down, 'y') };
  const tiles = tilesOf(grid).filter(({ core }) => holdsPaper(drawn.cuttingLine, core));
  return { drawn, region, captionRoom: CAPTION, grid, tiles };
}

function tileMarks(facts: string, name: string, way: Way, tile: Tile): readonly Mark[] {
  const { drawn, region, grid, tiles } = way;
  const { columns, rows } = grid;
  const texts = drawn.marks.filter((mark) => mark.kind === 'text');
  const joins = joinMarks({
    key: name,
    grid,
    tile,
    nameAt: (column, row) =>
      tiles.some((other) => other.column === column && other.row === row)
        ? `${name} ${placeOf({ column, row })}`
        : null,
    overlap: OVERLAP,
    lines: drawn.marks.flatMap((mark) => (mark.kind === 'path' ? edgesOf(mark.points) : [])),
    labels: texts.flatMap((text) => edgesOf(textCorners(text))),
  });
  const place = placeFact(tile.row + 1, rows.spans.length, tile.column + 1, columns.spans.length);
  const seen = withWholeStrokes(tile, way);
  const toSheet = subtract<'page'>(cornerIn(way, tile), { x: tile.window.minX, y: tile.window.minY });
  const top = { x: region.minX, y: region.minY + 8 };
  return [
    ...captionMarks(name, `${name} ${placeOf(tile)}`, `${place}; ${facts}`, top),
    ...[...joins, ...drawn.marks.flatMap((mark) => clipped(mark, seen))].map((mark) => moved(mark, toSheet)),
  ];
}
