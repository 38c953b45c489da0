import {
  area,
  contains,
  deepestPoint,
  distanceToLine,
  type Point,
  SAME_COORDINATE,
  signedArea,
} from '@seamwright/geometry';
import { type Faces, type Link, opposite, originOf, traceFaces } from './graph.ts';
import type { Incidence, Place } from './incidence.ts';
import type { Edge, Line, Patch, Vertex } from './types.ts';

type Structure = { vertices: Vertex[]; lines: Line[]; edges: Edge[]; patches: Patch[] };

/**
 * The finished structure of a graph in which every link divides two faces, or null when the links are no plane
 * drawing (lines were taken to meet that do not): the walks do not fit Euler's formula, or a part of the graph does
 * not have exactly one outer walk.
 *
 * @param pointsAt for each place, the maker's points that lie there
 */
export function buildStructure(
  incidence: Incidence,
  links: readonly Link[],
  pointsAt: ReadonlyMap<number, readonly string[]>,
): Structure | null {
  const joined = withoutStraightPlaces(links, incidence.places);
  const at = (place: number) => incidence.places[place]!.at;
  const faces = traceFaces(joined, at);
  const polygonOf = (walk: readonly number[]) => walk.map((half) => at(originOf(joined, half)));
  const inner: number[] = [];
  const outer: number[] = [];
  faces.walks.forEach((walk, face) => {
    (signedArea(polygonOf(walk)) > 0 ? inner : outer).push(face);
  });
  if (!isPlane(joined, faces, outer.length)) return null;

  const { vertices, vertexOf } = numberVertices(incidence, joined, pointsAt);
  const ringOf = (face: number) => faces.walks[face]!.map((half) => vertexOf.get(originOf(joined, half))!);
  const islands = outer.filter((face) => !faces.walks[face]!.some((half) => joined[half >> 1]!.onOutline));
  const holesOf = placeIslands(inner, islands, (face) => polygonOf(faces.walks[face]!));

  const drafts = inner.map((face) => {
    const walk = startAtTopLeft(faces.walks[face]!, (half) => at(originOf(joined, half)));
    const holes = holesOf.get(face) ?? [];
    const polygon = turningCorners(walk, joined, at);
    const holePolygons = holes.map((hole) => polygonOf(faces.walks[hole]!));
    const { at: heart, depth } = deepestPoint(polygon, holePolygons);
    return {
      face,
      holes,
      ring: walk.map((half) => vertexOf.get(originOf(joined, half))!),
      edges: walk.map((half) => half >> 1),
      border: [...walk, ...holes.flatMap((hole) => faces.walks[hole]!)].map((half) => half >> 1),
      polygon,
      area: area(polygon) - holePolygons.reduce((sum, hole) => sum + area(hole), 0),
      heart,
      depth,
      signature: signatureOf(walk, joined),
    };
  });
  // By place on the block, so that the numbers do not depend on the order in which the splits were drawn.
  const round = (v: number) => Math.round(v / SAME_COORDINATE);
  drafts.sort((p, q) => round(p.heart.y) - round(q.heart.y) || round(p.heart.x) - round(q.heart.x));

  const patchOf = new Map<number, number>();
  drafts.forEach(({ face, holes }, index) => {
    for (const f of [face, ...holes]) patchOf.set(f, index);
  });
  const patchAt = (half: number) => patchOf.get(faces.faceOf[half]!) ?? -1;

  return {
    vertices,
    lines: incidence.groups.map(({ stretches, a, b }, index) => ({
      index,
      members: stretches.map((s) => s.id),
      a,
      b,
    })),
    edges: joined.map((link, index) => ({
      index,
      from: vertexOf.get(link.from)!,
      to: vertexOf.get(link.to)!,
      line: link.line,
      drawn: link.drawn,
      right: patchAt(2 * index),
      left: patchAt(opposite(2 * index)),
    })),
    patches: drafts.map(({ face: _, holes, ...draft }, index) => ({
      ...draft,
      index,
      holes: holes.map(ringOf),
    })),
  };
}

/** Joins links at places where nothing but one straight line passes. */
function withoutStraightPlaces(links: readonly Link[], places: readonly Place[]): Link[] {
  const touching = new Map<number, number[]>();
  links.forEach((link, i) => {
    for (const place of [link.from, link.to]) touching.set(place, [...(touching.get(place) ?? []), i]);
  });
  const passable = (place: number, line: number) => {
    const here = touching.get(place)!;
    return !places[place]!.corner && here.length === 2 && here.every((i) => links[i]!.line === line);
  };

  const done = new Set<number>();
  const joined: Link[] = [];
  links.forEach((link, start) => {
    if (done.has(start)) return;
    done.add(start);
    const drawn = new Set(link.drawn);
    const follow = (from: number, place: number): number => {
      let here = place;
      let last = from;
      while (passable(here, link.line)) {
        const onward = touching.get(here)!.find((i) => i !== last)!;
        if (done.has(onward)) break;
        done.add(onward);
        for (const id of links[onward]!.drawn) drawn.add(id);
        here = links[onward]!.from === here ? links[onward]!.to : links[onward]!.from;
        last = onward;
      }
      return here;
    };
    const to = follow(start, link.to);
    const from = follow(start, link.from);
    joined.push({ ...link, from, to, drawn: [...drawn].sort() });
  });
  return joined;
}

/** Euler's formula for a plane graph of c parts whose faces are counted by their walks: V − E + W = 2c. */
function isPlane(links: readonly Link[], faces: Faces, outerWalks: number): boolean {
  const places = new Set(links.flatMap(({ from, to }) => [from, to]));
  return places.size - links.length + faces.walks.length === 2 * outerWalks;
}

function numberVertices(
  incidence: Incidence,
  links: readonly Link[],
  pointsAt: ReadonlyMap<number, readonly string[]>,
): { vertices: Vertex[]; vertexOf: Map<number, number> } {
  const linesAt = new Map<number, Set<number>>();
  for (const { from, to, line } of links) {
    for (const place of [from, to]) linesAt.set(place, (linesAt.get(place) ?? new Set()).add(line));
  }
  const used = [...linesAt.keys()].sort((p, q) => {
    const a = incidence.places[p]!.at;
    const b = incidence.places[q]!.at;
    return a.y - b.y || a.x - b.x;
  });
  const vertexOf = new Map(used.map((place, index) => [place, index]));
  const vertices = used.map((place, index) => ({
    index,
    at: incidence.places[place]!.at,
    lines: [...linesAt.get(place)!].sort((k, l) => k - l),
    points: pointsAt.get(place) ?? [],
  }));
  return { vertices, vertexOf };
}

/** For each inner face, the outer walks of the islands that lie directly in it. */
function placeIslands(
  inner: readonly number[],
  islands: readonly number[],
  polygonOf: (face: number) => readonly Point[],
): Map<number, number[]> {
  const holesOf = new Map<number, number[]>();
  if (islands.length === 0) return holesOf;
  const polygons = new Map(inner.map((face) => [face, polygonOf(face)]));
  for (const island of islands) {
    const boundary = polygonOf(island);
    const holders = inner.filter((face) => {
      const polygon = polygons.get(face)!;
      return boundary.every((p) => contains(polygon, p) === 'inside');
    });
    const holder = holders.reduce<number | undefined>(
      (least, face) =>
        least === undefined || area(polygons.get(face)!) < area(polygons.get(least)!) ? face : least,
      undefined,
    );
    if (holder !== undefined) holesOf.set(holder, [...(holesOf.get(holder) ?? []), island]);
  }
  return holesOf;
}

function startAtTopLeft(walk: readonly number[], at: (half: number) => Point): number[] {
  const first = walk.reduce((best, half) => {
    const p = at(half);
    const q = at(best);
    return p.y < q.y || (p.y === q.y && p.x < q.x) ? half : best;
  });
  const i = walk.indexOf(first);
  return [...walk.slice(i), ...walk.slice(0, i)];
}

/** The ring without the places through which its boundary runs straight. */
function turningCorners(
  walk: readonly number[],
  links: readonly Link[],
  at: (place: number) => Point,
): Point[] {
  const corners: Point[] = [];
  walk.forEach((half, i) => {
    const before = walk[(i + walk.length - 1) % walk.length]!;
    const here = at(originOf(links, half));
    const sameLine = links[before >> 1]!.line === links[half >> 1]!.line;
    const previous = at(originOf(links, before));
    const following = at(originOf(links, opposite(half)));
    if (sameLine && distanceToLine(here, previous, following) <= SAME_COORDINATE) return;
    corners.push(here);
  });
  return corners;
}

/**
 * The drawn lines round a face, one for each straight side, turned to a start of its own: the least of all turned
 * sequences. An edge that several lines were drawn along counts under the first of their names.
 */
function signatureOf(walk: readonly number[], links: readonly Link[]): string {
  const sides = walk
    .filter((half, i) => {
      const before = walk[(i + walk.length - 1) % walk.length]!;
      return links[before >> 1]!.line !== links[half >> 1]!.line;
    })
    .map((half) => links[half >> 1]!.drawn[0]!);
  const turned = sides.map((_, i) => [...sides.slice(i), ...sides.slice(0, i)].join(' '));
  return turned.sort()[0] ?? '';
}
