import { describe, expect, test } from 'vitest';
import { regularPolygon, shape } from '../test/random-polygons.ts';
import { checkSimple } from './check-simple.ts';
import { distanceToSegment } from './line.ts';
import { allowanceOutline } from './offset.ts';
import type { Point, Polygon } from './point.ts';
import { area, boundingBox, edgesOf, isClockwise, reversed } from './polygon.ts';
import { MITRE_REACH } from './tolerance.ts';
import { rotation, transformPolygon } from './transform.ts';
import { distance } from './vector.ts';

const QUARTER = 0.25;
const ROOT2 = Math.SQRT2;
const ROOT3 = Math.sqrt(3);
// biome-ignore lint/suspicious/noApproximativeNumericConstant: the trade's rounded value is what is tested
const TRADE_ROOT2 = 1.414;

const longestEdge = (polygon: Polygon): number =>
  Math.max(...edgesOf(polygon).map(({ a, b }) => distance(a, b)));
const width = (polygon: Polygon): number => boundingBox(polygon).maxX - boundingBox(polygon).minX;
const height = (polygon: Polygon): number => boundingBox(polygon).maxY - boundingBox(polygon).minY;

/** The finished shapes of the trade, upright, in the size that is named for each. */
const square = (side: number): Polygon => shape([0, 0], [side, 0], [side, side], [0, side]);
const halfSquareTriangle = (leg: number): Polygon => shape([0, 0], [leg, leg], [0, leg]);
const quarterSquareTriangle = (longSide: number): Polygon =>
  shape([0, 0], [longSide / 2, -longSide / 2], [longSide, 0]);
const equilateralTriangle = (tall: number): Polygon =>
  shape([0, 0], [tall / ROOT3, -tall], [(2 * tall) / ROOT3, 0]);
/** Lying on one side; `tall` between the two level sides. */
const diamond = (degrees: number, tall: number): Polygon => {
  const side = tall / Math.sin((degrees * Math.PI) / 180);
  const lean = tall / Math.tan((degrees * Math.PI) / 180);
  return shape([0, 0], [side, 0], [side + lean, tall], [lean, tall]);
};
/** Between opposite sides. */
const acrossFlats = (sides: number, side: number) => (polygon: Polygon) => {
  // Turned by half a corner's share, two sides are upright.
  const upright = transformPolygon(rotation(180 / sides), polygon);
  expect(longestEdge(regularPolygon(sides, side))).toBeCloseTo(side, 12);
  return width(upright);
};

/** What a maker would cut: never less than needed, to the next eighth of an inch. */
const upToEighth = (value: number): number => Math.ceil(value * 8 - 1e-9) / 8;
const grown = (polygon: Polygon): Polygon => allowanceOutline(polygon, QUARTER).outline;

describe("the trade's quarter-inch constants", () => {
  // Exact: moving every edge outward by s lengthens it by s·(cot α/2 + cot β/2), α and β its end angles.
  test.each<[string, Polygon, (polygon: Polygon) => number, number]>([
    ['square, side', square(3), width, 0.5],
    ['half-square triangle, leg', halfSquareTriangle(3), width, (2 + ROOT2) / 4],
    ['quarter-square triangle, long side', quarterSquareTriangle(4), width, (1 + ROOT2) / 2],
    ['equilateral triangle, height', equilateralTriangle(3), height, 3 * QUARTER],
    ['equilateral triangle, side', equilateralTriangle(3), width, ROOT3 / 2],
    ['60° diamond, height', diamond(60, 3), height, 0.5],
    ['60° diamond, side', diamond(60, 3), longestEdge, 1 / ROOT3],
    ['45° diamond, height', diamond(45, 3), height, 0.5],
    ['45° diamond, side', diamond(45, 3), longestEdge, ROOT2 / 2],
    ['hexagon, across flats', regularPolygon(6, 2), acrossFlats(6, 2), 0.5],
    ['hexagon, side', regularPolygon(6, 2), longestEdge, 1 / (2 * ROOT3)],
    ['octagon, across flats', regularPolygon(8, 2), acrossFlats(8, 2), 0.5],
    ['octagon, side', regularPolygon(8, 2), longestEdge, (ROOT2 - 1) / 2],
  ])('%s: grows by the exact constant', (_, polygon, measure, constant) => {
    expect(measure(grown(polygon)) - measure(polygon)).toBeCloseTo(constant, 12);
  });

  test('decimals of the constants as they are quoted (exact)', () => {
    const exact = [
      (2 + ROOT2) / 4,
      (1 + ROOT2) / 2,
      ROOT3 / 2,
      1 / ROOT3,
      ROOT2 / 2,
      1 / (2 * ROOT3),
      (ROOT2 - 1) / 2,
    ];
    expect(exact.map((value) => value.toFixed(6)).join(' ')).toBe(
      '0.853553 1.207107 0.866025 0.577350 0.707107 0.288675 0.207107',
    );
  });

  test.each<[string, Polygon, (polygon: Polygon) => number, number, string]>([
    ['square 3', square(3), width, 3.5, 'K. Combs, Rotary cutting math (karencombs.com, ID 31)'],
    [
      'half-square triangle 2',
      halfSquareTriangle(2),
      width,
      2.875,
      'K. Combs, same; North Hampshire Quilters, hblk402b',
    ],
    [
      'half-square triangle 3',
      halfSquareTriangle(3),
      width,
      3.875,
      'K. Combs, same; North Hampshire Quilters, hblk402b',
    ],
    ['quarter-square triangle 4', quarterSquareTriangle(4), width, 5.25, 'K. Combs, same'],
    ['goose of 4 × 2', quarterSquareTriangle(4), width, 5.25, "Beverly's Quilting Page, ffg"],
    ['sky of 4 × 2', halfSquareTriangle(2), width, 2.875, "Beverly's Quilting Page, ffg"],
    ['goose of 8 × 4', quarterSquareTriangle(8), width, 9.25, "Beverly's Quilting Page, ffg"],
    ['sky of 8 × 4', halfSquareTriangle(4), width, 4.875, "Beverly's Quilting Page, ffg"],
    ['goose of 3 × 1½', quarterSquareTriangle(3), width, 4.25, "Beverly's Quilting Page, ffg"],
    ['sky of 3 × 1½', halfSquareTriangle(1.5), width, 2.375, "Beverly's Quilting Page, ffg"],
    [
      'equilateral triangle 3, strip',
      equilateralTriangle(3),
      height,
      3.75,
      'Chris and Barbara Quilts, Rotary cutting part 6 (2015)',
    ],
    [
      '60° diamond 3, strip',
      diamond(60, 3),
      height,
      3.5,
      'Chris and Barbara Quilts, Rotary cutting part 6 (2015)',
    ],
    [
      'square in a square of 12, centre',
      square(12 / ROOT2),
      width,
      9,
      'Lesson 5: a square in a square (leaflet)',
    ],
    [
      'square in a square of 12, corners',
      halfSquareTriangle(6),
      width,
      6.875,
      'Lesson 5: a square in a square (leaflet)',
    ],
  ])('%s: cut as published', (_, polygon, measure, published, source) => {
    expect(source).not.toBe('');
    expect(upToEighth(measure(grown(polygon)))).toBe(published);
  });

  // Setting triangles round blocks on point. The chart at lukas.is-a-geek.org/tani (6 in row also Moonlight Quilters
  // guild, on-point settings; 12 in corner also Pine Meadows Designs hints) follows the trade's formulas, B × 1.414 +
  // 1 1/4 and B ÷ 1.414 + 7/8, rounded up to an eighth. For the side triangle of 10 that is an eighth more than the
  // exact size rounded up (15 3/8).
  test.each([
    { block: 6, side: 9.6924, sideCut: 9.75, corner: 5.0962, cornerCut: 5.125 },
    { block: 8, side: 12.5208, sideCut: 12.625, corner: 6.5104, cornerCut: 6.625 },
    { block: 9, side: 13.935, sideCut: 14, corner: 7.2175, cornerCut: 7.25 },
    { block: 10, side: 15.3492, sideCut: 15.5, corner: 7.9246, cornerCut: 8 },
    { block: 12, side: 18.1777, sideCut: 18.25, corner: 9.3388, cornerCut: 9.375 },
  ])('setting triangles of a $block in block', ({ block, side, sideCut, corner, cornerCut }) => {
    const sideTriangle = width(grown(quarterSquareTriangle(block * ROOT2)));
    const cornerTriangle = width(grown(halfSquareTriangle(block / ROOT2)));
    expect(sideTriangle).toBeCloseTo(side, 4);
    expect(cornerTriangle).toBeCloseTo(corner, 4);
    expect(upToEighth(block * TRADE_ROOT2 + 1.25)).toBe(sideCut);
    expect(upToEighth(block / TRADE_ROOT2 + 0.875)).toBe(cornerCut);
    // The rounded constants add (1 1/4 − 1.2071) or (7/8 − 0.8536), the eighth adds less than 1/8.
    for (const [published, exact] of [
      [sideCut, sideTriangle],
      [cornerCut, cornerTriangle],
    ] as const) {
      expect(published).toBeGreaterThanOrEqual(exact);
      expect(published - exact).toBeLessThan(0.125 + 0.043);
    }
  });

  test('the nearest eighth would be too small; 1.414 for √2 still covers (exact)', () => {
    const cornerOf8 = width(grown(halfSquareTriangle(8 / ROOT2)));
    expect(Math.round(cornerOf8 * 8) / 8).toBeLessThan(cornerOf8);
    const sideOf16 = width(grown(quarterSquareTriangle(16 * ROOT2)));
    expect(sideOf16).toBeCloseTo(23.8345, 4);
    expect(16 * TRADE_ROOT2 + 1.25).toBeGreaterThan(sideOf16);
  });
});

describe('sharp corners', () => {
  /** A spike of the given angle, 6 in long, pointing right. */
  const spike = (degrees: number): Polygon => {
    const half = 6 * Math.tan((degrees * Math.PI) / 360);
    return shape([0, -half], [6, 0], [0, half]);
  };
  const tip = { x: 6, y: 0 };
  const limit = (2 * Math.asin(1 / MITRE_REACH) * 180) / Math.PI;

  test('the limit is 38.94°, so that 45° keeps its tip', () => {
    expect(limit).toBeCloseTo(38.94, 2);
  });

  test.each([1e-3, 0.1, 1, 2, 5, 10, 15, 22.5, 30, 36, 38.9])(
    '%d° is cut square across at 3 allowances',
    (degrees) => {
      const { outline, cuts } = allowanceOutline(spike(degrees), QUARTER);
      const across = cuts.filter(({ a }) => a.x > 5);
      expect(across).toHaveLength(1);
      const { a, b } = across[0]!;
      expect(a.x).toBeCloseTo(6 + MITRE_REACH * QUARTER, 9);
      expect(b.x).toBeCloseTo(6 + MITRE_REACH * QUARTER, 9);
      // Half as long as the strips are apart there: (s - d·sin θ/2) ÷ cos θ/2.
      const half = (degrees * Math.PI) / 360;
      const expected = (QUARTER - MITRE_REACH * QUARTER * Math.sin(half)) / Math.cos(half);
      expect(b.y).toBeCloseTo(expected, 9);
      expect(a.y).toBeCloseTo(-expected, 9);
      expect(checkSimple(outline).ok).toBe(true);
      expectNeverNearer(spike(degrees), outline, QUARTER);
    },
  );

  test.each([39, 45, 60, 90, 120, 179])('%d° keeps its tip', (degrees) => {
    const { outline } = allowanceOutline(spike(degrees), QUARTER);
    const reach = QUARTER / Math.sin((degrees * Math.PI) / 360);
    expect(Math.min(...outline.map((p) => distance(p, { x: 6 + reach, y: 0 })))).toBeLessThan(1e-9);
    expectNeverNearer(spike(degrees), outline, QUARTER);
  });

  test('no jump where the rule sets in', () => {
    const farthest = (polygon: Polygon) =>
      Math.max(...polygon.map((p) => distance(p, tip)).filter((d) => d < 3));
    const below = allowanceOutline(spike(limit - 1e-7), QUARTER);
    const above = allowanceOutline(spike(limit + 1e-7), QUARTER);
    expect(below.cuts).toHaveLength(1);
    expect(above.cuts).toHaveLength(0);
    expect(Math.abs(farthest(below.outline) - farthest(above.outline))).toBeLessThan(1e-6);
  });

  test('a spike on a concave shape is cut the same way', () => {
    // A spike of 2·atan(0.1/4) = 2.9° that rises from a broad foot.
    const polygon = shape([0, 0], [1, 0], [1.1, -4], [1.2, 0], [3, 0], [3, 2], [0, 2]);
    const { outline, cuts } = allowanceOutline(polygon, QUARTER);
    expect(cuts).toHaveLength(1);
    expect(cuts[0]!.a.y).toBeCloseTo(-4 - MITRE_REACH * QUARTER, 7);
    expect(cuts[0]!.b.y).toBeCloseTo(-4 - MITRE_REACH * QUARTER, 7);
    expectNeverNearer(polygon, outline, QUARTER);
  });
});

/** Points along the outline, against the sew line: plain distances, nothing shared with the offset. */
function expectNeverNearer(sewLine: Polygon, outline: Polygon, allowance: number) {
  for (const { a, b } of edgesOf(outline)) {
    for (let k = 0; k < 50; k++) {
      const p = { x: a.x + ((b.x - a.x) * k) / 50, y: a.y + ((b.y - a.y) * k) / 50 };
      const nearest = Math.min(...edgesOf(sewLine).map((edge) => distanceToSegment(p, edge.a, edge.b)));
      expect(nearest).toBeGreaterThan(allowance - 1e-7);
    }
  }
}

const pairs = (polygon: readonly Point[]) => polygon.map(({ x, y }) => [x, y]);

describe('concave shapes', () => {
  test('an L, by hand', () => {
    const ell = shape([0, 0], [3, 0], [3, 1], [1, 1], [1, 3], [0, 3]);
    expect(pairs(grown(ell))).toEqual([
      [-0.25, -0.25],
      [3.25, -0.25],
      [3.25, 1.25],
      [1.25, 1.25],
      [1.25, 3.25],
      [-0.25, 3.25],
    ]);
  });

  test('a slanted notch keeps its inner corner exactly on the bisector', () => {
    // Inner corner (3, 1) of 90°, opening to the right: edges move along its diagonals by 0.25·√2.
    const arrow = shape([0, 0], [4, 0], [3, 1], [4, 2], [0, 2]);
    const inner = grown(arrow).filter((p) => Math.abs(p.y - 1) < 0.1);
    expect(inner).toHaveLength(1);
    expect(distance(inner[0]!, { x: 3 + QUARTER * ROOT2, y: 1 })).toBeLessThan(1e-12);
  });

  /** A slot of the given width, 2 in deep, in the lower side of a 3 in square. */
  const slotted = (slot: number): Polygon =>
    shape(
      [0, 0],
      [3, 0],
      [3, 3],
      [1.5 + slot / 2, 3],
      [1.5 + slot / 2, 1],
      [1.5 - slot / 2, 1],
      [1.5 - slot / 2, 3],
      [0, 3],
    );

  test('a slot wider than two allowances stays open, one as wide or narrower closes, at every angle', () => {
    for (let degrees = 0; degrees < 360; degrees += 7.5) {
      const turned = (slot: number) => transformPolygon(rotation(degrees), slotted(slot));
      const open = allowanceOutline(turned(0.51), QUARTER);
      expect(open.outline).toHaveLength(8);
      // The slot is left 0.01 wide and as deep as before: its end and its mouth both move by 0.25.
      expect(area(open.outline)).toBeCloseTo(3.5 * 3.5 - 0.01 * 2, 6);
      for (const slot of [0.5, 0.5 - 1e-9, 0.3, 0.01]) {
        const closed = allowanceOutline(turned(slot), QUARTER);
        expect(closed.outline).toHaveLength(4);
        expect(closed.pockets).toHaveLength(0);
        expect(area(closed.outline)).toBeCloseTo(3.5 * 3.5, 6);
      }
    }
  });

  test('a slit left narrower than two coordinates can be told apart is closed', () => {
    for (let degrees = 0; degrees < 360; degrees += 7.5) {
      for (const slit of [1e-9, 1e-8, 1e-7, 9e-7]) {
        const polygon = transformPolygon(rotation(degrees), slotted(0.5 + slit));
        const { outline } = allowanceOutline(polygon, QUARTER);
        expect(checkSimple(outline).ok).toBe(true);
        expect(outline).toHaveLength(4);
        expect(area(outline)).toBeCloseTo(3.5 * 3.5, 5);
      }
    }
  });

  test('a hollow behind a narrow mouth is filled, and listed', () => {
    const keyhole = shape(
      [0, 0],
      [6, 0],
      [6, 6],
      [3.2, 6],
      [3.2, 4],
      [5, 4],
      [5, 1],
      [1, 1],
      [1, 4],
      [3, 4],
      [3, 6],
      [0, 6],
    );
    const { outline, pockets } = allowanceOutline(keyhole, QUARTER);
    expect(pairs(outline)).toEqual(pairs(shape([-0.25, -0.25], [6.25, -0.25], [6.25, 6.25], [-0.25, 6.25])));
    expect(pockets).toHaveLength(1);
    expect(isClockwise(pockets[0]!)).toBe(true);
    // The hollow of 4 × 3, a quarter inch less all round.
    expect(area(pockets[0]!)).toBeCloseTo(3.5 * 2.5, 6);
  });
});

describe('input', () => {
  test('no allowance gives back the polygon', () => {
    const polygon = square(3);
    expect(allowanceOutline(polygon, 0)).toEqual({ outline: polygon, cuts: [], pockets: [] });
    expect(allowanceOutline(polygon, 0).outline).toBe(polygon);
  });

  test('an allowance that is none is a bug of the caller', () => {
    for (const bad of [-0.25, Number.NaN, Infinity])
      expect(() => allowanceOutline(square(3), bad)).toThrow(RangeError);
  });

  test('either way round gives the same outline, clockwise', () => {
    const house = shape([0, 2], [2, 0], [4, 2], [4, 5], [0, 5]);
    expect(grown(reversed(house))).toEqual(grown(house));
    expect(isClockwise(grown(reversed(house)))).toBe(true);
  });

  test('corners on straight runs leave no trace', () => {
    const withMiddles = edgesOf(square(3)).flatMap(({ a, b }) => [
      a,
      { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 },
    ]);
    expect(grown(withMiddles)).toEqual(grown(square(3)));
  });
});
