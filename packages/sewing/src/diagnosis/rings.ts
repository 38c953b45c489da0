import type { Arrangement } from '@seamwright/arrangement';
import { cross, distance, dot, type Point, subtract } from '@seamwright/geometry';
import type { Touching } from '../contact.ts';
import type { Heading, SeamRun, Seams } from './seam-runs.ts';

/**
 * Seams in each other's way, in order:
 *
 * - `ring`: each ends on the next one, the last on the first; `corners[i]` is where seam i does
 * - `corner`: they all end in one vertex, and none runs straight through; `corners` is that vertex
 */
export interface Ring {
  readonly kind: 'ring' | 'corner';
  readonly seams: readonly Heading[];
  readonly corners: readonly number[];
  /** Of a ring: the side on which its middle lies as one walks along it, 1: right on the screen. */
  readonly side: 1 | -1;
}

/** Where a heading leads: the vertex at that end of its run. */
export const endOf = (seams: Seams, { run, end }: Heading): number => {
  const { vertices } = seams.runs[run]!;
  return end === 0 ? vertices[0]! : vertices.at(-1)!;
};

const isBlocked = (seams: Seams, { run, end }: Heading): boolean => seams.runs[run]!.blocked[end];

/** Vertices inside the region in which seams end and through which none runs straight. */
export function cornersWithin(seams: Seams): Ring[] {
  const found: Ring[] = [];
  for (const [vertex, here] of seams.at) {
    if (here.some(({ run, place }) => isBetween(seams.runs[run]!, place))) continue;
    const headings = here.map(({ run, place }): Heading => ({ run, end: place === 0 ? 0 : 1 }));
    found.push({ kind: 'corner', seams: headings, corners: [vertex], side: 1 });
  }
  return found.sort((r, s) => r.corners[0]! - s.corners[0]!);
}

/**
 * The rings that turn one way only, each round a convex middle: windmills. Whoever walks along a seam to its end and turns
 * off as sharply as possible to the same side, again and again, comes to the region's boundary or round and round a ring;
 * so all of them are found by following each heading once.
 */
export function windmills(arrangement: Arrangement, seams: Seams): Ring[] {
  return ([1, -1] as const).flatMap((side) => oneWayRings(arrangement, seams, side));
}

function oneWayRings(arrangement: Arrangement, seams: Seams, side: 1 | -1): Ring[] {
  const headings = seams.runs.flatMap(({ index }): Heading[] => [
    { run: index, end: 0 },
    { run: index, end: 1 },
  ]);
  const idOf = ({ run, end }: Heading) => 2 * run + end;
  const walkOf = new Int32Array(headings.length).fill(-1);
  const found: Ring[] = [];
  headings.forEach((start, walk) => {
    const path: Heading[] = [];
    let here: Heading | null = start;
    while (here !== null && walkOf[idOf(here)] === -1) {
      walkOf[idOf(here)] = walk;
      path.push(here);
      here = sharpestTurn(arrangement, seams, here, side);
    }
    if (here === null || walkOf[idOf(here)] !== walk) return;
    const first = path.findIndex((heading) => idOf(heading) === idOf(here));
    const ring = path.slice(first);
    // One that goes round twice crosses itself.
    if (roundsOf(arrangement, seams, ring) === side) found.push(ringOf(seams, ring, side));
  });
  return found;
}

/** The way on from the end of a seam along the one it ends on, turning to one side (1: right on the screen). */
function sharpestTurn(
  arrangement: Arrangement,
  seams: Seams,
  heading: Heading,
  side: 1 | -1,
): Heading | null {
  if (!isBlocked(seams, heading)) return null;
  const direction = directionOf(arrangement, seams, heading);
  let best: Heading | null = null;
  let sharpest = 0;
  for (const { run, place } of seams.at.get(endOf(seams, heading))!) {
    if (!isBetween(seams.runs[run]!, place)) continue;
    for (const end of [0, 1] as const) {
      const turn = side * turnBetween(direction, directionOf(arrangement, seams, { run, end }));
      if (turn <= sharpest) continue;
      sharpest = turn;
      best = { run, end };
    }
  }
  return best;
}

/**
 * The shortest ring of a region that is interlocked, whichever way it turns: from each heading, seams are followed both ways
 * at every turn.
 */
export function shortestRing(arrangement: Arrangement, seams: Seams): Ring | null {
  const corner = cornersWithin(seams)[0];
  if (corner !== undefined) return corner;
  let best: Heading[] | null = null;
  for (const { index } of seams.runs) {
    for (const end of [0, 1] as const) {
      const ring = shortestWayRound(seams, { run: index, end }, best?.length ?? Number.POSITIVE_INFINITY);
      if (ring === null) continue;
      const better =
        best === null ||
        ring.length < best.length ||
        (ring.length === best.length &&
          lengthOf(arrangement, seams, ring) < lengthOf(arrangement, seams, best));
      if (better) best = ring;
    }
  }
  return best === null ? null : ringOf(seams, best, roundsOf(arrangement, seams, best) < 0 ? -1 : 1);
}

const ringOf = (seams: Seams, headings: readonly Heading[], side: 1 | -1): Ring => ({
  kind: 'ring',
  seams: headings,
  corners: headings.map((heading) => endOf(seams, heading)),
  side,
});

/** @param most seams: longer ways are not looked for */
function shortestWayRound(seams: Seams, start: Heading, most: number): Heading[] | null {
  if (!isBlocked(seams, start)) return null;
  const cameFrom = new Map<number, Heading | null>([[2 * start.run + start.end, null]]);
  let front = [start];
  for (let seamsSoFar = 1; front.length > 0 && seamsSoFar <= most; seamsSoFar += 1) {
    const next: Heading[] = [];
    for (const heading of front) {
      for (const { run, place } of seams.at.get(endOf(seams, heading))!) {
        if (!isBetween(seams.runs[run]!, place)) continue;
        for (const end of [0, 1] as const) {
          const onward: Heading = { run, end };
          if (run === start.run && end === start.end) return pathTo(heading, cameFrom);
          const id = 2 * run + end;
          if (!isBlocked(seams, onward) || cameFrom.has(id)) continue;
          cameFrom.set(id, heading);
          next.push(onward);
        }
      }
    }
    front = next;
  }
  return null;
}

function pathTo(heading: Heading, cameFrom: ReadonlyMap<number, Heading | null>): Heading[] {
  const path: Heading[] = [];
  for (
    let here: Heading | null = heading;
    here !== null;
    here = cameFrom.get(2 * here.run + here.end) ?? null
  )
    path.push(here);
  return path.reverse();
}

const isBetween = ({ vertices }: SeamRun, place: number): boolean => place > 0 && place < vertices.length - 1;

/** The edges round the ring's middle, along each seam from the corner before to its own. */
export const middleEdges = (seams: Seams, ring: Ring): number[] =>
  ring.seams.flatMap((_, i) => sideEdges(seams, ring, i));

function sideEdges(seams: Seams, { seams: headings, corners }: Ring, i: number): readonly number[] {
  const { vertices, edges } = seams.runs[headings[i]!.run]!;
  const before = vertices.indexOf(corners[(i + corners.length - 1) % corners.length]!);
  const after = vertices.indexOf(corners[i]!);
  return edges.slice(Math.min(before, after), Math.max(before, after));
}

function lengthOf(arrangement: Arrangement, seams: Seams, headings: readonly Heading[]): number {
  return middleEdges(seams, ringOf(seams, headings, 1)).reduce((sum, edge) => {
    const { from, to } = arrangement.edges[edge]!;
    return sum + distance(arrangement.vertices[from]!.at, arrangement.vertices[to]!.at);
  }, 0);
}

function directionOf(arrangement: Arrangement, seams: Seams, { run, end }: Heading): Point {
  const { a, b } = arrangement.lines[seams.runs[run]!.line]!;
  return end === 1 ? subtract(b, a) : subtract(a, b);
}

/** The angle by which someone turns from one direction to another, radians; positive to the right on the screen. */
const turnBetween = (from: Point, to: Point): number => Math.atan2(cross(from, to), dot(from, to));

/** How often the walk along a ring turns round altogether: 1 where it goes round once clockwise on the screen. */
function roundsOf(arrangement: Arrangement, seams: Seams, ring: readonly Heading[]): number {
  const directions = ring.map((heading) => directionOf(arrangement, seams, heading));
  const turned = directions.reduce(
    (sum, direction, i) => sum + turnBetween(direction, directions[(i + 1) % directions.length]!),
    0,
  );
  return Math.round(turned / (2 * Math.PI));
}

/** The patches that lie along the inner side of a ring. */
export function innerPatches(
  arrangement: Arrangement,
  touching: Touching,
  seams: Seams,
  ring: Ring,
): Set<number> {
  const inner = new Set<number>();
  ring.seams.forEach(({ end }, i) => {
    for (const edge of sideEdges(seams, ring, i)) {
      const { from, left, right } = arrangement.edges[edge]!;
      const along = touching.start[touching.rankOf[edge]!] === from ? 1 : -1;
      const walked = end === 1 ? along : -along;
      inner.add(walked === ring.side ? right : left);
    }
  });
  return inner;
}
