import { add, area, type Point, type Polygon } from '@seamwright/geometry';
import { convexParts } from './convex-parts.ts';
import { type Convex, convexOf, opposite } from './no-fit.ts';

/** A way in which something may lie on a sheet. Points. */
export interface Way {
  /** Of the upright rectangle round all that it covers. */
  readonly width: number;
  readonly height: number;
  /** What it covers, as convex parts, and these turned by a half about the corner of that rectangle. */
  readonly parts: readonly Convex[];
  readonly opposites: readonly Convex[];
  /** The middle of its weight, from the corner of that rectangle. */
  readonly centre: { readonly x: number; readonly y: number };
  /** As it is drawn, top up. */
  readonly upright: boolean;
}

/** Something that is to stand on a sheet. */
export interface Packable<W extends Way = Way> {
  /** The usual one first. Each fits on an empty sheet. */
  readonly ways: readonly W[];
  /** Square points that it takes at least, with its share of the gap round it. */
  readonly grown: number;
}

/** Where it stands: the top left corner of its way's upright rectangle, points on the sheet. */
export interface Placement<T extends Packable> {
  readonly item: T;
  readonly way: T['ways'][number];
  readonly x: number;
  readonly y: number;
}

/**
 * How outlines that belong together lie on a sheet.
 *
 * @param outlines points; the corner of their common upright rectangle, of the given size, at (0, 0)
 */
export const wayOver = (
  outlines: readonly Polygon<'page'>[],
  { width, height }: { readonly width: number; readonly height: number },
  upright: boolean,
): Way => {
  const parts = convexParts(outlines);
  return {
    width,
    height,
    upright,
    parts: parts.map(convexOf),
    opposites: parts.map((part) => convexOf(opposite(part))),
    centre: centreOf(outlines),
  };
};

/** Near the middle of their weight: that of each outline's corners, by its area. */
function centreOf(outlines: readonly Polygon<'page'>[]): Point<'page'> {
  let [x, y, weight] = [0, 0, 0];
  for (const outline of outlines) {
    const middle = outline.reduce((sum, corner) => add(sum, corner), { x: 0, y: 0 } as Point<'page'>);
    const share = area(outline) / outline.length;
    x += middle.x * share;
    y += middle.y * share;
    weight += share * outline.length;
  }
  return { x: x / weight, y: y / weight };
}
