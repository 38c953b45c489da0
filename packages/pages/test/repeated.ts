import fc from 'fast-check';
import { type Block, block, type Line, rectangle } from './blocks.ts';

/** How a square unit is laid: turned clockwise by so many quarters, and mirrored left to right before that or not. */
export interface Laying {
  readonly quarters: number;
  readonly mirrored: boolean;
}

/** The lines of a square unit as they lie in the cell whose top left corner is at (x, y). */
const laidIn = (
  unit: readonly Line[],
  side: number,
  x: number,
  y: number,
  { quarters, mirrored }: Laying,
) => {
  const half = side / 2;
  const place = (px: number, py: number): [number, number] => {
    let [u, v] = [mirrored ? half - px : px - half, py - half];
    for (let k = 0; k < quarters; k++) [u, v] = [-v, u];
    return [x + half + u, y + half + v];
  };
  return unit.map(([x1, y1, x2, y2]): Line => [...place(x1, y1), ...place(x2, y2)]);
};

/** Square units side by side, row by row; no section has more than `patches` patches. */
function repeated(
  unit: readonly Line[],
  side: number,
  rows: readonly (readonly Laying[])[],
  patches: number,
): Block {
  const [width, height] = [side * rows[0]!.length, side * rows.length];
  const lines = rows.flatMap((row, j) =>
    row.flatMap((laying, i) => laidIn(unit, side, i * side, j * side, laying)),
  );
  const across = rows.slice(1).map((_, j): Line => [0, (j + 1) * side, width, (j + 1) * side]);
  const down = rows[0]!.slice(1).map((_, i): Line => [(i + 1) * side, 0, (i + 1) * side, height]);
  return block(rectangle(width, height), [...across, ...down, ...lines], { largestSection: patches });
}

const as = (quarters: number, mirrored = false): Laying => ({ quarters, mirrored });

/** Four patches of three sizes, nothing like their own mirror image. */
const SLIPWAY: readonly Line[] = [
  [1, 0, 1, 3],
  [1, 2, 3, 2],
  [2, 0, 2, 2],
];

/** A four-fold block: one unit, turned a quarter from cell to cell. */
export const whirl = (): Block =>
  repeated(
    SLIPWAY,
    3,
    [
      [as(0), as(1)],
      [as(3), as(2)],
    ],
    4,
  );

/** The same unit and its mirror image, so that left and right, top and bottom are alike. */
export const moorings = (): Block =>
  repeated(
    SLIPWAY,
    3,
    [
      [as(0), as(0, true)],
      [as(2, true), as(2)],
    ],
    4,
  );

/**
 * A row of units, all the same way round, which none of them is when it is turned: the first has no neighbour to the left,
 * the last none to the right.
 */
export const pilings = (count: number, side = 2): Block =>
  repeated([[0, side / 4, side, side / 2]], side, [Array.from({ length: count }, () => as(0))], 2);

/** A star of seventeen patches in three rows; the upper one, turned by half, is the lower one. */
export const star = (side: number): Block => {
  const q = side / 4;
  const points: readonly Line[] = [
    [1, 1, 2, 0],
    [2, 0, 3, 1],
    [3, 1, 4, 2],
    [4, 2, 3, 3],
    [3, 3, 2, 4],
    [2, 4, 1, 3],
    [1, 3, 0, 2],
    [0, 2, 1, 1],
  ];
  const grid: readonly Line[] = [
    [1, 0, 1, 4],
    [3, 0, 3, 4],
    [0, 1, 4, 1],
    [0, 3, 4, 3],
  ];
  const lines = [...grid, ...points].map(([x1, y1, x2, y2]): Line => [q * x1, q * y1, q * x2, q * y2]);
  return block(rectangle(side, side), lines);
};

const halves = fc.nat({ max: 8 }).map((n) => n / 4);

/** A point on the rim of the square from (0, 0) to (2, 2). */
const onRim = fc
  .tuple(fc.nat({ max: 3 }), halves)
  .map(([edge, at]) => [[at, 0] as const, [2, at] as const, [at, 2] as const, [0, at] as const][edge]!);

/**
 * Units of up to three cuts from rim to rim, two by two or in a row of three, each turned and mirrored at random, that
 * can be sewn and in which some section is a copy of another.
 */
export const randomRepeated: fc.Arbitrary<Block> = fc
  .record({
    cuts: fc.array(fc.tuple(onRim, onRim), { minLength: 1, maxLength: 3 }),
    layings: fc.array(fc.record({ quarters: fc.nat({ max: 3 }), mirrored: fc.boolean() }), {
      minLength: 4,
      maxLength: 4,
    }),
    inRow: fc.boolean(),
    side: fc.constantFrom(1, 2, 4),
    patches: fc.integer({ min: 2, max: 6 }),
  })
  .map(({ cuts, layings, inRow, side, patches }) => {
    const unit = cuts.map(
      ([from, to]): Line => [...from, ...to].map((c) => (c * side) / 2) as unknown as Line,
    );
    const rows = inRow ? [layings.slice(0, 3)] : [layings.slice(0, 2), layings.slice(2)];
    return repeated(unit, side, rows, patches);
  })
  .filter(({ plan }) => plan.verdict === 'several foundations')
  .filter(({ plan }) => plan.sections.some(({ copyOf }) => copyOf !== undefined));
