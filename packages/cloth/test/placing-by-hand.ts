import type { Point, Polygon } from '@seamwright/geometry';
import type { PatchNeed, PieceCut } from '../src/index.ts';

/**
 * Placing, sewing and flipping by plain coordinates, point by point. Shares nothing with the code that it checks but
 * what a piece and a need are.
 */

type Shape = Pick<PieceCut, 'shape' | 'width' | 'height' | 'angle'>;

/** Inches; what a decimal more or less in a size comes to. */
const HAIR = 2e-6;

export interface Slip {
  readonly dx: number;
  readonly dy: number;
  readonly degrees: number;
}

/** The corners of a piece with its width's beginning in the origin, turned to its angle. */
function cornersOf({ shape, width, height, angle }: Shape): Point[] {
  const t = (angle * Math.PI) / 180;
  const local =
    shape === 'rectangle'
      ? [
          [0, 0],
          [width, 0],
          [width, height],
          [0, height],
        ]
      : [
          [0, 0],
          [width, 0],
          [0, height],
        ];
  return local.map(([x, y]) => ({
    x: x! * Math.cos(t) - y! * Math.sin(t),
    y: x! * Math.sin(t) + y! * Math.cos(t),
  }));
}

/** How far inside each side of a clockwise convex shape the nearest of the points is, and the side's outward normal. */
function insets(corners: readonly Point[], points: Polygon): { inset: number; nx: number; ny: number }[] {
  return corners.map((p, i) => {
    const q = corners[(i + 1) % corners.length]!;
    const size = Math.sqrt((q.x - p.x) ** 2 + (q.y - p.y) ** 2);
    const [nx, ny] = [(q.y - p.y) / size, (p.x - q.x) / size];
    const inset = Math.min(...points.map((r) => (p.x - r.x) * nx + (p.y - r.y) * ny));
    return { inset, nx, ny };
  });
}

/** The piece where it lies true: moved until opposite insets (a triangle's three) are the same. */
export function laidTrue(piece: Shape, need: PatchNeed): readonly Point[] {
  const corners = cornersOf(piece);
  const sides = insets(corners, need.needed);
  // Moving by d adds d·n to an inset. Two equations for d, by Cramer's rule.
  const pairs =
    piece.shape === 'rectangle'
      ? [
          [0, 2],
          [1, 3],
        ]
      : [
          [0, 1],
          [1, 2],
        ]; // prettier-ignore
  const [e, f] = pairs.map(([i, j]) => ({
    a: sides[i!]!.nx - sides[j!]!.nx,
    b: sides[i!]!.ny - sides[j!]!.ny,
    c: sides[j!]!.inset - sides[i!]!.inset,
  }));
  const det = e!.a * f!.b - f!.a * e!.b;
  const dx = (e!.c * f!.b - f!.c * e!.b) / det;
  const dy = (e!.a * f!.c - f!.a * e!.c) / det;
  return corners.map(({ x, y }) => ({ x: x + dx, y: y + dy }));
}

/** The mean of a rectangle's corners; of a triangle's, each weighted by the side opposite: the inscribed circle's centre. */
function middle(corners: readonly Point[]): Point {
  const weights =
    corners.length === 4
      ? [1, 1, 1, 1]
      : corners.map((_, i) => {
          const [p, q] = [corners[(i + 1) % 3]!, corners[(i + 2) % 3]!];
          return Math.hypot(p.x - q.x, p.y - q.y);
        });
  const total = weights.reduce((sum, w) => sum + w, 0);
  return {
    x: corners.reduce((sum, { x }, i) => sum + x * weights[i]!, 0) / total,
    y: corners.reduce((sum, { y }, i) => sum + y * weights[i]!, 0) / total,
  };
}

/** The foot of the perpendicular on the sew line, and as far beyond it again. */
function flipped(p: Point, { sewLine }: PatchNeed): Point {
  if (sewLine === null) return p;
  const { a, b } = sewLine;
  const [ux, uy] = [b.x - a.x, b.y - a.y];
  const t = ((p.x - a.x) * ux + (p.y - a.y) * uy) / (ux * ux + uy * uy);
  return { x: 2 * (a.x + t * ux) - p.x, y: 2 * (a.y + t * uy) - p.y };
}

/** The slips by which a piece fails first: as far as allowed straight against a side of it, turned in even steps. */
export function worstSlips(
  trueCorners: readonly Point[],
  need: PatchNeed,
  spare: number,
  turn: number,
): readonly Slip[] {
  const faceDown = trueCorners.map((p) => flipped(p, need));
  const turns = turn === 0 ? [0] : Array.from({ length: 41 }, (_, i) => turn * (i / 20 - 1));
  return turns.flatMap((degrees) =>
    faceDown.map((p, i): Slip => {
      const q = faceDown[(i + 1) % faceDown.length]!;
      const way = Math.atan2(q.y - p.y, q.x - p.x) + (degrees * Math.PI) / 180;
      // Mirrored, a piece runs anticlockwise: its inside is on the other hand.
      const inward = need.sewLine === null ? way + Math.PI / 2 : way - Math.PI / 2;
      return { dx: spare * Math.cos(inward), dy: spare * Math.sin(inward), degrees };
    }),
  );
}

/** Whether the piece covers what its patch needs when it is laid right side down with a slip, sewn on and flipped. */
export function coversByHand(
  trueCorners: readonly Point[],
  need: PatchNeed,
  slip: Slip,
  hair = HAIR,
): boolean {
  const faceDown = trueCorners.map((p) => flipped(p, need));
  const centre = middle(faceDown);
  const t = (slip.degrees * Math.PI) / 180;
  const slipped = faceDown.map(({ x, y }) => ({
    x: centre.x + (x - centre.x) * Math.cos(t) - (y - centre.y) * Math.sin(t) + slip.dx,
    y: centre.y + (x - centre.x) * Math.sin(t) + (y - centre.y) * Math.cos(t) + slip.dy,
  }));
  const back = slipped.map((p) => flipped(p, need));
  return insets(back, need.needed).every(({ inset }) => inset >= -hair);
}
