import {
  contains,
  distance,
  distanceToLine,
  distanceToSegment,
  edgesOf,
  lerp,
  lineCrossing,
  normalize,
  type Point,
  type Polygon,
  parameterOn,
  SAME_COORDINATE,
  type Segment,
  SNAP_DISTANCE,
  subtract,
} from '@seamwright/geometry';

/** A part of the way along a segment: shares from 0 at its first point to 1 at its second, in ascending order. */
type Stretch = readonly [from: number, to: number];

/**
 * The stretches of a segment that lie inside a polygon, in order, those along its edges left out. An end that is
 * inside, or off by no more than {@link SAME_COORDINATE}, is kept to the last digit.
 */
export function inside(polygon: Polygon, { a, b }: Segment): readonly Segment[] {
  const size = distance(a, b);
  if (size === 0) return [];
  const stops = [0, 1];
  for (const edge of edgesOf(polygon)) {
    for (const corner of [edge.a, edge.b])
      if (distanceToLine(corner, a, b) <= SAME_COORDINATE) stops.push(parameterOn(a, b, corner));
    const crossing = lineCrossing(a, b, edge.a, edge.b);
    if (crossing !== null && distanceToSegment(crossing, edge.a, edge.b) <= SAME_COORDINATE)
      stops.push(parameterOn(a, b, crossing));
  }
  const within = stops.filter((share) => share >= 0 && share <= 1).sort((s, t) => s - t);
  const found: Stretch[] = [];
  for (let i = 1; i < within.length; i++) {
    const [from, to] = [within[i - 1]!, within[i]!];
    if ((to - from) * size <= SAME_COORDINATE || !isInside(polygon, lerp(a, b, (from + to) / 2))) continue;
    const last = found.at(-1);
    if (last !== undefined && (from - last[1]) * size <= SAME_COORDINATE)
      found[found.length - 1] = [last[0], to];
    else found.push([from, to]);
  }
  return found.map((stretch) => cut({ a, b }, stretch));
}

function isInside(polygon: Polygon, at: Point): boolean {
  if (contains(polygon, at) !== 'inside') return false;
  return edgesOf(polygon).every(({ a, b }) => distanceToSegment(at, a, b) > SAME_COORDINATE);
}

/** The stretch of a segment between two shares of its way; ends that are as good as the segment's own are its own. */
function cut({ a, b }: Segment, [from, to]: Stretch): Segment {
  const size = distance(a, b);
  return {
    a: from * size <= SAME_COORDINATE ? a : lerp(a, b, from),
    b: (1 - to) * size <= SAME_COORDINATE ? b : lerp(a, b, to),
  };
}

/** Whether two segments lie on one straight line, as far as their ends tell. */
const areCollinear = (one: Segment, other: Segment): boolean => {
  const [long, short] = distance(one.a, one.b) >= distance(other.a, other.b) ? [one, other] : [other, one];
  return [short.a, short.b].every((end) => distanceToLine(end, long.a, long.b) <= SAME_COORDINATE);
};

/** How much of a segment another one on the same line covers, as shares of its way. */
function covered({ a, b }: Segment, by: Segment): Stretch {
  const shares = [parameterOn(a, b, by.a), parameterOn(a, b, by.b)];
  return [Math.max(0, Math.min(...shares)), Math.min(1, Math.max(...shares))];
}

/**
 * The segments with those that overlap along one line made one; such as only touch with their ends stay apart. Ends keep
 * their coordinates.
 */
export function united(segments: readonly Segment[]): readonly Segment[] {
  const result: Segment[] = [];
  for (const segment of segments) {
    let grown = segment;
    for (let i = result.length - 1; i >= 0; i--) {
      const other = result[i]!;
      if (!areCollinear(grown, other)) continue;
      const [from, to] = covered(grown, other);
      if ((to - from) * distance(grown.a, grown.b) <= SAME_COORDINATE) continue;
      grown = hull(grown, other);
      result.splice(i, 1);
    }
    result.push(grown);
  }
  return result;
}

/** The segment from end to end of two on one line. */
function hull({ a, b }: Segment, other: Segment): Segment {
  const ends = [a, b, other.a, other.b];
  const along = (p: Point) => parameterOn(a, b, p);
  const sorted = [...ends].sort((p, q) => along(p) - along(q));
  return { a: sorted[0]!, b: sorted.at(-1)! };
}

/** What the `lines` leave uncovered of a segment, stretches no longer than {@link SNAP_DISTANCE} left out. */
export function uncovered(segment: Segment, lines: readonly Segment[]): readonly Segment[] {
  const size = distance(segment.a, segment.b);
  const covers = lines
    .filter((line) => areCollinear(segment, line))
    .map((line) => covered(segment, line))
    .filter(([from, to]) => (to - from) * size > SAME_COORDINATE)
    .sort((s, t) => s[0] - t[0]);
  const left: Stretch[] = [];
  let reached = 0;
  for (const [from, to] of [...covers, [1, 1] as const]) {
    if ((from - reached) * size > SNAP_DISTANCE) left.push([reached, from]);
    reached = Math.max(reached, to);
  }
  return left.map((stretch) => cut(segment, stretch));
}

/** The segment moved sideways by a distance, inches: to the right hand of who walks from its first end to its second. */
export function moveSideways({ a, b }: Segment, by: number): Segment {
  const { x, y } = normalize(subtract(b, a));
  // Right of (x, y) on a screen, where y points down, is (−y, x).
  const moved = (p: Point): Point => ({ x: p.x - y * by, y: p.y + x * by });
  return { a: moved(a), b: moved(b) };
}

/** How far a place lies to the right hand of who walks along a segment, inches; negative to the left. */
export function rightOf({ a, b }: Segment, p: Point): number {
  const along = normalize(subtract(b, a));
  const { x, y } = subtract(p, a);
  return along.x * y - along.y * x;
}
