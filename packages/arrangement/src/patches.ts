import { area, deepestPoint, SAME_COORDINATE, signedArea } from '@seamwright/geometry';
import type { PointId } from './drawing.ts';
import { type Link, Outgoing, opposite, originOf, traceFaces } from './graph.ts';
import type { Incidence } from './incidence.ts';
import { placeIslands } from './islands.ts';
import { signatureOf, startAtTopLeft, turningCorners } from './rings.ts';
import { withoutStraightPlaces } from './straight-places.ts';
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
  const { vertices, vertexOf } = numberVertices(incidence, joined, pointsAt);
  // Euler's formula for a plane graph of c parts whose faces are counted by their walks: V − E + W = 2c.
  if (vertices.length - joined.length + faces.walks.length !== 2 * outer.length) return null;

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
    const edges = walk.map((half) => half >> 1);
    return {
      faces: [face, ...holes],
      holes: holeWalks.map(ringOf),
      ring: ringOf(walk),
      edges,
      // One list where they are the same: half as much to copy for who sends a block elsewhere.
      border: holes.length === 0 ? edges : [...edges, ...holeWalks.flat().map((half) => half >> 1)],
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

/** Numbers the places that are left from the top down, from left to right. */
function numberVertices(
  incidence: Incidence,
  links: readonly Link[],
  pointsAt: (place: number) => readonly PointId[],
): { vertices: Vertex[]; vertexOf: Int32Array } {
  const outgoing = new Outgoing(links);
  const used: number[] = [];
  for (let place = 0; place < outgoing.places; place += 1) if (outgoing.degree(place) > 0) used.push(place);
  const xs = Float64Array.from(incidence.places, (place) => place.at.x);
  const ys = Float64Array.from(incidence.places, (place) => place.at.y);
  used.sort((p, q) => ys[p]! - ys[q]! || xs[p]! - xs[q]!);
  const vertexOf = new Int32Array(outgoing.places);
  const vertices = used.map((place, index) => {
    vertexOf[place] = index;
    const lines = outgoing.from(place).map((half) => links[half >> 1]!.line);
    lines.sort((k, l) => k - l);
    return {
      index,
      at: incidence.places[place]!.at,
      lines: lines.filter((line, i) => line !== lines[i - 1]),
      points: pointsAt(place),
    };
  });
  return { vertices, vertexOf };
}
