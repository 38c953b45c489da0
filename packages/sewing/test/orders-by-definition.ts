import type { Arrangement } from '@seamwright/arrangement';
import type { Polygon } from '@seamwright/geometry';
import type { OrderCosts, OrderWeights, ReplayedReport } from '../src/index.ts';

/**
 * Piecing orders straight from their definition: a patch is sewn on along one line to those before it. No use is made of
 * peeling nor of anything else of the solver; whoever asks, asks every order.
 */
export class OrdersByDefinition {
  /** For each patch, its seams within the section. */
  private readonly seams: Map<number, Seam[]>;

  constructor(
    private readonly arrangement: Arrangement,
    private readonly section: readonly number[],
    private readonly wanted: Wanted = { firsts: [], befores: [] },
  ) {
    this.seams = new Map(section.map((p) => [p, []]));
    for (const { left, right, line, from, to } of arrangement.edges) {
      const a = arrangement.vertices[from]!.at;
      const b = arrangement.vertices[to]!.at;
      this.seams.get(left)?.push({ other: right, line, a: [a.x, a.y], b: [b.x, b.y] });
      this.seams.get(right)?.push({ other: left, line, a: [a.x, a.y], b: [b.x, b.y] });
    }
    for (const [p, all] of this.seams) {
      this.seams.set(
        p,
        all.filter(({ other }) => this.seams.has(other)),
      );
    }
  }

  /**
   * Calls `visit` with each good order in which the wanted patches come first or before others, until it returns false.
   * Orders are filled in from their last places: whatever may stand there may stand there in many orders, while hardly any
   * beginning can be completed.
   */
  visitAll(visit: (order: readonly number[]) => boolean | undefined): void {
    const before = new Set(this.section);
    const order: number[] = [];
    const fill = (): boolean => {
      if (before.size === 0) return visit(order.toReversed()) !== false;
      for (const p of this.section) {
        if (!before.delete(p)) continue;
        order.push(p);
        const goOn = !this.mayFollow(p, before) || fill();
        order.pop();
        before.add(p);
        if (!goOn) return false;
      }
      return true;
    };
    fill();
  }

  count(): number {
    let count = 0;
    this.visitAll(() => {
      count += 1;
    });
    return count;
  }

  exists(): boolean {
    let found = false;
    this.visitAll(() => {
      found = true;
      return false;
    });
    return found;
  }

  isGood(order: readonly number[]): boolean {
    const sewn = new Set<number>();
    const inSection = new Set(this.section);
    return (
      order.length === inSection.size &&
      order.every((p) => {
        if (!inSection.has(p) || sewn.has(p) || !this.mayFollow(p, sewn)) return false;
        sewn.add(p);
        return true;
      })
    );
  }

  private mayFollow(p: number, sewn: ReadonlySet<number>): boolean {
    const { firsts, befores } = this.wanted;
    const here = (q: number) => this.seams.has(q);
    if (sewn.size > 0 && firsts.includes(p)) return false;
    if (sewn.size === 0 && firsts.some((q) => here(q) && q !== p)) return false;
    if (befores.some(([a, than]) => than === p && here(a) && !sewn.has(a))) return false;
    return sewn.size === 0 || new Set(this.contact(p, sewn).map(({ line }) => line)).size === 1;
  }

  private contact(p: number, sewn: ReadonlySet<number>): Seam[] {
    return this.seams.get(p)!.filter(({ other }) => sewn.has(other));
  }

  costs(order: readonly number[], shade: Shade): OrderCosts {
    const sewn = new Set<number>();
    const sum = { showThrough: 0, uncleanFolds: 0, jumps: 0 };
    order.forEach((p, k) => {
      if (k > 0) {
        const step = this.costsOfStep(p, sewn, order[k - 1]!, shade);
        for (const name of COSTS) sum[name] += step[name];
      }
      sewn.add(p);
    });
    return sum;
  }

  private costsOfStep(p: number, sewn: ReadonlySet<number>, before: number, shade: Shade): OrderCosts {
    const contact = this.contact(p, sewn);
    const run = farthestEnds(contact.flatMap(({ a, b }) => [a, b]));
    const reached = new Set([before, ...this.neighbours(before)].flatMap((q) => this.neighbours(q)));
    return {
      showThrough: contact.some(({ other }) => isLighter(shade(p), shade(other))) ? 1 : 0,
      uncleanFolds: this.reachesBeyond(run, p, contact[0]!, sewn) ? 1 : 0,
      jumps: reached.has(p) ? 0 : 1,
    };
  }

  /** Inches of sew lines, each one straight run, along which the patch touches nothing that is sewn. */
  bridged(order: readonly number[]): number {
    const sewn = new Set<number>();
    return order.reduce((inches, p) => {
      const contact = this.contact(p, sewn);
      sewn.add(p);
      if (contact.length === 0) return inches;
      const run = farthestEnds(contact.flatMap(({ a, b }) => [a, b]));
      return inches + length(...run) - contact.reduce((sum, { a, b }) => sum + length(a, b), 0);
    }, 0);
  }

  /**
   * The least weighted costs of all orders, where they are too many to be written out: of what is left once the last few
   * places are filled, the least is remembered. Nothing is left out by any estimate. Infinity when there is no order.
   */
  leastCost(weights: OrderWeights, shade: Shade): number {
    const known = new Map<string, number>();
    const left = new Set(this.section);
    const least = (last: number): number => {
      if (left.size === 1) return this.mayFollow(last, new Set()) ? 0 : Number.POSITIVE_INFINITY;
      const key = `${last}: ${this.section.filter((p) => left.has(p)).join(' ')}`;
      let best = known.get(key);
      if (best !== undefined) return best;
      best = Number.POSITIVE_INFINITY;
      left.delete(last);
      if (this.mayFollow(last, left)) {
        for (const p of this.section) {
          if (!left.has(p)) continue;
          const step = this.costsOfStep(last, left, p, shade);
          const cost = COSTS.reduce((sum, name) => sum + step[name] * weights[name], 0);
          best = Math.min(best, cost + least(p));
        }
      }
      left.add(last);
      known.set(key, best);
      return best;
    };
    return Math.min(...this.section.map(least));
  }

  private neighbours(p: number): number[] {
    return this.seams.get(p)!.map(({ other }) => other);
  }

  /** Whether a corner of what is sewn is more than a sewer's 1/128 in beyond the line, where patch p is. */
  private reachesBeyond([u, v]: Run, p: number, { a, b }: Seam, sewn: ReadonlySet<number>): boolean {
    const { ring } = this.arrangement.patches[p]!;
    const corners = ring.map((vertex): Pair => {
      const { x, y } = this.arrangement.vertices[vertex]!.at;
      return [x, y];
    });
    // Rings run clockwise on the screen, so p lies to the right of its own edges.
    const at = corners.findIndex((c, i) => {
      const next = corners[(i + 1) % corners.length]!;
      return (same(c, a) && same(next, b)) || (same(c, b) && same(next, a));
    });
    const start = corners[at]!;
    const next = corners[(at + 1) % corners.length]!;
    const along = (next[0] - start[0]) * (v[0] - u[0]) + (next[1] - start[1]) * (v[1] - u[1]) > 0 ? 1 : -1;
    return [...sewn].some((q) =>
      this.arrangement.patches[q]!.polygon.some(
        ({ x, y }) =>
          (along * ((v[0] - u[0]) * (y - u[1]) - (v[1] - u[1]) * (x - u[0]))) / length(u, v) > 1 / 128,
      ),
    );
  }

  /** What the independent checker needs of one foundation with this outline sewn in this order. */
  report(order: readonly number[], outline: Polygon): ReplayedReport {
    return {
      verdict: 'one foundation',
      outline: outline.map(({ x, y }) => [x, y] as const),
      pieces: order.map((p, k) => ({
        name: `A${k + 1}`,
        polygon: this.arrangement.patches[p]!.polygon.map(({ x, y }) => [x, y] as const),
      })),
      foundations: [{ letter: 'A', order: order.map((_, k) => `A${k + 1}`) }],
      joins: [],
    };
  }
}

export type Shade = (patch: number) => number | undefined;

const COSTS = ['showThrough', 'uncleanFolds', 'jumps'] as const;

export interface Wanted {
  readonly firsts: readonly number[];
  readonly befores: readonly (readonly [patch: number, than: number])[];
}

type Pair = readonly [number, number];
type Run = readonly [Pair, Pair];

interface Seam {
  readonly other: number;
  readonly line: number;
  readonly a: Pair;
  readonly b: Pair;
}

const isLighter = (newer: number | undefined, older: number | undefined): boolean =>
  newer !== undefined && older !== undefined && newer > older;

const same = (p: Pair, q: Pair): boolean => p[0] === q[0] && p[1] === q[1];

const length = (p: Pair, q: Pair): number => Math.hypot(q[0] - p[0], q[1] - p[1]);

function farthestEnds(points: readonly Pair[]): Run {
  let best: Run = [points[0]!, points[0]!];
  for (const p of points) for (const q of points) if (length(p, q) > length(...best)) best = [p, q];
  return best;
}
