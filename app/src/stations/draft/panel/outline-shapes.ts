import type { Drawing } from '@seamwright/arrangement';
import {
  circleWedge,
  diamond,
  equilateralTriangle,
  kite,
  rectangle,
  regularHexagon,
  regularOctagon,
  rightTriangle,
  square,
} from '@seamwright/drafting';
import { type LengthRange, type Result, SIZE_RANGE } from '@seamwright/geometry';

/** What an outline is made of: lengths in inches, and a count. */
export interface ShapeSizes {
  readonly side: number;
  readonly width: number;
  readonly height: number;
  /** From the top of a kite to where it is widest. */
  readonly shoulder: number;
  readonly radius: number;
  readonly inner: number;
  readonly count: number;
}

/** One thing that is asked for a shape. */
export interface Asked {
  readonly size: keyof ShapeSizes;
  readonly label: string;
  readonly hint?: string;
}

export interface OutlineShape {
  readonly name: string;
  readonly asks: readonly Asked[];
  readonly make: (sizes: ShapeSizes) => Result<Drawing>;
}

/** Which lengths are taken; the rest of what a shape asks for is the shape's to check. */
export const rangeOf = (size: keyof ShapeSizes): LengthRange =>
  size === 'inner' ? { least: 0, most: SIZE_RANGE.most } : SIZE_RANGE;

const SIDE: Asked = { size: 'side', label: 'Side' };
const WIDTH: Asked = { size: 'width', label: 'Width' };
const HEIGHT: Asked = { size: 'height', label: 'Height' };

/** A regular octagon is 1 + √2 sides wide. */
const OCTAGON_SIDES = 1 + Math.SQRT2;

/** The outlines that are offered, in this order. */
export const OUTLINE_SHAPES: readonly OutlineShape[] = [
  { name: 'Square', asks: [SIDE], make: ({ side }) => square(side) },
  { name: 'Rectangle', asks: [WIDTH, HEIGHT], make: ({ width, height }) => rectangle(width, height) },
  { name: 'Hexagon', asks: [SIDE], make: ({ side }) => regularHexagon(side) },
  {
    name: 'Octagon',
    asks: [{ size: 'width', label: 'Width', hint: 'From flat to flat.' }],
    make: ({ width }) => regularOctagon(width / OCTAGON_SIDES),
  },
  { name: 'Triangle, equal sides', asks: [SIDE], make: ({ side }) => equilateralTriangle(side) },
  {
    name: 'Triangle, right angle',
    asks: [WIDTH, HEIGHT],
    make: ({ width, height }) => rightTriangle(width, height),
  },
  { name: 'Diamond, 60°', asks: [SIDE], make: ({ side }) => diamond(side, 60) },
  { name: 'Diamond, 45°', asks: [SIDE], make: ({ side }) => diamond(side, 45) },
  {
    name: 'Kite',
    asks: [
      WIDTH,
      HEIGHT,
      { size: 'shoulder', label: 'Shoulder', hint: 'From the top down to where it is widest.' },
    ],
    make: ({ width, height, shoulder }) => kite(width, height, shoulder),
  },
  {
    name: 'Wedge of a circle',
    asks: [
      { size: 'radius', label: 'Radius' },
      { size: 'count', label: 'Wedges in the circle' },
      { size: 'inner', label: 'Inner radius', hint: '0 for a sharp tip.' },
    ],
    make: ({ radius, count, inner }) => circleWedge(radius, count, inner),
  },
];

/** Sizes of shapes that are about as wide as a block of this size. */
export const sizesFor = (width: number, height: number): ShapeSizes => ({
  side: width,
  width,
  height,
  shoulder: height / 3,
  radius: height,
  inner: 0,
  count: 8,
});
