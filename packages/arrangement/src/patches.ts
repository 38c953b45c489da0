import {
  area,
  boundingBox,
  contains,
  deepestPoint,
  distanceToLine,
  type Point,
  SAME_COORDINATE,
  signedArea,
} from '@seamwright/geometry';
import { indexBoxes } from './boxes.ts';
import type { PointId } from './drawing.ts';
import { type Faces, type Link, opposite, originOf, outgoing, traceFaces } from './graph.ts';
import type { Incidence, Place } from './incidence.ts';
import type { Edge, Line, Patch, Vertex } from './types.ts';

type Structure = { vertices: Vertex[]; lines: Line[]; edges: Edge[]; patches: Patch[] };

/**
 * The finished structure of a graph in which every link divides two faces, or null when the links are no plane
 * drawing (lines were taken to meet that do not): the walks do not fit Euler's formula, or a part of the graph does
 * not have exactly one outer walk.
 *
 * @param pointsAt the maker's points that lie at a place
 */
export function buildStructure(
  incidence: Incidence,
  links: readonly Link[],
  pointsAt: (place: number) => readonly PointId[],
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
  const ringOf = (walk: readonly number[]) => walk.map((half) => vertexOf[originOf(joined, half)]!);
  const islands = outer.filter((face) => !faces.walks[face]!.some((half) => joined[half >> 1]!.onOutline));
  const holesOf = placeIslands(inner, islands, (face) => polygonOf(faces.walks[face]!));

  const drafts = inner.map((face) => {
    const walk = startAtTopLeft(faces.walks[face]!, (half) => at(originOf(joined, half)));
    const holes = holesOf.get(face) ?? [];
    const holeWalks = holes.map((hole) => faces.walks[hole]!);
    const polygon = turningCorners(walk, joined, at);
    const holePolygons = holeWalks.map(polygonOf);
    const { at: heart, depth } = deepestPoint(polygon, holePolygons);
    return {
      faces: [face, ...holes],
      holes: holeWalks.map(ringOf),
      ring: ringOf(walk),
      edges: walk.map((half) => half >> 1),
      border: [walk, ...holeWalks].flat().map((half) => half >> 1),
      polygon,
      area: area(polygon) - holePolygons.reduce((sum, hole) => sum + area(hole), 0),
      heart,
      depth,
      signature: signatureOf(walk, joined),
    };
  });
  // By place on the block, so that the numbers do not depend on the order in which the splits were drawn.
  const round = (v: number) => Math.round(v / SAME_COORDINATE);
  const placed = drafts.map((draft) => ({ draft, x: round(draft.heart.x), y: round(draft.heart.y) }));
  placed.sort((p, q) => p.y - q.y || p.x - q.x);

  const patchOf = new Int32Array(faces.walks.length).fill(-1);
  placed.forEach(({ draft }, index) => {
    for (const face of draft.faces) patchOf[face] = index;
  });
  const patchAt = (half: number) => patchOf[faces.faceOf[half]!]!;

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
      from: vertexOf[link.from]!,
      to: vertexOf[link.to]!,
      line: link.line,
      drawn: link.drawn,
      right: patchAt(2 * index),
      left: patchAt(opposite(2 * index)),
    })),
    patches: placed.map(({ draft: { faces: _, ...patch } }, index) => ({ ...patch, index })),
  };
}

/** Joins links at places where nothing but one straight line passes. */
function withoutStraightPlaces(links: readonly Link[], places: readonly Place[]): Link[] {
  const leaving = outgoing(links);
  const passable = (place: number, line: number) => {
    const here = leaving[place]!;
    return (
      !places[place]!.corner && here.length === 2 && here.every((half) => links[half >> 1]!.line === line)
    );
  };

  const done = new Uint8Array(links.length);
  const joined: Link[] = [];
  links.forEach((link, start) => {
    if (done[start] === 1) return;
    done[start] = 1;
    const drawn = [...link.drawn];
    const follow = (from: number, place: number): number => {
      let here = place;
      let last = from;
      while (passable(here, link.line)) {
        const onward = leaving[here]!.find((half) => half >> 1 !== last)!;
        last = onward >> 1;
        if (done[last] === 1) break;
        done[last] = 1;
        drawn.push(...links[last]!.drawn);
        here = originOf(links, opposite(onward));
      }
      return here;
    };
    const to = follow(start, link.to);
    const from = follow(start, link.from);
    joined.push({ ...link, from, to, drawn: [...new Set(drawn)].sort() });
  });
  return joined;
}

/** Euler's formula for a plane graph of c parts whose faces are counted by their walks: V − E + W = 2c. */
function isPlane(links: readonly Link[], faces: Faces, outerWalks: number): boolean {
  const places = outgoing(links).filter(({ length }) => length > 0).length;
  return places - links.length + faces.walks.length === 2 * outerWalks;
}

/** Numbers the places that are left from the top down, from left to right. */
function numberVertices(
  incidence: Incidence,
  links: readonly Link[],
  pointsAt: (place: number) => readonly PointId[],
): { vertices: Vertex[]; vertexOf: Int32Array } {
  const at = (place: number) => incidence.places[place]!.at;
  const leaving = outgoing(links);
  const used = leaving.flatMap(({ length }, place) => (length > 0 ? [place] : []));
  used.sort((p, q) => at(p).y - at(q).y || at(p).x - at(q).x);
  const vertexOf = new Int32Array(leaving.length);
  const vertices = used.map((place, index) => {
    vertexOf[place] = index;
    const lines = leaving[place]!.map((half) => links[half >> 1]!.line).sort((k, l) => k - l);
    return {
      index,
      at: at(place),
      lines: lines.filter((line, i) => line !== lines[i - 1]),
      points: pointsAt(place),
    };
  });
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
  const polygons = inner.map(polygonOf);
  const index = indexBoxes(polygons.map(boundingBox));
  for (const island of islands) {
    const boundary = polygonOf(island);
    const { minX, minY, maxX, maxY } = boundingBox(boundary);
    const holders = index
      .search(minX, minY, maxX, maxY)
      .filter((i) => boundary.every((p) => contains(polygons[i]!, p) === 'inside'));
    const size = (i: number) => area(polygons[i]!);
    // In the order of the faces, so that the first of two of one size is taken.
    holders.sort((i, j) => size(i) - size(j) || i - j);
    const [holder] = holders;
    if (holder === undefined) continue;
    const face = inner[holder]!;
    const holes = holesOf.get(face);
    if (holes === undefined) holesOf.set(face, [island]);
    else holes.push(island);
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
    .map((half) => `${links[half >> 1]!.drawn[0]!} `);
  const least = [...sides].sort()[0] ?? '';
  // The least sequence starts with the least side: few are written out.
  const turned = sides.flatMap((side, i) =>
    side.startsWith(least) ? [[...sides.slice(i), ...sides.slice(0, i)].join('').slice(0, -1)] : [],
  );
  return turned.sort()[0] ?? '';
}
