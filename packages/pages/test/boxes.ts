import type { Box } from '@seamwright/geometry';
import type { Mark } from '../src/index.ts';
import { CAP_HEIGHT, textWidth } from '../src/marks/metrics.ts';

/** What is seen of the mark, without the width of its stroke. */
export function boxOf(mark: Mark): Box<'page'> {
  const box = wholeBoxOf(mark);
  if (mark.kind === 'text' || mark.window === undefined) return box;
  const { minX, minY, maxX, maxY } = mark.window;
  return {
    minX: Math.max(box.minX, minX),
    minY: Math.max(box.minY, minY),
    maxX: Math.min(box.maxX, maxX),
    maxY: Math.min(box.maxY, maxY),
  };
}

function wholeBoxOf(mark: Mark): Box<'page'> {
  const points = mark.kind === 'path' ? mark.points : cornersOf(mark);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}

/** Corners of the box that a text fills, one after the other. */
export function cornersOf(mark: Mark & { kind: 'text' }): readonly { x: number; y: number }[] {
  const width = textWidth(mark.content, mark.size, mark.weight);
  const start = { start: 0, middle: -width / 2, end: -width }[mark.anchor];
  const [cos, sin] = [Math.cos((mark.angle * Math.PI) / 180), Math.sin((mark.angle * Math.PI) / 180)];
  const rise = -CAP_HEIGHT * mark.size;
  return [
    [start, 0],
    [start + width, 0],
    [start + width, rise],
    [start, rise],
  ].map(([u, v]) => ({ x: mark.at.x + u! * cos - v! * sin, y: mark.at.y + u! * sin + v! * cos }));
}

/** Points, for sums of numbers that went through several additions. */
export const ROUNDING = 1e-6;

export const overlap = (p: Box<'page'>, q: Box<'page'>): boolean =>
  p.minX < q.maxX - ROUNDING &&
  q.minX < p.maxX - ROUNDING &&
  p.minY < q.maxY - ROUNDING &&
  q.minY < p.maxY - ROUNDING;
