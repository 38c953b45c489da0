import type { Drawing } from '@seamwright/arrangement';
import { timed } from '../../../scripts/bench/clock.ts';
import { ms, Table } from '../../../scripts/bench/table.ts';
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
 * number of patches from short lines, as files have them. Run: `npm run bench -- snap`.
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

/** What a pointer does, and what it may set off. */
function moves(drawing: Drawing): Record<string, () => unknown> {
  const guided = { radius: 0.5, grid: 0.25, from: { x: 3, y: 7 }, angleStep: 15 };
  const symmetry = { turns: 4, mirrors: [90] } as const;
  const [start, end] = [{ at: { x: 1, y: 2 } }, { at: { x: 9, y: 7 } }];
  const [{ id, from: point }] = drawing.splits as [Drawing['splits'][number]];
  const moved = new Map([[point, { at: { x: 1, y: 2 } }]]);
  return {
    // A copy each time: what is snapped to is kept with its drawing.
    'what is snapped to': () => snapScene({ ...drawing }),
    snap: () => snap({ x: 31, y: 29 }, snapScene(drawing), { radius: 0.5, grid: 0.25 }),
    'snap, with a line under way': () => snap({ x: 31, y: 29 }, snapScene(drawing), guided),
    'draw a line and its seven images': () => addSymmetric(drawing, start, end, symmetry),
    'move a point and its images': () => movePointsSymmetric(drawing, moved, symmetry),
    'move a line': () => moveLine(drawing, id, 0.25),
    'move a point': () => movePoint(drawing, point, { at: { x: 1, y: 2 } }),
  };
}

const onLong = moves(long);
const onShort = moves(short);
const table = new Table(
  'A pointer move on a block of 500 patches',
  ['what', `${long.splits.length} long lines, ms`, `${short.splits.length} short lines, ms`],
  Math.max(...Object.keys(onLong).map((what) => what.length)),
);
for (const [what, run] of Object.entries(onLong))
  table.row(what, ms(timed(run).ms), ms(timed(onShort[what]!).ms));
