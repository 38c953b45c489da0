import type { Point, Segment } from '@seamwright/geometry';
import { randomFrom } from './windmills.ts';

/** Inches: the square that the drawings fill, a whole number so that parts of them are often alike. */
const SIZE = 4;

export const SQUARE: readonly Point[] = [
  { x: 0, y: 0 },
  { x: SIZE, y: 0 },
  { x: SIZE, y: SIZE },
  { x: 0, y: SIZE },
];

type Move = (p: Point) => Point;
const turn: Move = ({ x, y }) => ({ x: SIZE - y, y: x });
const flip: Move = ({ x, y }) => ({ x: SIZE - x, y });
const swap: Move = ({ x, y }) => ({ x: y, y: x });
const stay: Move = (p) => p;
const half: Move = (p) => turn(turn(p));

/** Ways in which a block may be symmetrical. */
const SYMMETRIES: readonly (readonly Move[])[] = [
  [stay],
  [stay, half],
  [stay, flip],
  [stay, swap],
  [stay, turn, half, (p) => turn(half(p))],
  [stay, flip, half, (p) => flip(half(p))],
];

/** A few lines between points of a lattice, each with its images under one symmetry of the square, or under none. */
export function symmetricDrawing(seed: number): readonly Segment[] {
  const random = randomFrom(7919 * (seed + 1));
  const whole = () => Math.floor(random() * (SIZE + 1));
  const moves = SYMMETRIES[seed % SYMMETRIES.length]!;
  const segments: Segment[] = [];
  // Half of them have a line right across the middle, by which they can be taken apart.
  if (random() < 0.5) segments.push({ a: { x: SIZE / 2, y: 0 }, b: { x: SIZE / 2, y: SIZE } });
  const drawn = 1 + Math.floor((random() * 6) / Math.sqrt(moves.length));
  for (let i = 0; i < drawn; i += 1) {
    const [a, b] = [
      { x: whole(), y: whole() },
      { x: whole(), y: whole() },
    ];
    if (a.x === b.x && a.y === b.y) continue;
    for (const move of moves) segments.push({ a: move(a), b: move(b) });
  }
  return segments;
}
