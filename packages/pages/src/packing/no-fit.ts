import { isClockwise, type Polygon, reversed } from '@seamwright/geometry';

/**
 * A convex polygon, ready for sums with others: its corners from the topmost on (of these the leftmost), and of the edge
 * from each to the next the direction out of the polygon, square to it, and a number that grows with its angle.
 */
export interface Convex {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly outX: Float64Array;
  readonly outY: Float64Array;
  readonly angle: Float64Array;
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** @param polygon convex, either way round; also a single stretch, as two points */
export function convexOf(polygon: Polygon<'page'>): Convex {
  const ring = polygon.length > 2 && !isClockwise(polygon) ? reversed(polygon) : polygon;
  const corners = ring.filter(({ x, y }, i) => {
    const next = ring[(i + 1) % ring.length]!;
    return x !== next.x || y !== next.y;
  });
  let first = 0;
  corners.forEach(({ x, y }, i) => {
    const top = corners[first]!;
    if (y < top.y || (y === top.y && x < top.x)) first = i;
  });
  const count = corners.length;
  const x = new Float64Array(count);
  const y = new Float64Array(count);
  const outX = new Float64Array(count);
  const outY = new Float64Array(count);
  const angle = new Float64Array(count);
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < count; i++) {
    const a = corners[(first + i) % count]!;
    const b = corners[(first + i + 1) % count]!;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    // Not Math.hypot or Math.atan2, whose last digits may differ from one computer to another.
    const long = Math.sqrt(dx * dx + dy * dy);
    const share = dx / (Math.abs(dx) + Math.abs(dy));
    x[i] = a.x;
    y[i] = a.y;
    outX[i] = dy / long;
    outY[i] = -dx / long;
    angle[i] = dy > 0 || (dy === 0 && dx > 0) ? 1 - share : 3 + share;
    minX = Math.min(minX, a.x);
    minY = Math.min(minY, a.y);
    maxX = Math.max(maxX, a.x);
    maxY = Math.max(maxY, a.y);
  }
  return { x, y, outX, outY, angle, minX, minY, maxX, maxY };
}

/** The polygon turned by a half about (0, 0): what is added to another to find where the two would meet. */
export const opposite = (polygon: Polygon<'page'>): Polygon<'page'> =>
  polygon.map(({ x, y }) => ({ x: 0 - x, y: 0 - y }));

/** Two directions with a smaller product are more than 60° apart: a mitre there would stand out too far. */
const SHARP = 0.5;

/** With a smaller product, more than 120°. */
const SHARPER = -0.5;

/** With a smaller product the sum of the directions is too short to tell which way is between them. */
const NEARLY_OPPOSITE = -0.9;

/**
 * Where something must not stand: for each thing that stands already the convex polygon of the places at which the two
 * would be nearer to each other than the gap. Kept in flat arrays, which are used again and again.
 *
 * That polygon is the sum of the one and the opposite of the other, by merging their edges in the order of their angles,
 * and that moved outward by the gap, with mitres, which are cut off where they would be long. So it is exact at the
 * edges and a little large at corners. No-fit polygons, convex case: J. A. Bennell and J. F. Oliveira, The geometry of
 * nesting problems: a tutorial, European Journal of Operational Research 184, 2008 (from memory).
 */
export class NoFitPolygons {
  count = 0;
  /** The first edge of each; one more than there are polygons. */
  start = new Int32Array(64);
  minX = new Float64Array(64);
  minY = new Float64Array(64);
  maxX = new Float64Array(64);
  maxY = new Float64Array(64);
  /** Of each edge its first corner, its direction outward, and how far out it is: places with a lesser product are inside. */
  x = new Float64Array(512);
  y = new Float64Array(512);
  outX = new Float64Array(512);
  outY = new Float64Array(512);
  out = new Float64Array(512);

  clear(): void {
    this.count = 0;
  }

  /** An upright rectangle. */
  addBox(minX: number, minY: number, maxX: number, maxY: number): void {
    this.reserve(4);
    const at = this.start[this.count]!;
    const edge = (i: number, x: number, y: number, outX: number, outY: number) => {
      this.x[at + i] = x;
      this.y[at + i] = y;
      this.outX[at + i] = outX;
      this.outY[at + i] = outY;
      this.out[at + i] = x * outX + y * outY;
    };
    edge(0, minX, minY, 0, -1);
    edge(1, maxX, minY, 1, 0);
    edge(2, maxX, maxY, 0, 1);
    edge(3, minX, maxY, -1, 0);
    this.close(at + 4, minX, minY, maxX, maxY);
  }

  /**
   * @param p stands at (px, py)
   * @param q the opposite of what is to be placed
   * @param gap points between the two; places up to `slack` inside count as outside
   */
  add(p: Convex, px: number, py: number, q: Convex, gap: number, slack: number): void {
    const [countP, countQ] = [p.x.length, q.x.length];
    // Each edge may bring three more.
    this.reserve(4 * (countP + countQ));
    const { x, y, outX, outY, out } = this;
    const first = this.start[this.count]!;
    let at = first;
    let cornerX = px + p.x[0]! + q.x[0]!;
    let cornerY = py + p.y[0]! + q.y[0]!;
    for (let i = 0, j = 0; i < countP || j < countQ; ) {
      const ofP = j >= countQ || (i < countP && p.angle[i]! <= q.angle[j]!);
      const from = ofP ? p : q;
      const k = ofP ? i++ : j++;
      const next = k + 1 === from.x.length ? 0 : k + 1;
      const dirX = from.outX[k]!;
      const dirY = from.outY[k]!;
      // Where both have an edge in one direction, the sum has one that is as long as both.
      if (at === first || outX[at - 1] !== dirX || outY[at - 1] !== dirY) {
        if (at > first) at = this.blunt(at, dirX, dirY, cornerX, cornerY);
        outX[at] = dirX;
        outY[at] = dirY;
        x[at] = cornerX;
        y[at] = cornerY;
        at++;
      }
      cornerX += from.x[next]! - from.x[k]!;
      cornerY += from.y[next]! - from.y[k]!;
    }
    at = this.blunt(at, outX[first]!, outY[first]!, x[first]!, y[first]!);
    let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
    let beforeX = outX[at - 1]!;
    let beforeY = outY[at - 1]!;
    for (let k = first; k < at; k++) {
      const dirX = outX[k]!;
      const dirY = outY[k]!;
      out[k] = dirX * x[k]! + dirY * y[k]! + gap - slack;
      const mitre = gap / (1 + beforeX * dirX + beforeY * dirY);
      const atX = x[k]! + mitre * (beforeX + dirX);
      const atY = y[k]! + mitre * (beforeY + dirY);
      x[k] = atX;
      y[k] = atY;
      if (atX < minX) minX = atX;
      if (atX > maxX) maxX = atX;
      if (atY < minY) minY = atY;
      if (atY > maxY) maxY = atY;
      beforeX = dirX;
      beforeY = dirY;
    }
    this.close(at, minX, minY, maxX, maxY);
  }

  /** Adds edges without length at a corner where the next one turns sharply: they cut its mitre off. */
  private blunt(at: number, nextX: number, nextY: number, cornerX: number, cornerY: number): number {
    const { x, y, outX, outY } = this;
    const lastX = outX[at - 1]!;
    const lastY = outY[at - 1]!;
    const product = lastX * nextX + lastY * nextY;
    if (product >= SHARP) return at;
    let betweenX = lastX + nextX;
    let betweenY = lastY + nextY;
    if (product < NEARLY_OPPOSITE) {
      betweenX = betweenX / 2 - lastY;
      betweenY = betweenY / 2 + lastX;
    }
    const long = Math.sqrt(betweenX * betweenX + betweenY * betweenY);
    betweenX /= long;
    betweenY /= long;
    let end = product < SHARPER ? this.blunt(at, betweenX, betweenY, cornerX, cornerY) : at;
    outX[end] = betweenX;
    outY[end] = betweenY;
    x[end] = cornerX;
    y[end] = cornerY;
    end++;
    return product < SHARPER ? this.blunt(end, nextX, nextY, cornerX, cornerY) : end;
  }

  private close(end: number, minX: number, minY: number, maxX: number, maxY: number): void {
    this.minX[this.count] = minX;
    this.minY[this.count] = minY;
    this.maxX[this.count] = maxX;
    this.maxY[this.count] = maxY;
    this.count++;
    this.start[this.count] = end;
  }

  /** Room for one polygon more. */
  private reserve(edges: number): void {
    if (this.count + 2 > this.start.length) {
      const start = new Int32Array(2 * this.start.length);
      start.set(this.start);
      this.start = start;
      for (const key of ['minX', 'minY', 'maxX', 'maxY'] as const) this[key] = twice(this[key]);
    }
    if (this.start[this.count]! + edges <= this.x.length) return;
    for (const key of ['x', 'y', 'outX', 'outY', 'out'] as const) this[key] = twice(this[key]);
  }
}

function twice(list: Float64Array<ArrayBuffer>): Float64Array<ArrayBuffer> {
  const larger = new Float64Array(2 * list.length);
  larger.set(list);
  return larger;
}
