import type { Drawing, DrawingPoint } from '@seamwright/arrangement';
import {
  contains,
  distance,
  isOnSegment,
  lerp,
  midpoint,
  normalize,
  type Point,
  parameterOn,
  SAME_COORDINATE,
  SNAP_DISTANCE,
  segmentCrossing,
  subtract,
} from '@seamwright/geometry';
import { centreOf } from '../centre.ts';
import { outlineOf } from '../checks.ts';
import type { Followers } from '../facts.ts';
import { type DrawnLine, drawnLines } from '../lines.ts';
import { type CatchPlace, Places } from './places.ts';

/** What a pointer can be caught by. Worked out once for a drawing, then asked at every move. */
export interface SnapScene {
  /** Corners and ends, then crossings, then middles. */
  readonly places: readonly CatchPlace[];
  readonly lines: readonly DrawnLine[];
  /** The directions in which lines run, each once: unit vectors, to the right or straight down. */
  readonly directions: readonly { readonly direction: Point; readonly line: DrawnLine }[];
  /** How long lines are, each length once, inches. */
  readonly lengths: readonly { readonly length: number; readonly line: DrawnLine }[];
}

const known = new WeakMap<Drawing, SnapScene>();

/** The scene of a drawing. While a point is dragged, what follows it is left out: nothing is caught by itself. */
export function snapScene(drawing: Drawing, leavingOut?: Followers): SnapScene {
  if (leavingOut === undefined) {
    const scene = known.get(drawing) ?? makeScene(drawing);
    known.set(drawing, scene);
    return scene;
  }
  return makeScene(drawing, leavingOut);
}

function makeScene(drawing: Drawing, leavingOut?: Followers): SnapScene {
  const places = new Places();
  const all = [...drawnLines(drawing).values()];
  const lines = all.filter(({ id }) => !leavingOut?.lines.has(id));
  const points = Object.values(drawing.points).filter(({ id }) => !leavingOut?.points.has(id));
  addPoints(drawing, points, places);
  const shares = addCrossings(lines, points, places);
  for (const line of lines) addMiddle(line, places);
  lines.forEach((line, i) => {
    addMiddlesBetween(line, shares[i]!, places);
  });
  if (lines.length === all.length) addBlockMiddle(drawing, places);
  return { places: places.all, lines, directions: directionsOf(lines), lengths: lengthsOf(lines) };
}

function directionsOf(lines: readonly DrawnLine[]): SnapScene['directions'] {
  const all = lines.map((line) => {
    const { x, y } = normalize(subtract(line.to, line.from));
    // Level lines that differ by a rounding must not come out as left and right.
    const isLeftward = x < -SAME_COORDINATE || (x <= SAME_COORDINATE && y < 0);
    return { direction: isLeftward ? { x: 0 - x, y: 0 - y } : { x, y }, line };
  });
  return once(all, ({ direction: { x, y } }) => Math.atan2(y, x));
}

const lengthsOf = (lines: readonly DrawnLine[]): SnapScene['lengths'] =>
  once(
    lines.map((line) => ({ length: distance(line.from, line.to), line })),
    ({ length }) => length,
  );

/** Of items that measure the same ({@link SAME_COORDINATE}) the first, in the order of their measure. */
function once<T>(items: readonly T[], measure: (item: T) => number): readonly T[] {
  const sorted = items.map((item) => ({ item, size: measure(item) })).sort((a, b) => a.size - b.size);
  return sorted
    .filter(({ size }, i) => i === 0 || size - sorted[i - 1]!.size > SAME_COORDINATE)
    .map(({ item }) => item);
}

function addPoints(drawing: Drawing, points: readonly DrawingPoint[], places: Places): void {
  const corners = new Set(drawing.outline);
  const isCorner = ({ id }: DrawingPoint) => corners.has(id);
  for (const { id, x, y } of points.filter(isCorner))
    places.add({ kind: 'corner', reason: 'corner of the block', at: { x, y }, point: id });
  for (const { id, x, y } of points.filter((point) => !isCorner(point)))
    places.add({ kind: 'end', reason: 'end of a line', at: { x, y }, point: id });
}

/** Adds the crossings; gives for each line the shares of the way along it at which others meet it. */
function addCrossings(
  lines: readonly DrawnLine[],
  points: readonly DrawingPoint[],
  places: Places,
): readonly (readonly number[])[] {
  const shares: number[][] = lines.map(() => []);
  lines.forEach((one, i) => {
    for (let j = i + 1; j < lines.length; j++) {
      const other = lines[j]!;
      const crossing = segmentCrossing(one.from, one.to, other.from, other.to);
      if (crossing === null) continue;
      const { x, y } = crossing.at;
      places.add({
        kind: 'crossing',
        reason: reasonOfCrossing(one, other),
        at: { x, y },
        on: [one.id, other.id],
      });
      shares[i]!.push(crossing.t);
      shares[j]!.push(crossing.u);
    }
    // Ends that were put on this line may miss it by a rounding.
    for (const point of points) {
      if (isOnSegment(point, one.from, one.to, SNAP_DISTANCE))
        shares[i]!.push(parameterOn(one.from, one.to, point));
    }
  });
  return shares;
}

function reasonOfCrossing(one: DrawnLine, other: DrawnLine): string {
  const onEdge = one.kind === 'edge' || other.kind === 'edge';
  return onEdge ? 'crossing of a line and the edge' : 'crossing of two lines';
}

const nameOf = ({ kind }: DrawnLine): string => (kind === 'edge' ? 'the edge' : 'a line');

function addMiddle(line: DrawnLine, places: Places): void {
  const { id, from, to } = line;
  places.add({ kind: 'middle', reason: `middle of ${nameOf(line)}`, at: midpoint(from, to), on: [id] });
}

/** The middles of the stretches between neighbouring places where other lines meet this one. */
function addMiddlesBetween(line: DrawnLine, shares: readonly number[], places: Places): void {
  const { id, from, to } = line;
  const size = distance(from, to);
  const stops = [0, ...[...shares].sort((a, b) => a - b), 1];
  for (let i = 1; i < stops.length; i++) {
    const [start, end] = [stops[i - 1]!, stops[i]!];
    // In a stretch this short the middle would be one of its ends.
    if ((end - start) * size <= 2 * SNAP_DISTANCE) continue;
    const at = lerp(from, to, (start + end) / 2);
    places.add({ kind: 'middle', reason: `middle of a stretch of ${nameOf(line)}`, at, on: [id] });
  }
}

/** The block's centre, where it lies inside. */
function addBlockMiddle(drawing: Drawing, places: Places): void {
  const at = centreOf(drawing);
  if (contains(outlineOf(drawing), at) === 'inside')
    places.add({ kind: 'middle', reason: 'middle of the block', at });
}
