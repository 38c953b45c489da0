import { contains, midpoint, type Point, type Polygon, parameterOn, turn } from '@seamwright/geometry';
import type { LineId } from './drawing.ts';
import type { Incidence, Place } from './incidence.ts';
import type { LineGroup, Stretch } from './lines.ts';

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
  places.forEach(({ lines }, p) => {
    for (const line of lines) onLine[line]!.push(p);
  });

  const inside: Link[] = [];
  const outside: Link[] = [];
  const rankOf = new Int32Array(places.length);
  groups.forEach((group, line) => {
    const order = inOrder(group, onLine[line]!, places);
    order.forEach((p, rank) => {
      rankOf[p] = rank;
    });
    const covering: Stretch[][] = order.map(() => []);
    for (const stretch of group.stretches) {
      const [from, to] = [rankOf[stretch.from]!, rankOf[stretch.to]!];
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

/** The places of a line along its direction. */
function inOrder({ a, b }: LineGroup, onLine: readonly number[], places: readonly Place[]): number[] {
  const along = onLine.map((p) => ({ p, t: parameterOn(a, b, places[p]!.at) }));
  along.sort((v, w) => v.t - w.t || v.p - w.p);
  return along.map(({ p }) => p);
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

/** For each place of a graph, the half-edges that leave it, in the order of their numbers. */
export class Outgoing {
  /** Those of place p are `halves[first[p]]` … `halves[first[p + 1] - 1]`. */
  private readonly first: Int32Array;
  private readonly halves: Int32Array;

  constructor(links: readonly Link[]) {
    const places = links.reduce((most, { from, to }) => Math.max(most, from + 1, to + 1), 0);
    const first = new Int32Array(places + 1);
    for (const { from, to } of links) {
      first[from + 1]! += 1;
      first[to + 1]! += 1;
    }
    for (let place = 0; place < places; place += 1) first[place + 1]! += first[place]!;
    const free = first.slice();
    this.first = first;
    this.halves = new Int32Array(2 * links.length);
    for (let half = 0; half < 2 * links.length; half += 1) {
      const place = originOf(links, half);
      this.halves[free[place]!] = half;
      free[place]! += 1;
    }
  }

  /** One more than the highest number of a place. */
  get places(): number {
    return this.first.length - 1;
  }

  /** How many half-edges leave a place. */
  degree(place: number): number {
    return this.first[place + 1]! - this.first[place]!;
  }

  /** The i-th of the half-edges that leave a place. */
  half(place: number, i: number): number {
    return this.halves[this.first[place]! + i]!;
  }

  /** All of them. */
  from(place: number): number[] {
    return Array.from({ length: this.degree(place) }, (_, i) => this.half(place, i));
  }
}

/** Walks round every face of the graph: at each place it takes the sharpest turn to the right. */
export function traceFaces(links: readonly Link[], at: (place: number) => Point): Faces {
  const outgoing = new Outgoing(links);
  const next = new Int32Array(2 * links.length);
  const target = (half: number) => at(originOf(links, opposite(half)));
  for (let place = 0; place < outgoing.places; place += 1) {
    const halves = outgoing.from(place);
    const center = at(place);
    // Two half-edges are in order either way round.
    if (halves.length > 2) halves.sort((g, h) => compareDirections(center, target(g), target(h)));
    // Coming in against halves[i], the sharpest right turn is the one just before it, clockwise.
    for (let i = 0; i < halves.length; i += 1) {
      next[opposite(halves[i]!)] = halves[(i + halves.length - 1) % halves.length]!;
    }
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

/** Numbers the connected parts of the graph: for each place that has links, its part; -1 for the others. */
export function connectedParts(links: readonly Link[]): Int32Array {
  const outgoing = new Outgoing(links);
  const partOf = new Int32Array(outgoing.places).fill(-1);
  let count = 0;
  for (let start = 0; start < outgoing.places; start += 1) {
    if (outgoing.degree(start) === 0 || partOf[start] !== -1) continue;
    partOf[start] = count;
    const open = [start];
    for (let place = open.pop(); place !== undefined; place = open.pop()) {
      for (let i = 0; i < outgoing.degree(place); i += 1) {
        const other = originOf(links, opposite(outgoing.half(place, i)));
        if (partOf[other] !== -1) continue;
        partOf[other] = count;
        open.push(other);
      }
    }
    count += 1;
  }
  return partOf;
}
