import { add, dot, type Point, type Polygon, rotation, scale } from '@seamwright/geometry';
import type { PieceCut } from '../types.ts';

/** A piece by its shape, size and direction: all that decides what it covers. */
export type PieceShape = Pick<PieceCut, 'shape' | 'width' | 'height' | 'angle'>;

/** One side of a piece. */
export interface PieceSide {
  /** Outward, of length 1. */
  readonly normal: Point;
  /** From the piece's centre, inches. */
  readonly distance: number;
}

/** Where a piece lies when it is placed true. */
export interface NominalPlace {
  /** The middle of the rectangle; of a half-rectangle, the point that is equally far from its three sides. */
  readonly centre: Point;
  /** Clockwise. */
  readonly corners: Polygon;
  /** `sides[i]` runs from corner i to the next. */
  readonly sides: readonly PieceSide[];
}

/** The directions of a piece's width and height, of length 1; quarter turns are exact. */
export function axesOf(angle: number): readonly [Point, Point] {
  const { a, b, c, d } = rotation(angle);
  return [
    { x: a, y: b },
    { x: c, y: d },
  ];
}

/** How far the points reach in a direction of length 1, from the origin. */
export const extent = (points: Polygon, direction: Point): number =>
  points.reduce((most, p) => Math.max(most, dot(p, direction)), Number.NEGATIVE_INFINITY);

/**
 * The piece placed true over a shape: with the same margin on opposite sides of a rectangle, and the same on all three
 * of a half-rectangle. No other place leaves a larger least margin, as the margins of opposite sides, and those of a
 * triangle's three weighted by the sides' lengths, have a fixed sum. A piece that is too small has margins below 0.
 *
 * A half-rectangle has its right angle where its width and height begin: its legs run `width` along the angle and
 * `height` at a quarter turn clockwise from it. So a width and a height that change places make the mirror image.
 */
export const nominalPlace = (piece: PieceShape, shape: Polygon): NominalPlace =>
  piece.shape === 'rectangle' ? rectangleOver(piece, shape) : halfRectangleOver(piece, shape);

function rectangleOver({ width, height, angle }: PieceShape, shape: Polygon): NominalPlace {
  const [along, across] = axesOf(angle);
  const [back, up] = [scale(along, -1), scale(across, -1)];
  const centre = at(
    along,
    (extent(shape, along) - extent(shape, back)) / 2,
    across,
    (extent(shape, across) - extent(shape, up)) / 2,
  );
  const corner = (x: number, y: number) => add(centre, at(along, (x * width) / 2, across, (y * height) / 2));
  return {
    centre,
    corners: [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)],
    sides: [
      { normal: up, distance: height / 2 },
      { normal: along, distance: width / 2 },
      { normal: across, distance: height / 2 },
      { normal: back, distance: width / 2 },
    ],
  };
}

/**
 * The triangle of the piece's directions that just encloses the shape has the same inscribed circle's centre: with equal
 * margins the piece is that triangle, enlarged from there. In the axes of its legs, with reaches h₁ and h₂ beyond the
 * legs and h₃ beyond the long side (whose normal is (cos ψ, sin ψ), tan ψ = width ÷ height), the centre (x, y) and
 * radius r solve h₁ + x = h₂ + y = h₃ − x·cos ψ − y·sin ψ = r.
 */
function halfRectangleOver({ width, height, angle }: PieceShape, shape: Polygon): NominalPlace {
  const [along, across] = axesOf(angle);
  const [back, up] = [scale(along, -1), scale(across, -1)];
  const longSide = Math.hypot(width, height);
  const [cos, sin] = [height / longSide, width / longSide];
  const slanting = at(along, cos, across, sin);
  const [h1, h2, h3] = [extent(shape, back), extent(shape, up), extent(shape, slanting)];
  const enclosed = (h3 + h1 * cos + h2 * sin) / (1 + cos + sin);
  const centre = at(along, enclosed - h1, across, enclosed - h2);
  const radius = (width + height - longSide) / 2;
  const rightAngle = add(centre, at(along, -radius, across, -radius));
  return {
    centre,
    corners: [rightAngle, add(rightAngle, scale(along, width)), add(rightAngle, scale(across, height))],
    sides: [up, slanting, back].map((normal) => ({ normal, distance: radius })),
  };
}

const at = (along: Point, x: number, across: Point, y: number): Point =>
  add(scale(along, x), scale(across, y));
