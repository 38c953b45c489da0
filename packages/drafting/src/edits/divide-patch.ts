import type { Drawing } from '@seamwright/arrangement';
import {
  area,
  contains,
  distance,
  edgesOf,
  fail,
  nearestOnSegment,
  type Point,
  type Polygon,
  parameterOn,
  perimeter,
  type Result,
  SNAP_DISTANCE,
  signedArea,
} from '@seamwright/geometry';
import { angleFrom, placeByMeasure } from '../angles.ts';
import { nearest } from '../nearest.ts';
import { inside, moveSideways, rightOf } from '../stretches.ts';
import { addLines } from './add-lines.ts';

/** The most parts that a patch is divided into at once; more would be a mistyped number. */
export const MOST_PARTS = 60;

const badCount = (what: string, least: number) =>
  fail(`That is no number of ${what}`, '', `Give a whole number from ${least} to ${MOST_PARTS}`);

const isCount = (count: number, least: number): boolean =>
  Number.isInteger(count) && count >= least && count <= MOST_PARTS;

/**
 * Divides a patch into `count` bands of one width, parallel to its side that runs from corner `side` to the next.
 *
 * @param patch the corners of the patch, either way round, inches
 */
export function divideInBands(
  drawing: Drawing,
  patch: Polygon,
  count: number,
  side: number,
): Result<Drawing> {
  if (!isCount(count, 2)) return badCount('bands', 2);
  const along = edgesOf(patch)[side];
  if (along === undefined || area(patch) === 0)
    return fail('The patch does not have that side', `side ${side + 1}`, 'Choose another side');
  const offsets = patch.map((corner) => rightOf(along, corner));
  const [least, most] = [Math.min(...offsets), Math.max(...offsets)];
  const width = (most - least) / count;
  if (width <= SNAP_DISTANCE)
    return fail('The bands would be too narrow to be told apart', '', 'Give a smaller number');
  const reach = perimeter(patch) / distance(along.a, along.b);
  const lines = Array.from({ length: count - 1 }, (_, k) => {
    const { a, b } = moveSideways(along, least + (k + 1) * width);
    return inside(patch, { a: beyond(b, a, reach), b: beyond(a, b, reach) });
  });
  return addLines(drawing, lines.flat());
}

/** The place past `b` on the way from `a`, so many times their distance farther. */
const beyond = (a: Point, b: Point, times: number): Point => ({
  x: b.x + (b.x - a.x) * times,
  y: b.y + (b.y - a.y) * times,
});

/**
 * Divides a patch by a fan of `rays` from a place of it: from a corner or a side, the angle there is divided into equal
 * parts; from a place inside, the rays go all round, the first at the angle `first` (degrees, see angles.ts). Each ray
 * ends where it first leaves the patch.
 *
 * @param patch the corners of the patch, inches
 */
export function divideInFan(
  drawing: Drawing,
  patch: Polygon,
  from: Point,
  rays: number,
  first = 90,
): Result<Drawing> {
  if (!isCount(rays, 1)) return badCount('rays', 1);
  if (!Number.isFinite(first)) return fail('The angle is not a number', '', 'Give degrees, such as 45');
  const hub = hubIn(patch, from);
  if (hub === null)
    return fail(
      'The rays would begin outside the patch',
      '',
      'Begin on one of its corners or sides, or inside',
    );
  const { at, start, sweep } = hub;
  const angles = Array.from({ length: rays }, (_, k) =>
    sweep === null ? first + (360 * k) / rays : start + (sweep * (k + 1)) / (rays + 1),
  );
  const reach = perimeter(patch);
  const lines = angles.flatMap((angle) =>
    inside(patch, { a: at, b: placeByMeasure(at, reach, angle) }).slice(0, 1),
  );
  return addLines(drawing, lines);
}

interface Hub {
  readonly at: Point;
  /** The angle of the side from which the rays are counted, and how far they sweep; null when they go all round. */
  readonly start: number;
  readonly sweep: number | null;
}

function hubIn(patch: Polygon, from: Point): Hub | null {
  const clockwise = signedArea(patch) > 0 ? patch : [...patch].reverse();
  const count = clockwise.length;
  const between = (at: Point, next: Point, before: Point): Hub => {
    const start = angleFrom(at, next);
    const turned = (angleFrom(at, before) - start + 360) % 360;
    // On the screen the inside lies clockwise of the side to the next corner, and angles grow anticlockwise.
    return { at, start, sweep: turned - 360 };
  };
  const corner = clockwise.findIndex((p) => distance(p, from) <= SNAP_DISTANCE);
  if (corner >= 0)
    return between(
      clockwise[corner]!,
      clockwise[(corner + 1) % count]!,
      clockwise[(corner + count - 1) % count]!,
    );
  const side = nearest(edgesOf(clockwise), SNAP_DISTANCE, ({ a, b }) =>
    distance(from, nearestOnSegment(from, a, b)),
  );
  if (side !== undefined) {
    const share = parameterOn(side.a, side.b, from);
    const at = nearestOnSegment(from, side.a, side.b);
    return share >= 0 && share <= 1 ? between(at, side.b, side.a) : null;
  }
  return contains(clockwise, from) === 'inside' ? { at: from, start: 0, sweep: null } : null;
}
