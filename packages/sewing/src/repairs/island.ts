import { type Arrangement, arrange, type Drawing, type Finding, placeOn, say } from '@seamwright/arrangement';
import { cross, distance, type Point, SAME_COORDINATE, subtract } from '@seamwright/geometry';
import type { Candidate } from './candidate.ts';
import { extended } from './extend.ts';
import { type SeamEnd, stopsAhead } from './ways-on.ts';

/** Corners of an island: one with more is freed by more lines than a maker would want. */
const MOST_CORNERS = 8;

/**
 * The ways of freeing an island with convex corners: its first side runs on both ways to the next lines, and each further
 * side, on the way round, runs on to the lines that are there then. So the patch round it is sewn on side after side, as in a log
 * cabin.
 */
export function islandRepairs(drawing: Drawing, arrangement: Arrangement, { at }: Finding): Candidate[] {
  const corners = islandCorners(arrangement, at);
  if (corners === null) return [];
  return [corners, [...corners].reverse()].flatMap((round) =>
    round.flatMap((_, i) => freed(drawing, arrangement, [...round.slice(i), ...round.slice(0, i)]) ?? []),
  );
}

/** The corners of the island that has a vertex at one of the places, in order; null where one of them points inwards. */
function islandCorners({ patches, vertices }: Arrangement, places: readonly Point[]): Point[] | null {
  const isPlace = ({ x, y }: Point) => places.some((p) => p.x === x && p.y === y);
  const hole = patches
    .flatMap(({ holes }) => holes)
    .find((ring) => ring.some((v) => isPlace(vertices[v]!.at)));
  if (hole === undefined) return null;
  const ring = hole.map((v) => vertices[v]!.at);
  const turns = ring.map((p, i) => {
    const before = ring[(i + ring.length - 1) % ring.length]!;
    const after = ring[(i + 1) % ring.length]!;
    return cross(subtract(p, before), subtract(after, p)) / distance(before, after);
  });
  const corners = ring.filter((_, i) => Math.abs(turns[i]!) > SAME_COORDINATE);
  const convex =
    turns.every((turn) => turn <= SAME_COORDINATE) || turns.every((turn) => turn >= -SAME_COORDINATE);
  return convex && corners.length <= MOST_CORNERS ? corners : null;
}

function freed(drawing: Drawing, arrangement: Arrangement, corners: readonly Point[]): Candidate | null {
  const side = (i: number): [Point, Point] => [corners[i]!, corners[(i + 1) % corners.length]!];
  const [first, second] = side(0);
  const runs: [Point, Point][] = [[second, first]];
  for (let i = 0; i + 1 < corners.length; i += 1) runs.push(side(i));

  let changed = drawing;
  const splits: [Point, Point][] = [];
  for (const [from, to] of runs) {
    const now = arrange(changed);
    if (!now.ok) return null;
    const seam = sideEnding(now.value, from, to);
    const stop = seam === null ? undefined : stopsAhead(now.value, seam)[0];
    if (seam === null || stop === undefined) return null;
    changed = extended(changed, now.value, seam, stop);
    splits.push([to, stop.at]);
  }
  const length = splits.reduce((sum, [a, b]) => sum + distance(a, b), 0);
  return {
    kind: 'reach',
    message: say`Let the sides of the shape run on to the next lines, from ${placeOn(first, arrangement.outline)} round to ${placeOn(corners.at(-1)!, arrangement.outline)}`,
    drawing: changed,
    splits,
    patches: runs.length - 1,
    seamLength: length,
    takesAway: false,
  };
}

function sideEnding({ vertices }: Arrangement, from: Point, to: Point): SeamEnd | null {
  const vertexAt = (p: Point) => vertices.find(({ at }) => distance(at, p) <= SAME_COORDINATE);
  const [start, end] = [vertexAt(from), vertexAt(to)];
  const line = start?.lines.find((l) => end?.lines.includes(l));
  if (start === undefined || end === undefined || line === undefined) return null;
  return { line, vertex: end.index, start: start.index };
}
