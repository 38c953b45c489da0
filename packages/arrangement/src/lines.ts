import {
  boundingBox,
  distance,
  distanceToLine,
  type Point,
  parameterOn,
  pointAt,
  SAME_COORDINATE,
  type Segment,
} from '@seamwright/geometry';
import { type Drawing, edgeId, type LineId } from './drawing.ts';
import { LineIndex } from './line-index.ts';
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

/** A line while it grows, with what spares looking at all its stretches for each new one. */
interface GrowingLine extends LineGroup {
  /** Inches: no end of its stretches is farther from the line than this. */
  bend: number;
}

/**
 * Finds which stretches are one straight line.
 *
 * Edges of the outline come first, then splits from the longest to the shortest, so that a short, imprecise one is
 * judged by a long, precise one. A stretch joins the line that it fits best: from end to end of both no end strays
 * farther than `straight`, or `snap` where it runs along a stretch that is already there (the same line drawn twice).
 * A line that grew is checked as a whole, so a chain of slight bends never counts as straight.
 */
export function groupLines(stretches: readonly Stretch[], nodes: Nodes, tolerances: Tolerances): LineGroup[] {
  const at = (n: number) => nodes.nodes[n]!.at;
  const groups: GrowingLine[] = [];
  const index = lineIndex(nodes);
  for (const s of longestFirst(stretches, at)) {
    const a = at(s.from);
    const b = at(s.to);
    const reach = s.onOutline ? SAME_COORDINATE : tolerances.snap;
    let best: number | undefined;
    let bestOff = Number.POSITIVE_INFINITY;
    for (const g of index.near(a, b, reach)) {
      const group = groups[g]!;
      const off = Math.max(distanceToLine(a, group.a, group.b), distanceToLine(b, group.a, group.b));
      if (off > reach || off >= bestOff || !mayJoin(group, s, off, at, tolerances)) continue;
      best = g;
      bestOff = off;
    }
    if (best === undefined) {
      index.set(groups.length, a, b);
      groups.push({ stretches: [s], a, b, fixed: s.onOutline, bend: 0 });
    } else {
      const group = groups[best]!;
      join(group, s, bestOff, at);
      index.set(best, group.a, group.b);
    }
  }
  return groups;
}

function lineIndex({ nodes }: Nodes): LineIndex {
  const { minX, minY, maxX, maxY } = boundingBox(nodes.map((node) => node.at));
  const pivot = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  return new LineIndex(pivot, distance(pivot, { x: maxX, y: maxY }));
}

function longestFirst(stretches: readonly Stretch[], at: (n: number) => Point): Stretch[] {
  const measured = stretches.map((s) => ({ s, start: at(s.from), length: distance(at(s.from), at(s.to)) }));
  measured.sort(
    (m, n) =>
      Number(n.s.onOutline) - Number(m.s.onOutline) ||
      n.length - m.length ||
      m.start.x - n.start.x ||
      m.start.y - n.start.y,
  );
  return measured.map(({ s }) => s);
}

/** Whether a stretch whose ends are up to `off` from the line may be a part of it. */
function mayJoin(
  group: GrowingLine,
  s: Stretch,
  off: number,
  at: (n: number) => Point,
  { snap, straight }: Tolerances,
): boolean {
  if (s.onOutline) return true;
  if (off <= straight && (group.fixed || bendOfGrown(group, off) <= straight)) return true;
  const limit = runsAlong(group, s, at) ? snap : straight;
  // Measured from the stretch that is longer, the far end of the other strays twice as far as either from a line through both.
  return group.fixed ? off <= limit : staysStraight(group, s, at, limit);
}

/**
 * A bound for the bend of a line that grows by a stretch with ends up to `off` from it: the grown line runs through two
 * of the ends, and where an end strays to one side, these may to the other.
 */
const bendOfGrown = ({ bend }: GrowingLine, off: number): number => 2 * Math.max(bend, off);

function join(group: GrowingLine, s: Stretch, off: number, at: (n: number) => Point): void {
  group.stretches.push(s);
  if (group.fixed && !s.onOutline) return;
  const bend = bendOfGrown(group, off);
  if (bend <= SAME_COORDINATE) {
    group.bend = lengthen(group, s, at) ? bend : Math.max(group.bend, off);
    return;
  }
  Object.assign(group, extent(group, at));
  group.bend = bendOf(group, group, at);
}

/** Moves the ends of a line out to those of a stretch that lies on it precisely, if that is longer at one end. */
function lengthen(group: GrowingLine, s: Stretch, at: (n: number) => Point): boolean {
  const { a, b } = group;
  for (const p of [at(s.from), at(s.to)]) {
    const t = parameterOn(a, b, p);
    if (t < parameterOn(a, b, group.a)) group.a = p;
    if (t > parameterOn(a, b, group.b)) group.b = p;
  }
  return group.a !== a || group.b !== b;
}

/** How far the ends of the group's stretches stray from a line, at most. */
function bendOf(group: LineGroup, { a, b }: Segment, at: (n: number) => Point): number {
  const off = (t: Stretch) => Math.max(distanceToLine(at(t.from), a, b), distanceToLine(at(t.to), a, b));
  return group.stretches.reduce((most, t) => Math.max(most, off(t)), 0);
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
  const grown = { ...group, stretches: [...group.stretches, s] };
  return bendOf(grown, extent(grown, at), at) <= limit;
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

/** The point of the line through `a` and `b` nearest to `p`. */
export const projected = (p: Point, a: Point, b: Point): Point => pointAt(a, b, parameterOn(a, b, p));
