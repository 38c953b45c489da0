import {
  distance,
  distanceToLine,
  type Point,
  parameterOn,
  pointAt,
  SAME_COORDINATE,
  type Segment,
} from '@seamwright/geometry';
import { type Drawing, edgeId, type LineId } from './drawing.ts';
import type { Nodes } from './nodes.ts';
import type { Tolerances } from './tolerances.ts';

/** One drawn line: a split or an edge of the outline, between two nodes. */
export interface Stretch {
  readonly id: LineId;
  readonly from: number;
  readonly to: number;
  readonly onOutline: boolean;
}

/** Drawn lines that are one straight line. */
export interface LineGroup {
  readonly stretches: Stretch[];
  /** The ends of its farthest stretch: what its direction is read from. */
  a: Point;
  b: Point;
  /** Lines of the outline keep the outline's direction exactly. */
  readonly fixed: boolean;
}

/** The outline's edges and the splits, as stretches between nodes. Splits whose ends fall together are returned apart. */
export function stretchesOf(drawing: Drawing, nodes: Nodes): { stretches: Stretch[]; tooShort: LineId[] } {
  const node = (id: string) => nodes.nodeOf.get(id)!;
  const corners = drawing.outline;
  const stretches: Stretch[] = corners.map((corner, i) => ({
    id: edgeId(corner),
    from: node(corner),
    to: node(corners[(i + 1) % corners.length]!),
    onOutline: true,
  }));
  const tooShort: LineId[] = [];
  for (const split of drawing.splits) {
    const stretch = { id: split.id, from: node(split.from), to: node(split.to), onOutline: false };
    if (stretch.from === stretch.to) tooShort.push(split.id);
    else stretches.push(stretch);
  }
  return { stretches, tooShort };
}

/**
 * Finds which stretches are one straight line.
 *
 * Edges of the outline come first, then splits from the longest to the shortest, so that a short, imprecise one is
 * judged by a long, precise one. A stretch joins the line that it fits best: both its ends no farther than
 * `straight` from it, or `snap` where it runs along a stretch that is already there (the same line drawn twice).
 * A line that grew is checked again as a whole, so a chain of slight bends never counts as straight.
 */
export function groupLines(stretches: readonly Stretch[], nodes: Nodes, tolerances: Tolerances): LineGroup[] {
  const at = (n: number) => nodes.nodes[n]!.at;
  const lengthOf = (s: Stretch) => distance(at(s.from), at(s.to));
  const order = [...stretches].sort(
    (s, t) =>
      Number(t.onOutline) - Number(s.onOutline) ||
      lengthOf(t) - lengthOf(s) ||
      at(s.from).x - at(t.from).x ||
      at(s.from).y - at(t.from).y,
  );

  const groups: LineGroup[] = [];
  const byAngle = new AngleBins();
  for (const s of order) {
    const a = at(s.from);
    const b = at(s.to);
    const reach = s.onOutline ? SAME_COORDINATE : tolerances.snap;
    let best: LineGroup | undefined;
    let bestOff = Number.POSITIVE_INFINITY;
    for (const g of byAngle.near(a, b, reach)) {
      const group = groups[g]!;
      const off = Math.max(distanceToLine(a, group.a, group.b), distanceToLine(b, group.a, group.b));
      if (off > reach || off >= bestOff) continue;
      const limit = s.onOutline
        ? SAME_COORDINATE
        : runsAlong(group, s, at)
          ? tolerances.snap
          : tolerances.straight;
      if (off > limit || !staysStraight(group, s, at, limit)) continue;
      best = group;
      bestOff = off;
    }
    if (best === undefined) {
      byAngle.add(groups.length, a, b);
      groups.push({ stretches: [s], a, b, fixed: s.onOutline });
    } else {
      best.stretches.push(s);
      if (!best.fixed || s.onOutline) Object.assign(best, extent(best, at));
    }
  }
  return groups;
}

/** Whether `s` overlaps one of the group's stretches, seen along the line, by more than a shared end. */
function runsAlong(group: LineGroup, s: Stretch, at: (n: number) => Point): boolean {
  const span = (t: Stretch): [number, number] => {
    const u = parameterOn(group.a, group.b, at(t.from));
    const v = parameterOn(group.a, group.b, at(t.to));
    return u < v ? [u, v] : [v, u];
  };
  const slack = SAME_COORDINATE / distance(group.a, group.b);
  const [low, high] = span(s);
  return group.stretches.some((t) => {
    const [l, h] = span(t);
    return Math.min(h, high) - Math.max(l, low) > slack;
  });
}

function staysStraight(group: LineGroup, s: Stretch, at: (n: number) => Point, limit: number): boolean {
  if (group.fixed) return true;
  const grown = extent({ ...group, stretches: [...group.stretches, s] }, at);
  return [...group.stretches, s].every(
    (t) =>
      distanceToLine(at(t.from), grown.a, grown.b) <= limit &&
      distanceToLine(at(t.to), grown.a, grown.b) <= limit,
  );
}

/** The two nodes of a group that are farthest apart along it. */
function extent(group: LineGroup, at: (n: number) => Point): Segment {
  let first = 0;
  let last = 0;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const s of group.stretches) {
    for (const n of [s.from, s.to]) {
      const t = parameterOn(group.a, group.b, at(n));
      if (t < low) {
        low = t;
        first = n;
      }
      if (t > high) {
        high = t;
        last = n;
      }
    }
  }
  return { a: at(first), b: at(last) };
}

/** Line groups by direction, so that a stretch is compared with those of nearly its own direction only. */
class AngleBins {
  private static readonly COUNT = 180;
  private readonly bins: number[][] = Array.from({ length: AngleBins.COUNT }, () => []);

  private static binOf(a: Point, b: Point): number {
    const turn = Math.atan2(b.y - a.y, b.x - a.x) / Math.PI;
    return Math.floor((turn < 0 ? turn + 1 : turn) * AngleBins.COUNT) % AngleBins.COUNT;
  }

  add(group: number, a: Point, b: Point): void {
    this.bins[AngleBins.binOf(a, b)]!.push(group);
  }

  /** Groups whose direction may differ from a–b's by no more than a lateral `reach` at both ends allows. */
  *near(a: Point, b: Point, reach: number): Generator<number> {
    const angle = Math.asin(Math.min(1, (4 * reach) / distance(a, b)));
    const spread = Math.min(Math.ceil((angle / Math.PI) * AngleBins.COUNT) + 1, AngleBins.COUNT / 2);
    const middle = AngleBins.binOf(a, b);
    const seen = new Set<number>();
    for (let i = middle - spread; i <= middle + spread; i += 1) {
      const bin = (i + AngleBins.COUNT) % AngleBins.COUNT;
      if (seen.has(bin)) continue;
      seen.add(bin);
      yield* this.bins[bin]!;
    }
  }
}

/** The point of the line through `a` and `b` nearest to `p`. */
export const projected = (p: Point, a: Point, b: Point): Point => pointAt(a, b, parameterOn(a, b, p));
