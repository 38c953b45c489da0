import { lerp, type Point, type Polygon, type Segment } from '@seamwright/geometry';

/** A line from x1, y1 to x2, y2. */
export const line = (x1: number, y1: number, x2: number, y2: number): Segment => ({
  a: { x: x1, y: y1 },
  b: { x: x2, y: y2 },
});

export const rectangleOf = (width: number, height: number): Polygon => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];

export const squareOf = (side: number): Polygon => rectangleOf(side, side);

/** The lines with every coordinate made `factor` times as large. */
export const enlarged = (lines: readonly Segment[], factor: number): readonly Segment[] =>
  lines.map(({ a, b }) => line(a.x * factor, a.y * factor, b.x * factor, b.y * factor));

export const shifted = (lines: readonly Segment[], dx: number, dy: number): readonly Segment[] =>
  lines.map(({ a, b }) => line(a.x + dx, a.y + dy, b.x + dx, b.y + dy));

/** The lines and their images after one, two and three quarter turns about the middle of a square of this side. */
export function fourTimes(lines: readonly Segment[], side: number): readonly Segment[] {
  const turned = ({ x, y }: Point): Point => ({ x: side - y, y: x });
  const images: Segment[] = [...lines];
  let last = lines;
  for (let k = 1; k < 4; k++) {
    last = last.map(({ a, b }) => ({ a: turned(a), b: turned(b) }));
    images.push(...last);
  }
  return images;
}

/** The lines between `columns` × `rows` equal cells of size 1, each of full length. */
export const cellLines = (columns: number, rows: number = columns): readonly Segment[] => [
  ...upTo(columns - 1).map((k) => line(k, 0, k, rows)),
  ...upTo(rows - 1).map((k) => line(0, k, columns, k)),
];

/** The lines that quarter the cell at the origin. */
export const QUARTERED: readonly Segment[] = [line(0.5, 0, 0.5, 1), line(0, 0.5, 1, 0.5)];

/** 1, 2, … count; none when count is less than 1. */
export const upTo = (count: number): readonly number[] =>
  Array.from({ length: Math.max(0, count) }, (_, k) => k + 1);

/** 0, 1, … count − 1. */
export const below = (count: number): readonly number[] => Array.from({ length: count }, (_, k) => k);

/**
 * Lines drawn on cells of size 1, put on cells whose borders lie at `stops`, the same across and down: a diagonal of a
 * cell stays a diagonal of it.
 */
export function onStops(lines: readonly Segment[], stops: readonly number[]): readonly Segment[] {
  const place = (value: number): number => {
    const cell = Math.min(stops.length - 2, Math.floor(value));
    const [low, high] = [stops[cell]!, stops[cell + 1]!];
    return lerp({ x: low, y: 0 }, { x: high, y: 0 }, value - cell).x;
  };
  return lines.map(({ a, b }) => line(place(a.x), place(a.y), place(b.x), place(b.y)));
}

/** The stops of three columns, the outer ones alike, the middle one with its share of the side. */
export function aboutTheMiddle(side: number, middle: number): readonly number[] {
  const outer = (side * (1 - middle)) / 2;
  return [0, outer, side - outer, side];
}
