import { type ChartRow, type Cloth, counted, shapeName } from '@seamwright/cloth';
import { formatCutSize, type LengthUnit } from '@seamwright/geometry';
import { moved, polygonMark, QUIET, STROKES, segmentMark, textMark } from '../marks/marks.ts';
import { textWidth } from '../marks/metrics.ts';
import type { Mark } from '../marks/model.ts';
import type { Part } from '../sheet/check-part.ts';
import type { FlowPart } from '../sheet/flow.ts';
import { cutPicture, PICTURE } from './chart-picture.ts';
import { patchLines } from './patch-lists.ts';

/** Points: where the columns of a chart begin, and how wide it is. */
export interface Columns {
  readonly width: number;
  /** Right edge of the counts. */
  readonly count: number;
  readonly picture: number;
  readonly size: number;
  /** Names of patches: beside the rest or, on narrow sheets, below it. */
  readonly names: number;
  readonly namesBelow: boolean;
}

const COUNT = { size: 10.5, weight: 'semibold' } as const;
const SIZE = { size: 10.5, weight: 'regular' } as const;
const SHAPE = { size: 7.5, weight: 'regular' } as const;
const NAMES = { size: 9, weight: 'regular' } as const;
const HEAD = { size: 7.5, ink: QUIET } as const;

const SIZE_HEAD = 'size, width first';

/** Points: a box to tick with a pencil. */
const TICK = 8;

/** Points: base lines of a row's two lines, and from line to line of what follows. */
const FIRST = 12;
const SECOND = 22;
const LINE = 10.5;

/** Points that a row takes at least, and what stays free below its last line. */
const ROW = 27;
const BELOW = 5;

/** Points. A column with less room for patches breaks after every name. */
const LEAST_NAMES = 120;

export function columnsFor(rows: readonly ChartRow[], unit: LengthUnit, width: number): Columns {
  const widest = (texts: readonly string[], { size, weight }: typeof SIZE | typeof COUNT | typeof SHAPE) =>
    Math.max(...texts.map((text) => textWidth(text, size, weight)));
  const counts = widest(
    rows.map(({ cut }) => `${cut}`),
    COUNT,
  );
  const count = TICK + 8 + Math.max(14, counts);
  const picture = count + 12;
  const size = picture + PICTURE.width + 16;
  const sizes = Math.max(
    widest(
      rows.map((row) => formatCutSize(row.width, row.height, unit)),
      SIZE,
    ),
    widest([...rows.map(shapeText), SIZE_HEAD], SHAPE),
  );
  const beside = size + sizes + 14;
  const namesBelow = width - beside < LEAST_NAMES;
  return { width, count, picture, size, names: namesBelow ? size : beside, namesBelow };
}

/** What the columns hold. */
export function rowsHead({ width, count, picture, size, names, namesBelow }: Columns): Part {
  const word = (content: string, x: number, anchor: 'start' | 'end' = 'start') =>
    textMark('footer', undefined, content, { x, y: 8 }, { ...HEAD, anchor });
  return {
    marks: [
      word('cut', count, 'end'),
      word('right side up', picture),
      word(SIZE_HEAD, size),
      ...(namesBelow ? [] : [word('for', names)]),
      rule(width, 12),
    ],
    height: 13,
  };
}

/** One row: as many parts as its patches have lines, so that a row may run over to the next sheet. */
export function rowParts(
  row: ChartRow,
  cloth: Cloth,
  unit: LengthUnit,
  columns: Columns,
  again: readonly Part[],
): readonly FlowPart[] {
  const { width, count, picture, size, names, namesBelow } = columns;
  const lines = patchLines(row.pieces, NAMES, width - names);
  const beside = namesBelow ? 0 : Math.min(2, lines.length);
  const nameMark = (content: string, y: number): Mark =>
    textMark('footer', undefined, content, { x: names, y }, NAMES);
  const marks: Mark[] = [
    tickBox(FIRST),
    textMark('footer', undefined, `${row.cut}`, { x: count, y: FIRST }, { ...COUNT, anchor: 'end' }),
    ...cutPicture(row, cloth).map((mark) => moved(mark, { x: picture, y: (ROW - PICTURE.height) / 2 })),
    textMark('footer', undefined, formatCutSize(row.width, row.height, unit), { x: size, y: FIRST }, SIZE),
    textMark('footer', undefined, shapeText(row), { x: size, y: SECOND }, { ...SHAPE, ink: QUIET }),
    ...lines.slice(0, beside).map((line, i) => nameMark(line, i === 0 ? FIRST : SECOND)),
  ];
  const parts: FlowPart[] = [
    { marks, height: lines.length === beside ? ROW : namesBelow ? ROW - 1 : ROW - 4, again },
    ...lines.slice(beside).map((line, i, all) => ({
      marks: [nameMark(line, 8)],
      height: LINE + (i === all.length - 1 ? BELOW : 0),
      again,
    })),
  ];
  const last = parts.at(-1)!;
  return [
    // What a size is for stands with it, at least in its first lines.
    ...parts.slice(0, -1).map((part, i) => ({ ...part, keep: i < 2 })),
    { ...last, marks: [...last.marks, rule(width, last.height - 0.5)] },
  ];
}

/** `half-square, 8 triangles`; with the section, in a chart by section. */
function shapeText(row: ChartRow): string {
  const { shape, yields, section } = row;
  const name = shapeName(row);
  const what = shape === 'rectangle' ? name : `${name}, ${counted(yields, 'triangle')}`;
  return section === undefined ? what : `${what}, section ${section}`;
}

/** A box to tick, beside a line of words. */
export const tickBox = (base: number): Mark =>
  polygonMark(
    'footer',
    undefined,
    [
      { x: 0.5, y: base - TICK + 0.5 },
      { x: TICK, y: base - TICK + 0.5 },
      { x: TICK, y: base },
      { x: 0.5, y: base },
    ],
    STROKES.mapOutline,
  );

const rule = (width: number, y: number): Mark =>
  segmentMark('footer', undefined, { a: { x: 0, y }, b: { x: width, y } }, STROKES.rule);
