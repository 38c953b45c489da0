import { area, type Box, type Polygon } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MAKERS, randomFrom, shapeOf, shapes } from '../../bench/shapes.ts';
import { distanceBetween } from '../../test/apart.ts';
import { PAPERS } from '../sheet/paper.ts';
import { type Regions, regionsOf } from '../sheet/sheet-frame.ts';
import { grownArea, grownRoom, leastSheets, once } from './least-sheets.ts';
import { packSheets } from './pack.ts';

const GAP = 18;
const letter = regionsOf(PAPERS.letter);

const least = (whole: readonly Polygon<'page'>[], free: Regions = letter, cutUp: typeof whole = []) =>
  leastSheets({ whole: whole.map(once), cutUp: cutUp.map(once) }, free, GAP / 2);

const rectangle = (x: number, y: number, width: number, height: number): Polygon<'page'> => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];

/**
 * A sheet that is known to be possible: its room cut into strips and these into pieces, some aslant, with nothing between
 * them but the gap. Hardly any other sheet holds more.
 */
function fullSheet({ wide, tall }: Regions, random: () => number): readonly Polygon<'page'>[] {
  const below = { ...tall, minY: wide.maxY + GAP };
  return [wide, below].flatMap((box) => cut(box, random));
}

function cut(box: Box<'page'>, random: () => number): readonly Polygon<'page'>[] {
  const { minX, minY, maxX, maxY } = box;
  const [width, height] = [maxX - minX, maxY - minY];
  if (Math.max(width, height) < 120 || (Math.max(width, height) < 400 && random() < 0.3))
    return [rectangle(minX, minY, width, height)];
  const share = 0.3 + 0.4 * random();
  if (random() < 0.3) {
    // Aslant from the top edge to the bottom one: the halves are a gap apart across the slant.
    const [above, under] = [minX + share * width, minX + (0.3 + 0.4 * random()) * width];
    const half = ((GAP / 2) * Math.hypot(height, under - above)) / height;
    if (Math.min(above, under) - half > minX && Math.max(above, under) + half < maxX)
      return [
        [
          { x: minX, y: minY },
          { x: above - half, y: minY },
          { x: under - half, y: maxY },
          { x: minX, y: maxY },
        ],
        [
          { x: above + half, y: minY },
          { x: maxX, y: minY },
          { x: maxX, y: maxY },
          { x: under + half, y: maxY },
        ],
      ];
  }
  if (width > height) {
    const x = minX + share * width;
    return [
      { ...box, maxX: x - GAP / 2 },
      { ...box, minX: x + GAP / 2 },
    ].flatMap((half) => cut(half, random));
  }
  const y = minY + share * height;
  return [
    { ...box, maxY: y - GAP / 2 },
    { ...box, minY: y + GAP / 2 },
  ].flatMap((half) => cut(half, random));
}

describe('the bound', () => {
  test('is never above what is known to be enough: full sheets, cut up with nothing but the gap between', () => {
    let met = 0;
    let sheets = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.nat(),
        fc.constantFrom(PAPERS.letter, PAPERS.a4),
        (count, seed, paper) => {
          const free = regionsOf(paper);
          const random = randomFrom(seed);
          const full = Array.from({ length: count }, () => fullSheet(free, random));
          for (const sheet of full)
            sheet.forEach((p, i) => {
              for (const q of sheet.slice(i + 1))
                expect(distanceBetween(p, q)).toBeGreaterThanOrEqual(GAP - 1e-6);
            });
          const { atLeast } = least(full.flat(), free);
          expect(atLeast).toBeLessThanOrEqual(count);
          sheets += count;
          met += atLeast;
        },
      ),
      { numRuns: 200, seed: 1 },
    );
    // And it is no empty promise: such sheets are full, so it is near to what they are.
    expect(met / sheets).toBeGreaterThan(0.9);
  });

  test('is never above the fewest sheets that trying everything finds', () => {
    const side = fc.integer({ min: 4, max: 16 }).map((n) => n * 36);
    let above1 = 0;
    fc.assert(
      fc.property(fc.array(fc.tuple(side, side), { minLength: 1, maxLength: 4 }), (sides) => {
        const whole = sides.map(([w, h]) => rectangle(0, 0, w, h));
        const fewest = fewestByTrying(sides);
        if (fewest === null) return;
        const { atLeast } = least(whole);
        expect(atLeast).toBeLessThanOrEqual(fewest);
        if (atLeast > 1) above1++;
      }),
      { numRuns: 150, seed: 2 },
    );
    expect(above1).toBeGreaterThan(20);
  });

  test('is never above what the packer needs', () => {
    fc.assert(
      fc.property(fc.nat(), fc.integer({ min: 1, max: 16 }), (seed, count) => {
        const list = shapes(Object.values(MAKERS), count, [1.5, 7.5], seed, GAP);
        const { atLeast } = least(list.map(({ outline }) => outline));
        expect(atLeast).toBeLessThanOrEqual(packSheets(list, { regions: letter, gap: GAP, atLeast }).length);
      }),
      { numRuns: 60, seed: 3 },
    );
  });

  test('knows that large ones do not share a sheet, where there is area enough', () => {
    // On Letter the room is 700 points high at most: two squares of 345, 12.7 apart at least, are 703.
    const squares = (side: number) => Array.from({ length: 7 }, () => rectangle(0, 0, side, side));
    expect(least(squares(345))).toEqual({ atLeast: 7, byArea: expect.closeTo(2.6, 0) });
    // Of 340 two stand one above the other, beside the check squares.
    const packed = packSheets(
      squares(340).map((outline, i) => shapeOf(outline, i, GAP)),
      { regions: letter, gap: GAP, atLeast: 1 },
    );
    expect(packed).toHaveLength(4);
    expect(least(squares(340)).atLeast).toBeLessThanOrEqual(4);
  });

  test('of one that is wanted so many times is that of so many alike', () => {
    let byMoreThanArea = 0;
    fc.assert(
      fc.property(
        fc.nat(),
        fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 8 }),
        (seed, counts) => {
          const outlines = shapes([MAKERS.squares, MAKERS.triangles], counts.length, [3, 7.5], seed, GAP).map(
            (one) => one.outline,
          );
          const counted = outlines.map((outline, i) => ({ outline, count: counts[i]! }));
          const copies = counted.flatMap(({ outline, count }) =>
            Array.from({ length: count }, () => outline),
          );
          const { atLeast, byArea } = leastSheets({ whole: counted, cutUp: [] }, letter, GAP / 2);
          expect({ atLeast, byArea: expect.closeTo(byArea, 9) }).toEqual(least(copies));
          if (atLeast > Math.ceil(byArea)) byMoreThanArea++;
        },
      ),
      { numRuns: 100, seed: 4 },
    );
    expect(byMoreThanArea).toBeGreaterThan(20);
  });

  test('is one for one that fills the room, and two for one that is cut up', () => {
    const { wide } = letter;
    expect(least([rectangle(0, 0, wide.maxX - wide.minX, wide.maxY - wide.minY)]).atLeast).toBe(1);
    expect(least([], letter, [rectangle(0, 0, 600, 600)]).atLeast).toBe(2);
    expect(least([], letter, [rectangle(0, 0, 2000, 2000)]).atLeast).toBeGreaterThan(9);
  });
});

describe('areas with a share of the gap', () => {
  test('of a square and a triangle, as the plane geometry of parallel curves has it (exact)', () => {
    expect(grownArea(rectangle(5, 5, 100, 100), 9)).toBeCloseTo(10_000 + 400 * 9 + Math.PI * 81, 6);
    const triangle: Polygon<'page'> = [
      { x: 0, y: 0 },
      { x: 30, y: 0 },
      { x: 0, y: 40 },
    ];
    expect(grownArea(triangle, 10)).toBeCloseTo(600 + 120 * 10 + Math.PI * 100, 6);
  });

  test('of hollow shapes are not more than points near them, counted', () => {
    const hook: Polygon<'page'> = [
      { x: 0, y: 0 },
      { x: 60, y: 0 },
      { x: 60, y: 20 },
      { x: 20, y: 20 },
      { x: 20, y: 60 },
      { x: 0, y: 60 },
    ];
    let near = 0;
    for (let x = -20; x < 80; x++)
      for (let y = -20; y < 80; y++) {
        const dot = rectangle(x + 0.5, y + 0.5, 0.001, 0.001);
        if (distanceBetween(dot, hook) <= 9) near++;
      }
    expect(grownArea(hook, 9)).toBeLessThan(near);
    expect(grownArea(hook, 9)).toBeGreaterThan(area(hook));
  });

  test('of the room is not less than points near it, counted', () => {
    const away = ({ minX, minY, maxX, maxY }: Box<'page'>, x: number, y: number) =>
      Math.hypot(Math.max(minX - x, 0, x - maxX), Math.max(minY - y, 0, y - maxY));
    let near = 0;
    for (let x = 0.5; x < 612; x++)
      for (let y = 0.5; y < 792; y++)
        if (Math.min(away(letter.wide, x, y), away(letter.tall, x, y)) <= 9) near++;
    // Counting by whole points is off by a few of them along 2500 points of boundary.
    expect(grownRoom(letter, 9)).toBeGreaterThan(near * 0.9995);
    expect(grownRoom(letter, 9)).toBeLessThan(near * 1.001);
  });
});

type Sides = readonly [number, number];

/** The fewest sheets on which the rectangles stand a gap apart across or down, each in both turns; null where one does not fit. */
function fewestByTrying(sides: readonly Sides[]): number | null {
  const fits = (chosen: readonly Sides[]) => standTogether(chosen, []);
  if (sides.some((one) => !fits([one]))) return null;
  // Every way to deal them out to sheets.
  const deal = (rest: readonly Sides[], sheets: readonly (readonly Sides[])[]): number => {
    const [next, ...others] = rest;
    if (next === undefined) return sheets.length;
    const onto = sheets.flatMap((sheet, i) =>
      fits([...sheet, next]) ? [deal(others, sheets.with(i, [...sheet, next]))] : [],
    );
    return Math.min(...onto, deal(others, [...sheets, [next]]));
  };
  return deal(sides, []);
}

/**
 * Whether they stand together: every one can be moved left and up until it touches an edge or is a gap from another, so
 * only edges, and places a gap beyond those that stand, need to be tried.
 */
function standTogether(rest: readonly Sides[], standing: readonly Box<'page'>[]): boolean {
  if (rest.length === 0) return true;
  const xs = [letter.wide.minX, letter.tall.minX, ...standing.map(({ maxX }) => maxX + GAP)];
  const ys = [letter.wide.minY, ...standing.map(({ maxY }) => maxY + GAP)];
  return rest.some(([w, h], i) =>
    [
      [w, h],
      [h, w],
    ].some(([width, height]) =>
      xs.some((minX) =>
        ys.some((minY) => {
          const box = { minX, minY, maxX: minX + width!, maxY: minY + height! };
          const inside = [letter.wide, letter.tall].some(
            (room) => box.minX >= room.minX && box.maxX <= room.maxX && box.maxY <= room.maxY,
          );
          const apart = standing.every(
            (other) =>
              box.minX >= other.maxX + GAP ||
              other.minX >= box.maxX + GAP ||
              box.minY >= other.maxY + GAP ||
              other.minY >= box.maxY + GAP,
          );
          return inside && apart && standTogether(rest.toSpliced(i, 1), [...standing, box]);
        }),
      ),
    ),
  );
}
