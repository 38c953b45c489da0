import { type Box, boundingBox, edgesOf, type Point, type Segment } from '@seamwright/geometry';
import { segmentsOutside } from '../marks/clip.ts';
import { QUIET, STROKES, segmentMark, textMark } from '../marks/marks.ts';
import { CAP_HEIGHT, textCorners, textWidth, wrapped } from '../marks/metrics.ts';
import type { Mark, PathMark, TextMark } from '../marks/model.ts';
import type { Tile } from './tile-grid.ts';
import type { Way } from './tile-ways.ts';

/** Points. The small map of the tiles on every sheet, at most this wide and high. */
export const SMALL_MAP = { width: 60, height: 30 };

/** How to make one of the tiles, in words beside or above the large map; points. */
const WORDS = { title: 9, line: 10.5, below: 8, beside: 14 };
const TITLE = { size: WORDS.title, weight: 'semibold' } as const;
const SENTENCE = { size: 8, weight: 'regular', ink: QUIET } as const;

export const HOW_TO_JOIN =
  'Trim the right and the lower edge of a sheet at its crop marks, lay them on the grey lines of the next sheets, diamond on diamond, and tape.';

/** The same where sheets are small. */
const HOW_TO_JOIN_SHORTLY = 'Trim at the crop marks, lay on the grey lines, diamond on diamond, and tape.';

/** The share of a low box that the words take at the right of the map. */
const WORDS_SHARE = 0.45;

/** Names on the large map: largest and smallest, points; and what is kept free between a name and its tile's edges. */
const NAME = { largest: 10, smallest: 5.5, gap: 2.5 };

/** Points. A map that would be lower or narrower is no help. */
const LEAST_MAP = 24;

/** Rows and columns of tiles drawn in little: their trimmed edges, as far as there are tiles. */
interface Drawn {
  readonly lines: readonly PathMark[];
  readonly toMap: (p: Point<'page'>) => Point<'page'>;
  readonly boxOf: (tile: Tile) => Box<'page'>;
  readonly width: number;
  readonly height: number;
}

function drawnIn(key: string, { grid, tiles }: Way, width: number, height: number): Drawn {
  const [left, top] = [grid.columns.spans[0]!.from, grid.rows.spans[0]!.from];
  const [right, bottom] = [grid.columns.spans.at(-1)!.to, grid.rows.spans.at(-1)!.to];
  const unit = Math.min(width / (right - left), height / (bottom - top));
  const toMap = ({ x, y }: Point<'page'>): Point<'page'> => ({ x: (x - left) * unit, y: (y - top) * unit });
  const boxOf = ({ core: { minX, minY, maxX, maxY } }: Tile): Box<'page'> =>
    boundingBox<'page'>([toMap({ x: minX, y: minY }), toMap({ x: maxX, y: maxY })]);
  const isThere = (column: number, row: number) =>
    tiles.some((tile) => tile.column === column && tile.row === row);
  const lines = tiles.flatMap((tile) => {
    const { column, row } = tile;
    const { minX, minY, maxX, maxY } = boxOf(tile);
    const corner = (x: number, y: number): Point<'page'> => ({ x, y });
    const sides: readonly (Segment<'page'> | null)[] = [
      { a: corner(minX, minY), b: corner(maxX, minY) },
      { a: corner(minX, minY), b: corner(minX, maxY) },
      isThere(column, row + 1) ? null : { a: corner(minX, maxY), b: corner(maxX, maxY) },
      isThere(column + 1, row) ? null : { a: corner(maxX, minY), b: corner(maxX, maxY) },
    ];
    return sides.flatMap((side) => (side ? [segmentMark('caption', key, side, STROKES.rule)] : []));
  });
  return { lines, toMap, boxOf, width: (right - left) * unit, height: (bottom - top) * unit };
}

/** The tiles in little, this one dark; their top left corner at (0, 0). */
export function smallMap(
  key: string,
  way: Way,
  tile: Tile,
): { readonly marks: readonly Mark[]; readonly width: number } {
  const { lines, boxOf, width } = drawnIn(key, way, SMALL_MAP.width, SMALL_MAP.height);
  const { minX, minY, maxX, maxY } = boxOf(tile);
  const dark: PathMark = {
    kind: 'path',
    role: 'caption',
    section: key,
    points: [
      { x: minX, y: minY },
      { x: maxX, y: minY },
      { x: maxX, y: maxY },
      { x: minX, y: maxY },
    ],
    closed: true,
    stroke: STROKES.rule,
    fill: 0.6,
  };
  return { marks: [dark, ...lines], width };
}

/**
 * How the tiles are joined, and the map of all of them, as large as `box` allows: each tile with its name, the foundation's cutting
 * line behind them. Where the names have no room in the tiles, rows and columns are numbered along the edges, as many as can be
 * read; where even the map has no room, there are the words alone.
 *
 * @param nameOf `r1 c2`
 */
export function mapAndWords(
  key: string,
  way: Way,
  nameOf: (tile: Tile) => string,
  box: Box<'page'>,
): readonly Mark[] {
  const [width, height] = [box.maxX - box.minX, box.maxY - box.minY];
  if (width > height) {
    const map = largeMap(key, way, nameOf, { ...box, maxX: box.maxX - WORDS_SHARE * width });
    const left = map === null ? box.minX : map.right + WORDS.beside;
    return [...(map?.marks ?? []), ...howTo(key, way, { ...box, minX: left }).marks];
  }
  const words = howTo(key, way, box);
  const map = largeMap(key, way, nameOf, { ...box, minY: words.bottom + WORDS.below });
  return [...words.marks, ...(map?.marks ?? [])];
}

/** In as many words as the box has room for; in none where it has none: the joins and their marks have words of their own. */
function howTo(
  key: string,
  { tiles }: Way,
  { minX, minY, maxX, maxY }: Box<'page'>,
): { readonly marks: readonly Mark[]; readonly bottom: number } {
  const title = linesOf(`One foundation on ${tiles.length} sheets`, TITLE, maxX - minX);
  const [long, short] = [HOW_TO_JOIN, HOW_TO_JOIN_SHORTLY].map((text) =>
    linesOf(text, SENTENCE, maxX - minX),
  );
  const bottomOf = ({ length }: readonly Line[]) =>
    length === 0 ? minY : minY + WORDS.title * CAP_HEIGHT + (length - 1) * WORDS.line;
  const lines =
    [[...title, ...long!], [...title, ...short!], short!, title].find((some) => bottomOf(some) <= maxY) ?? [];
  return {
    marks: lines.map(({ content, look }, i) =>
      textMark(
        'caption',
        key,
        content,
        { x: minX, y: minY + WORDS.title * CAP_HEIGHT + i * WORDS.line },
        look,
      ),
    ),
    bottom: bottomOf(lines),
  };
}

interface Line {
  readonly content: string;
  readonly look: typeof TITLE | typeof SENTENCE;
}

const linesOf = (text: string, look: Line['look'], width: number): readonly Line[] =>
  wrapped(text, look.size, look.weight, width, Infinity).map((content) => ({ content, look }));

/** null where it has no room; `right` is where it ends. */
function largeMap(
  key: string,
  way: Way,
  nameOf: (tile: Tile) => string,
  box: Box<'page'>,
): { readonly marks: readonly Mark[]; readonly right: number } | null {
  const room = { width: box.maxX - box.minX, height: box.maxY - box.minY };
  const full = drawnIn(key, way, room.width, room.height);
  const fits = way.tiles.every((tile) => nameSize(nameOf(tile), full.boxOf(tile)) >= NAME.smallest);
  const edge = fits ? 0 : 2 * NAME.largest;
  const drawn = fits ? full : drawnIn(key, way, room.width - edge, room.height - edge);
  if (Math.min(drawn.width, drawn.height) < LEAST_MAP) return null;
  const at = ({ x, y }: Point<'page'>): Point<'page'> => ({ x: box.minX + edge + x, y: box.minY + edge + y });
  const names = fits ? namesIn(key, way, nameOf, drawn, at) : numbersAlong(key, way, drawn, at);
  const outline = edgesOf(way.drawn.lines.cuttingLine.map(({ a }) => at(drawn.toMap(a))));
  const marks: Mark[] = [
    // Edge by edge: closed paths, and such as end where they began, are outlines and check squares to those who read a page.
    ...names
      .reduce<readonly Segment<'page'>[]>((rest, name) => segmentsOutside(rest, around(name)), outline)
      .map((edge) => segmentMark('caption', key, edge, STROKES.mapOutline)),
    ...drawn.lines.map((line) => ({ ...line, points: line.points.map(at) })),
    ...names,
  ];
  return { marks, right: at({ x: drawn.width, y: 0 }).x };
}

/** Where the foundation's outline is not drawn: it would strike the name through. */
function around(name: TextMark): Box<'page'> {
  const { minX, minY, maxX, maxY } = boundingBox(textCorners(name));
  const { gap } = NAME;
  return { minX: minX - gap, minY: minY - gap, maxX: maxX + gap, maxY: maxY + gap };
}

/** As large as the tile allows. */
function nameSize(name: string, { minX, minY, maxX, maxY }: Box<'page'>): number {
  const across = (maxX - minX - 2 * NAME.gap) / textWidth(name, 1, 'semibold');
  const down = (maxY - minY - 2 * NAME.gap) / CAP_HEIGHT;
  return Math.min(across, down, NAME.largest);
}

function namesIn(
  key: string,
  { tiles }: Way,
  nameOf: (tile: Tile) => string,
  { boxOf }: Drawn,
  at: (p: Point<'page'>) => Point<'page'>,
): readonly TextMark[] {
  const size = Math.min(...tiles.map((tile) => nameSize(nameOf(tile), boxOf(tile))));
  return tiles.map((tile, i) => {
    const { minX, minY, maxX, maxY } = boxOf(tile);
    const base = { x: (minX + maxX) / 2, y: (minY + maxY + size * CAP_HEIGHT) / 2 };
    // The map stands on the first sheet.
    const weight = i === 0 ? 'semibold' : 'regular';
    return textMark('caption', key, nameOf(tile), at(base), { size, weight, anchor: 'middle' });
  });
}

/** `c1`, `c2` … above and `r1`, `r2` … at the left, every one or every so many. */
function numbersAlong(
  key: string,
  { grid, tiles }: Way,
  { boxOf, width, height }: Drawn,
  at: (p: Point<'page'>) => Point<'page'>,
): readonly TextMark[] {
  const size = NAME.smallest + 1;
  const [columns, rows] = [grid.columns.spans.length, grid.rows.spans.length];
  const everyColumn = Math.ceil(textWidth(`c${columns} `, size, 'regular') / (width / columns));
  const everyRow = Math.ceil((size * 1.2) / (height / rows));
  const seen = new Set<string>();
  return tiles.flatMap((tile) => {
    const { minX, minY, maxX, maxY } = boxOf(tile);
    const above = { x: (minX + maxX) / 2, y: -4 };
    const beside = { x: -4, y: (minY + maxY + size * CAP_HEIGHT) / 2 };
    const numbers = [
      { name: `c${tile.column + 1}`, shown: tile.column % everyColumn === 0, base: above, anchor: 'middle' },
      { name: `r${tile.row + 1}`, shown: tile.row % everyRow === 0, base: beside, anchor: 'end' },
    ] as const;
    return numbers.flatMap(({ name, shown, base, anchor }) => {
      if (!shown || seen.has(name)) return [];
      seen.add(name);
      return [textMark('caption', key, name, at(base), { size, anchor })];
    });
  });
}
