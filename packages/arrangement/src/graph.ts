import { contains, midpoint, type Point, type Polygon, parameterOn, turn } from '@seamwright/geometry';
import type { LineId } from './drawing.ts';
import type { Incidence } from './incidence.ts';

/** A piece of one line between two neighbouring places, with the drawn lines that cover it. */
export interface Link {
  readonly from: number;
  readonly to: number;
  readonly line: number;
  readonly drawn: readonly LineId[];
  /** Whether an edge of the outline is among them. */
  readonly onOutline: boolean;
}

/** What the drawing covers of each line, cut at every place. */
export interface Links {
  readonly inside: readonly Link[];
  /** Pieces of splits beyond the outline. */
  readonly outside: readonly Link[];
}

/** Cuts every line at its places and keeps the pieces that were drawn; each piece once, however often it was drawn. */
export function linkPlaces({ places, groups }: Incidence, outline: Polygon): Links {
  const onLine: number[][] = groups.map(() => []);
  places.forEach((place, p) => {
    for (const line of place.lines) onLine[line]!.push(p);
  });

  const inside: Link[] = [];
  const outside: Link[] = [];
  groups.forEach((group, line) => {
    const along = new Map(onLine[line]!.map((p) => [p, parameterOn(group.a, group.b, places[p]!.at)]));
    const order = [...along.keys()].sort((p, q) => along.get(p)! - along.get(q)! || p - q);
    const rank = new Map(order.map((p, i) => [p, i]));
    const covering: { id: LineId; onOutline: boolean }[][] = order.map(() => []);
    for (const stretch of group.stretches) {
      const from = rank.get(stretch.from)!;
      const to = rank.get(stretch.to)!;
      for (let i = Math.min(from, to); i < Math.max(from, to); i += 1) covering[i]!.push(stretch);
    }
    for (let i = 0; i + 1 < order.length; i += 1) {
      const drawn = covering[i]!;
      if (drawn.length === 0) continue;
      const onOutline = drawn.some((d) => d.onOutline);
      const link = { from: order[i]!, to: order[i + 1]!, line, drawn: drawn.map((d) => d.id), onOutline };
      const middle = midpoint(places[link.from]!.at, places[link.to]!.at);
      if (onOutline || contains(outline, middle) === 'inside') inside.push(link);
      else outside.push(link);
    }
  });
  return { inside, outside };
}

/**
 * A plane graph as its half-edges: half-edge 2i walks link i from `from` to `to`, half-edge 2i + 1 back. The face of
 * a half-edge lies on its right as seen on the screen, so inner faces are walked clockwise.
 */
export interface Faces {
  /** For each half-edge, the face's number. */
  readonly faceOf: Int32Array;
  /** For each face, its half-edges in order. */
  readonly walks: readonly (readonly number[])[];
}

export const originOf = (links: readonly Link[], half: number): number =>
  half % 2 === 0 ? links[half >> 1]!.from : links[half >> 1]!.to;

export const opposite = (half: number): number => half ^ 1;

/** Walks round every face of the graph: at each place it takes the sharpest turn to the right. */
export function traceFaces(links: readonly Link[], at: (place: number) => Point): Faces {
  const outgoing = new Map<number, number[]>();
  for (let half = 0; half < 2 * links.length; half += 1) {
    const origin = originOf(links, half);
    const list = outgoing.get(origin);
    if (list === undefined) outgoing.set(origin, [half]);
    else list.push(half);
  }

  const next = new Int32Array(2 * links.length);
  for (const [place, halves] of outgoing) {
    const center = at(place);
    halves.sort((g, h) =>
      compareDirections(center, at(originOf(links, opposite(g))), at(originOf(links, opposite(h)))),
    );
    // Coming in against halves[i], the sharpest right turn is the one just before it, clockwise.
    halves.forEach((half, i) => {
      next[opposite(half)] = halves[(i + halves.length - 1) % halves.length]!;
    });
  }

  const faceOf = new Int32Array(2 * links.length).fill(-1);
  const walks: number[][] = [];
  for (let start = 0; start < 2 * links.length; start += 1) {
    if (faceOf[start] !== -1) continue;
    const walk: number[] = [];
    for (let half = start; faceOf[half] === -1; half = next[half]!) {
      faceOf[half] = walks.length;
      walk.push(half);
    }
    walks.push(walk);
  }
  return { faceOf, walks };
}

/** Orders directions from `center` clockwise on the screen, starting at the positive x axis. Exact. */
function compareDirections(center: Point, p: Point, q: Point): number {
  const half = (v: Point) => (v.y < center.y || (v.y === center.y && v.x < center.x) ? 1 : 0);
  return half(p) - half(q) || -turn(center, p, q);
}

/** Links that have the same face on both sides: they end freely or hang between islands, and divide nothing. */
export const isBridge = ({ faceOf }: Faces, link: number): boolean =>
  faceOf[2 * link] === faceOf[2 * link + 1];

/** Numbers the connected parts of the graph: for each place that has links, its part. */
export function connectedParts(links: readonly Link[]): Map<number, number> {
  const neighbours = new Map<number, number[]>();
  for (const { from, to } of links) {
    neighbours.set(from, [...(neighbours.get(from) ?? []), to]);
    neighbours.set(to, [...(neighbours.get(to) ?? []), from]);
  }
  const part = new Map<number, number>();
  let count = 0;
  for (const start of neighbours.keys()) {
    if (part.has(start)) continue;
    const open = [start];
    part.set(start, count);
    for (let place = open.pop(); place !== undefined; place = open.pop()) {
      for (const other of neighbours.get(place)!) {
        if (part.has(other)) continue;
        part.set(other, count);
        open.push(other);
      }
    }
    count += 1;
  }
  return part;
}
