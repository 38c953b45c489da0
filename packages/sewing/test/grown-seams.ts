import type { Segment } from '@seamwright/geometry';
import type { Cell } from './windmills.ts';

interface Ray {
  readonly seam: number;
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
  /** How far it grew; null while it grows. */
  length: number | null;
}

/**
 * Seams that grow from random points both ways, all at one speed, until each end meets a seam that is there already or the
 * edge: seams stop at each other everywhere, and none cross. (E. N. Gilbert's random crack network, 1967; from memory.)
 */
export function grownSeams(count: number, cell: Cell, random: () => number): Segment[] {
  const rays = Array.from({ length: count }, (_, seam): Ray[] => {
    const angle = 2 * Math.PI * random();
    const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
    const x = cell.left + (cell.right - cell.left) * (0.1 + 0.8 * random());
    const y = cell.top + (cell.bottom - cell.top) * (0.1 + 0.8 * random());
    return [
      { seam, x, y, dx, dy, length: null },
      { seam, x, y, dx: -dx, dy: -dy, length: null },
    ];
  }).flat();

  const meetings = rays.flatMap((ray) => [
    { ray, at: wayToEdge(ray, cell), other: null, otherAt: 0 },
    ...rays.flatMap((other) => {
      const crossed = ray.dx * other.dy - ray.dy * other.dx;
      if (other.seam === ray.seam || crossed === 0) return [];
      const at = ((other.x - ray.x) * other.dy - (other.y - ray.y) * other.dx) / crossed;
      const otherAt = ((other.x - ray.x) * ray.dy - (other.y - ray.y) * ray.dx) / crossed;
      return at > 0 && otherAt > 0 && otherAt < at ? [{ ray, at, other, otherAt }] : [];
    }),
  ]);
  meetings.sort((m, n) => m.at - n.at);
  for (const { ray, at, other, otherAt } of meetings) {
    if (ray.length !== null || (other !== null && other.length !== null && other.length < otherAt)) continue;
    ray.length = at;
  }
  const endOf = ({ x, y, dx, dy, length }: Ray) => ({ x: x + dx * length!, y: y + dy * length! });
  return Array.from({ length: count }, (_, i) => ({ a: endOf(rays[2 * i]!), b: endOf(rays[2 * i + 1]!) }));
}

const wayToEdge = ({ x, y, dx, dy }: Ray, { left, top, right, bottom }: Cell): number =>
  Math.min(
    dx > 0 ? (right - x) / dx : dx < 0 ? (left - x) / dx : Number.POSITIVE_INFINITY,
    dy > 0 ? (bottom - y) / dy : dy < 0 ? (top - y) / dy : Number.POSITIVE_INFINITY,
  );
