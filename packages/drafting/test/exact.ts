import type { Drawing } from '@seamwright/arrangement';
import type { Point } from '@seamwright/geometry';
import { addSplit, drawnLines, placeExactly, snapScene } from '../src/index.ts';
import { must } from './drawings.ts';
import { frozen } from './sound.ts';

type Ends = readonly [x1: number, y1: number, x2: number, y2: number];

/** Draws lines between exact places, one after the other. */
export const withLines = (start: Drawing, ...lines: readonly Ends[]): Drawing =>
  frozen(
    lines.reduce((drawing, [x1, y1, x2, y2]) => {
      const scene = snapScene(drawing);
      return must(
        addSplit(drawing, placeExactly({ x: x1, y: y1 }, scene), placeExactly({ x: x2, y: y2 }, scene)),
      );
    }, start),
  );

/** The id of the point at a place; `none` where there is none. */
export const pointAt = (drawing: Drawing, x: number, y: number): string =>
  Object.values(drawing.points).find((p) => Math.hypot(p.x - x, p.y - y) < 1e-9)?.id ?? 'none';

/** The id of the line between two places, either way round; `none` where there is none. */
export function lineBetween(drawing: Drawing, x1: number, y1: number, x2: number, y2: number): string {
  const isAt = (p: Point, x: number, y: number) => Math.hypot(p.x - x, p.y - y) < 1e-9;
  const line = [...drawnLines(drawing).values()].find(
    ({ from, to }) => (isAt(from, x1, y1) && isAt(to, x2, y2)) || (isAt(from, x2, y2) && isAt(to, x1, y1)),
  );
  return line?.id ?? 'none';
}

const round = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;

/** The splits as numbers to a millionth: each from its upper (then left) end, in reading order. */
export const splitsOf = (drawing: Drawing): readonly Ends[] =>
  drawing.splits
    .map(({ from, to }): Ends => {
      const [a, b] = [drawing.points[from]!, drawing.points[to]!].map(
        ({ x, y }) => [round(x), round(y)] as const,
      );
      return a![1] < b![1] || (a![1] === b![1] && a![0] <= b![0]) ? [...a!, ...b!] : [...b!, ...a!];
    })
    .sort((p, q) => p[1] - q[1] || p[0] - q[0] || p[3] - q[3] || p[2] - q[2]);
