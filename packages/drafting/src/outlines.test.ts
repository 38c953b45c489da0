import { area, isClockwise, LARGEST_SIZE, type Result } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import { must } from '../test/drawings.ts';
import { expectSound } from '../test/sound.ts';
import { outlineOf } from './checks.ts';
import {
  circleWedge,
  diamond,
  drawingFromOutline,
  equilateralTriangle,
  kite,
  rectangle,
  regularHexagon,
  regularOctagon,
  rightTriangle,
  square,
} from './outlines.ts';
import { sizeOf } from './size.ts';

const root3 = Math.sqrt(3);

/** Sides and areas from plane geometry. */
const shapes = [
  { name: 'square', make: () => square(6), area: 36, width: 6, height: 6, corners: 4 },
  { name: 'rectangle', make: () => rectangle(6, 9), area: 54, width: 6, height: 9, corners: 4 },
  {
    name: 'hexagon',
    make: () => regularHexagon(3),
    area: ((3 * root3) / 2) * 9,
    width: 6,
    height: 3 * root3,
    corners: 6,
  },
  {
    name: 'equilateral triangle',
    make: () => equilateralTriangle(6),
    area: (root3 / 4) * 36,
    width: 6,
    height: 3 * root3,
    corners: 3,
  },
  {
    name: 'octagon',
    make: () => regularOctagon(2),
    area: 2 * (1 + Math.SQRT2) * 4,
    width: 2 * (1 + Math.SQRT2),
    height: 2 * (1 + Math.SQRT2),
    corners: 8,
  },
  { name: 'kite', make: () => kite(5, 8, 3), area: 20, width: 5, height: 8, corners: 4 },
  {
    name: 'wedge of eight',
    make: () => circleWedge(6, 8),
    area: 18 * Math.sin(Math.PI / 4),
    width: 12 * Math.sin(Math.PI / 8),
    height: 6 * Math.cos(Math.PI / 8),
    corners: 3,
  },
  {
    name: 'blade of twenty',
    make: () => circleWedge(9, 20, 2),
    area: ((81 - 4) / 2) * Math.sin(Math.PI / 10),
    width: 18 * Math.sin(Math.PI / 20),
    height: 7 * Math.cos(Math.PI / 20),
    corners: 4,
  },
  { name: 'right triangle', make: () => rightTriangle(3, 4), area: 6, width: 3, height: 4, corners: 3 },
  {
    name: '60° diamond',
    make: () => diamond(4, 60),
    area: 16 * Math.sin(Math.PI / 3),
    width: 4,
    height: 4 * root3,
    corners: 4,
  },
  {
    name: '45° diamond',
    make: () => diamond(4, 45),
    area: 16 * Math.sin(Math.PI / 4),
    width: 8 * Math.sin(Math.PI / 8),
    height: 8 * Math.cos(Math.PI / 8),
    corners: 4,
  },
];

describe.each(shapes)('$name', (shape) => {
  it('has the area, size and corners of plane geometry, clockwise, from the origin', () => {
    const drawing = must(shape.make());
    expectSound(drawing);
    const outline = outlineOf(drawing);
    expect(outline).toHaveLength(shape.corners);
    expect(isClockwise(outline)).toBe(true);
    expect(area(outline)).toBeCloseTo(shape.area, 9);
    expect(sizeOf(outline).width).toBeCloseTo(shape.width, 9);
    expect(sizeOf(outline).height).toBeCloseTo(shape.height, 9);
    expect(Math.min(...outline.map(({ x }) => x))).toBeCloseTo(0, 12);
    expect(Math.min(...outline.map(({ y }) => y))).toBeCloseTo(0, 12);
  });
});

describe('sizes that no block has', () => {
  const makers: Readonly<Record<string, (size: number) => Result<unknown>>> = {
    square,
    width: (size) => rectangle(size, 6),
    height: (size) => rectangle(6, size),
    regularHexagon,
    equilateralTriangle,
    'right triangle': (size) => rightTriangle(size, size),
    'diamond 60': (size) => diamond(size, 60),
    'diamond 45': (size) => diamond(size, 45),
    regularOctagon,
    'width of a kite': (size) => kite(size, 6, 2),
    'height of a kite': (size) => kite(6, size, 2),
    'shoulder of a kite': (size) => kite(6, 6, size),
    'radius of a wedge': (size) => circleWedge(size, 8),
  };
  const bad = [0, -0, -3, NaN, Infinity, -Infinity, LARGEST_SIZE * 1.001, Number.MIN_VALUE];
  for (const [name, make] of Object.entries(makers)) {
    it.each(bad)(`${name} of %d is refused`, (size) => {
      expect(make(size)).toMatchObject({ ok: false, problem: { remedy: expect.stringMatching(/./) } });
    });
  }

  it('says which size is wrong', () => {
    expect(rectangle(6, 0)).toMatchObject({ problem: { what: 'The height is 0 in' } });
    expect(rectangle(-2, 6)).toMatchObject({ problem: { what: 'The width is −2 in' } });
    expect(square(NaN)).toMatchObject({ problem: { what: 'The side is not a number' } });
  });

  it('a kite has its shoulder between its ends, a wedge its inner radius within the circle', () => {
    expect(kite(4, 6, 6)).toMatchObject({ problem: { what: expect.stringMatching(/tip/) } });
    expect(circleWedge(6, 8, 6)).toMatchObject({ problem: { what: expect.stringMatching(/inner radius/) } });
    expect(circleWedge(6, 8, -1).ok).toBe(false);
  });

  it.each([0, 2, 2.5, 61, NaN])('a circle is not cut into %d wedges', (count) => {
    expect(circleWedge(6, count)).toMatchObject({
      problem: { remedy: expect.stringMatching(/whole number/) },
    });
  });

  it('the largest is accepted, and a shape that grows beyond it is not', () => {
    expect(square(LARGEST_SIZE).ok).toBe(true);
    expect(regularHexagon(LARGEST_SIZE / 2).ok).toBe(true);
    expect(regularHexagon(LARGEST_SIZE * 0.6)).toMatchObject({
      problem: { what: 'The width is 144 in' },
    });
  });
});

describe('a free outline', () => {
  const house = [
    { x: 0, y: 4 },
    { x: 4, y: 0 },
    { x: 8, y: 4 },
    { x: 8, y: 10 },
    { x: 0, y: 10 },
  ];

  it('is kept clockwise, whichever way it was drawn', () => {
    const one = must(drawingFromOutline(house));
    const other = must(drawingFromOutline([...house].reverse()));
    expect(isClockwise(outlineOf(one))).toBe(true);
    expect(isClockwise(outlineOf(other))).toBe(true);
    expect(one.points.p1).toMatchObject(house[0]!);
    expect(other.points.p1).toMatchObject(house[4]!);
  });

  it.each([
    ['no corner', []],
    ['two corners', house.slice(0, 2)],
    ['no area', [house[0]!, house[2]!, { x: 4, y: 4 }]],
    ['crossing itself', [house[0]!, house[1]!, house[3]!, house[2]!, house[4]!]],
    ['a corner twice', [...house, { x: 8, y: 4 }]],
    ['not a number', [...house.slice(0, 4), { x: NaN, y: 10 }]],
    ['corners nearer than ends are told apart', [...house, { x: 0, y: 9.99 }]],
  ])('with %s is refused', (_, outline) => {
    expect(drawingFromOutline(outline).ok).toBe(false);
  });
});
