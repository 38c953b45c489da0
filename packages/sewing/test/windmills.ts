import type { Arrangement } from '@seamwright/arrangement';
import { contains, type Point, type Segment } from '@seamwright/geometry';

/** Numbers from 0 to 1, the same for the same seed: a 32-bit xorshift (G. Marsaglia, Xorshift RNGs, 2003). */
export function randomFrom(seed: number): () => number {
  let state = (seed * 2654435761) | 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

/** An upright rectangle of a block. */
export interface Cell {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Windmill {
  readonly seams: readonly Segment[];
  /** Where each seam ends on the next. */
  readonly corners: readonly Point[];
  /** A point beside the middle of each side, outside: in the patches that hold each other. */
  readonly beside: readonly Point[];
  readonly centre: Point;
  /** Inches: no part of the middle is nearer to the centre's edge than this. */
  readonly radius: number;
}

/**
 * A ring of k seams in a cell, each of which ends on the next, the other end on the cell's edge: the tangents of a circle,
 * turned and moved about. Which way round is up to the seed.
 */
export function windmill(k: number, cell: Cell, random: () => number): Windmill {
  const width = cell.right - cell.left;
  const height = cell.bottom - cell.top;
  const size = Math.min(width, height);
  const centre = {
    x: cell.left + width * (0.42 + 0.16 * random()),
    y: cell.top + height * (0.42 + 0.16 * random()),
  };
  // A triangle's corners are twice its circle's radius off.
  const radius = size * (0.09 + 0.06 * random());
  const turned = random();
  const side = random() < 0.5 ? 1 : -1;
  const at = (i: number, along: number, out = 0): Point => {
    const angle = side * 2 * Math.PI * (turned + i / k);
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    return {
      x: centre.x + (radius + out) * c - side * along * s,
      y: centre.y + (radius + out) * s + side * along * c,
    };
  };
  // Neighbouring tangents of a circle meet at radius × tan(half the angle between them).
  const reach = radius * Math.tan(Math.PI / k);
  const seams: Segment[] = [];
  const corners: Point[] = [];
  const beside: Point[] = [];
  for (let i = 0; i < k; i += 1) {
    corners.push(at(i, -reach));
    beside.push(at(i, 0, radius / 50));
    seams.push({ a: clippedEnd(at(i, -reach), at(i, reach), cell), b: at(i, -reach) });
  }
  return { seams, corners, beside, centre, radius };
}

/** Where the ray from `from` over `over` leaves the cell. */
function clippedEnd(from: Point, over: Point, { left, top, right, bottom }: Cell): Point {
  const dx = over.x - from.x;
  const dy = over.y - from.y;
  const reach = [
    dx > 0 ? (right - from.x) / dx : dx < 0 ? (left - from.x) / dx : Number.POSITIVE_INFINITY,
    dy > 0 ? (bottom - from.y) / dy : dy < 0 ? (top - from.y) / dy : Number.POSITIVE_INFINITY,
  ];
  const t = Math.min(...reach);
  return { x: from.x + t * dx, y: from.y + t * dy };
}

/** A block of cells between lines right across it. */
export function cellsOf(columns: number, rows: number, size: number): { cells: Cell[]; lines: Segment[] } {
  const column = (i: number) => (i * size) / columns;
  const row = (j: number) => (j * size) / rows;
  const cells = Array.from({ length: columns * rows }, (_, n): Cell => {
    const i = n % columns;
    const j = Math.floor(n / columns);
    return { left: column(i), right: column(i + 1), top: row(j), bottom: row(j + 1) };
  });
  const lines = [
    ...Array.from({ length: columns - 1 }, (_, i) => ({
      a: { x: column(i + 1), y: 0 },
      b: { x: column(i + 1), y: size },
    })),
    ...Array.from({ length: rows - 1 }, (_, j) => ({
      a: { x: 0, y: row(j + 1) },
      b: { x: size, y: row(j + 1) },
    })),
  ];
  return { cells, lines };
}

/** Four cells with a windmill each, in whose middle is a smaller one: all their seams, and all eight. */
export function nestedWindmills(
  size: number,
  random: () => number,
): { segments: Segment[]; mills: Windmill[] } {
  const { cells, lines } = cellsOf(2, 2, size);
  const outer = cells.map((cell) => windmill(3 + Math.floor(random() * 4), cell, random));
  // As wide as the square that fits into the circle that the seams touch.
  const within = outer.map(({ centre: { x, y }, radius }) => {
    const half = radius * Math.SQRT1_2;
    return { left: x - half, right: x + half, top: y - half, bottom: y + half };
  });
  const inner = within.map((cell) => windmill(3 + Math.floor(random() * 4), cell, random));
  // The inner windmill's seams end on a square of their own, two of whose sides run on to the outer windmill's seams.
  const squares = within.flatMap(({ left, right, top, bottom }, i) => [
    levelBetween(outer[i]!.seams, (left + right) / 2, top),
    levelBetween(outer[i]!.seams, (left + right) / 2, bottom),
    { a: { x: left, y: top }, b: { x: left, y: bottom } },
    { a: { x: right, y: top }, b: { x: right, y: bottom } },
  ]);
  const mills = [...outer, ...inner];
  return { segments: [...lines, ...mills.flatMap(({ seams }) => seams), ...squares], mills };
}

/** The level line through a point, from seam to seam on both sides. */
export function levelBetween(seams: readonly Segment[], x: number, y: number): Segment {
  const hits = seams.flatMap(({ a, b }) => {
    const t = (y - a.y) / (b.y - a.y);
    return t >= 0 && t <= 1 ? [a.x + t * (b.x - a.x)] : [];
  });
  return {
    a: { x: Math.max(...hits.filter((hit) => hit < x)), y },
    b: { x: Math.min(...hits.filter((hit) => hit > x)), y },
  };
}

/** The patch at a point; an error when there is none. */
export function patchAt({ patches }: Arrangement, p: Point): number {
  const patch = patches.find(({ polygon }) => contains(polygon, p) === 'inside');
  if (patch === undefined) throw new Error(`no patch at ${p.x}, ${p.y}`);
  return patch.index;
}
