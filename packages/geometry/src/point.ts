/**
 * Points and polygons.
 *
 * One direction for y in the whole program: x to the right, **y down**, as on a screen, as in SVG and as in
 * our files. Only the PDF writer turns it over.
 */

declare const spaceTag: unique symbol;

/**
 * Names the space `S` to the compiler alone. A function type, as only that makes `add(printed, drawn)` an error: a
 * plain `S` would let the compiler take both for points of the union of their spaces.
 */
export type Tag<S> = (space: S) => S;

/**
 * The coordinate spaces. A point of one space is no point of another to the compiler, though both are two
 * plain numbers when the program runs.
 *
 * - `block`: inches on the finished block, seen from the front
 * - `print`: inches on a foundation as printed (the mirror image of the block)
 * - `page`: PDF points (1/72 in) from the top left corner of a sheet
 * - `screen`: CSS pixels from the top left corner of the canvas
 * - `picture`: pixels from the top left corner of a picture that is traced
 */
export type Space = 'block' | 'print' | 'page' | 'screen' | 'picture';

/** A point (or a vector) of the space `S`. A literal `{ x, y }` fits every space; a tagged point only its own. */
export interface Point<S extends Space = 'block'> {
  readonly x: number;
  readonly y: number;
  /** Never there when the program runs: it only tells the compiler which space the numbers belong to. */
  readonly [spaceTag]?: Tag<S>;
}

/** The corners of a closed shape, in order, the first not repeated at the end. */
export type Polygon<S extends Space = 'block'> = readonly Point<S>[];

/** A straight stretch between two points. */
export interface Segment<S extends Space = 'block'> {
  readonly a: Point<S>;
  readonly b: Point<S>;
}

/** An upright rectangle: the least and the greatest coordinates, both included. */
export interface Box<S extends Space = 'block'> {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
  readonly [spaceTag]?: Tag<S>;
}
