import type { Drawing } from '@seamwright/arrangement';
import { bench, describe } from 'vitest';
import {
  addSplit,
  addSymmetric,
  moveLine,
  movePoint,
  movePointsSymmetric,
  snap,
  snapScene,
  square,
} from '../src/index.ts';

/**
 * How long a pointer move takes on a block of 500 patches: 22 × 23 rectangles of full-length lines, and the same
 * number of patches from short lines, as files have them. Run: `npx vitest bench packages/drafting --run`.
 */
function block(lines: readonly (readonly [number, number, number, number])[]): Drawing {
  const start = square(60);
  if (!start.ok) throw new Error(start.problem.what);
  return lines.reduce((drawing, [x1, y1, x2, y2]) => {
    const result = addSplit(drawing, { at: { x: x1, y: y1 } }, { at: { x: x2, y: y2 } });
    if (!result.ok) throw new Error(result.problem.what);
    return result.value;
  }, start.value);
}

const fractions = (count: number) => Array.from({ length: count }, (_, i) => (60 * (i + 1)) / (count + 1));
const long = block([
  ...fractions(21).map((x) => [x, 0, x, 60] as const),
  ...fractions(22).map((y) => [0, y, 60, y] as const),
]);
const short = block(
  fractions(21).flatMap((x) => [0, ...fractions(22)].map((y) => [x, y, x + 0.001, y + 60 / 23] as const)),
);

for (const [name, drawing] of [
  ['44 long lines', long],
  [`${short.splits.length} short lines`, short],
] as const) {
  const point = drawing.splits[0]!.from;
  describe(name, () => {
    bench('scene', () => void snapScene({ ...drawing }));
    bench('snap', () => void snap({ x: 31, y: 29 }, snapScene(drawing), { radius: 0.5, grid: 0.25 }));
    const guided = { radius: 0.5, grid: 0.25, from: { x: 3, y: 7 }, angleStep: 15 };
    bench('snap, with a line under way', () => void snap({ x: 31, y: 29 }, snapScene(drawing), guided));
    const symmetry = { turns: 4, mirrors: [90] } as const;
    const [start, end] = [{ at: { x: 1, y: 2 } }, { at: { x: 9, y: 7 } }];
    bench('draw a line and its seven images', () => void addSymmetric(drawing, start, end, symmetry));
    const moves = new Map([[point, { at: { x: 1, y: 2 } }]]);
    bench('move a point and its images', () => void movePointsSymmetric(drawing, moves, symmetry));
    bench('move a line', () => void moveLine(drawing, drawing.splits[0]!.id, 0.25));
    bench('move a point', () => void movePoint(drawing, point, { at: { x: 1, y: 2 } }));
  });
}
