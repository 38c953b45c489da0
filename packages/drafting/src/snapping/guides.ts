import type { LineId } from '@seamwright/arrangement';
import {
  add,
  cross,
  distance,
  distanceToSegment,
  dot,
  lineCrossing,
  nearestOnSegment,
  type Point,
  parameterOn,
  SAME_COORDINATE,
  scale,
  subtract,
} from '@seamwright/geometry';
import { angleFrom, toward } from '../angles.ts';
import type { DrawnLine } from '../lines.ts';
import { nearest } from '../nearest.ts';
import { type Grid, nearestGridPlace } from './grid.ts';
import type { SnapScene } from './snap-scene.ts';

/** What a line that is being drawn can be like, seen from its first end. */
export type GuideKind = 'perpendicular' | 'parallel' | 'equal' | 'angle';

/** A place that makes the line be like something. */
export interface GuidePlace {
  readonly kind: GuideKind;
  readonly reason: string;
  readonly at: Point;
  readonly on?: readonly LineId[];
  /** The line that it is square to, parallel to or as long as. */
  readonly like?: LineId;
}

/** A way from the first end along which the line would be like something. */
interface Ray {
  readonly kind: GuideKind;
  readonly reason: string;
  /** A unit vector. */
  readonly direction: Point;
  readonly like?: LineId;
}

export interface GuideOptions {
  /** The first end of the line. */
  readonly from: Point;
  readonly pointer: Point;
  readonly radius: number;
  /** Degrees between the angles that catch; 0: none do. */
  readonly angleStep: number;
  readonly grid: Grid | null;
  readonly wanted: (kind: GuideKind) => boolean;
}

const nameOf = ({ kind }: DrawnLine): string => (kind === 'edge' ? 'the edge' : 'a line');

/** Where the line would be square to a line near the pointer: at the foot on it. */
export function footNear(
  near: readonly DrawnLine[],
  { from, pointer, radius, wanted }: GuideOptions,
): GuidePlace | undefined {
  if (!wanted('perpendicular')) return undefined;
  const feet = near.flatMap((line): GuidePlace[] => {
    const share = parameterOn(line.from, line.to, from);
    const at = nearestOnSegment(from, line.from, line.to);
    // From a place on the line itself there is no way square to it that ends on it.
    if (share < 0 || share > 1 || distance(at, from) <= SAME_COORDINATE) return [];
    return [{ kind: 'perpendicular', reason: `square to ${nameOf(line)}`, at, on: [line.id], like: line.id }];
  });
  return nearest(feet, radius, ({ at }) => distance(at, pointer));
}

/** The ways from the first end that pass the pointer within the radius, one for each direction. */
export function raysNear(scene: SnapScene, options: GuideOptions): readonly Ray[] {
  const { from, pointer, radius, angleStep, wanted } = options;
  const way = subtract(pointer, from);
  const rays: Ray[] = [];
  const offer = (ray: Ray) => {
    const direction = dot(ray.direction, way) < 0 ? scale(ray.direction, -1) : ray.direction;
    if (Math.abs(cross(direction, way)) > radius) return;
    if (rays.some((known) => Math.abs(cross(known.direction, direction)) <= SAME_COORDINATE)) return;
    rays.push({ ...ray, direction });
  };
  const under = scene.lines.filter((line) => distanceToSegment(from, line.from, line.to) <= SAME_COORDINATE);
  if (wanted('perpendicular')) {
    for (const line of under) {
      const { x, y } = unit(line);
      const reason = `square to ${nameOf(line)} that it starts on`;
      offer({ kind: 'perpendicular', reason, direction: { x: -y, y: x }, like: line.id });
    }
  }
  if (wanted('parallel')) {
    for (const { direction, line } of scene.directions) {
      const along = under.find((each) => Math.abs(cross(unit(each), direction)) <= SAME_COORDINATE);
      if (along === undefined)
        offer({ kind: 'parallel', reason: `parallel to ${nameOf(line)}`, direction, like: line.id });
      // Along the line that it starts on there is nothing to draw, but beyond its end there is.
      else if (isBeyond(along, from, pointer))
        offer({ kind: 'parallel', reason: `straight on from ${nameOf(along)}`, direction, like: along.id });
    }
  }
  if (wanted('angle') && angleStep > 0) {
    const angle = Math.round(angleFrom(from, pointer) / angleStep) * angleStep;
    offer({ kind: 'angle', reason: `at ${degrees(angle)}`, direction: toward(angle) });
  }
  return rays;
}

const unit = ({ from, to }: DrawnLine): Point => {
  const size = distance(from, to);
  return { x: (to.x - from.x) / size, y: (to.y - from.y) / size };
};

/** Whether `from` is an end of the line and the pointer lies on the way past it. */
function isBeyond(line: DrawnLine, from: Point, pointer: Point): boolean {
  const other = distance(line.from, from) <= SAME_COORDINATE ? line.to : line.from;
  const isEnd = Math.min(distance(line.from, from), distance(line.to, from)) <= SAME_COORDINATE;
  return isEnd && dot(subtract(from, other), subtract(pointer, from)) > 0;
}

/** The way from the first end, as it can be typed. */
const degrees = (angle: number): string => `${Math.round((angle % 360) * 100) / 100}°`;

/** Where one of the rays meets a line near the pointer. */
export function rayOnLine(
  rays: readonly Ray[],
  near: readonly DrawnLine[],
  { from, pointer, radius }: GuideOptions,
): GuidePlace | undefined {
  const places = rays.flatMap((ray) =>
    near.flatMap((line): GuidePlace[] => {
      const at = lineCrossing(from, add(from, ray.direction), line.from, line.to);
      if (at === null || distanceToSegment(at, line.from, line.to) > SAME_COORDINATE) return [];
      const where = line.kind === 'edge' ? 'on the edge' : 'on a line';
      return [{ ...placeOn(ray, at), reason: `${ray.reason}, ${where}`, on: [line.id] }];
    }),
  );
  return nearest(places, radius, ({ at }) => distance(at, pointer));
}

/** A place along one of the rays: as long as another line, where the grid crosses it, or wherever the pointer is. */
export function alongRay(
  scene: SnapScene,
  rays: readonly Ray[],
  options: GuideOptions,
): GuidePlace | undefined {
  const { from, pointer, grid, radius } = options;
  const way = subtract(pointer, from);
  const ray = nearest(rays, radius, ({ direction }) => Math.abs(cross(direction, way)));
  if (ray === undefined) return undefined;
  const foot = add(from, scale(ray.direction, dot(ray.direction, way)));
  const equal = equalLength(scene, distance(from, foot), options);
  if (equal !== undefined) {
    const at = add(from, scale(ray.direction, equal.length));
    return { ...placeOn(ray, at), reason: `${ray.reason}, as long as ${nameOf(equal.line)}` };
  }
  if (grid === null) return placeOn(ray, foot);
  const reach = 2 * Math.max(grid.across, grid.down, radius);
  const stretch = { from, to: add(foot, scale(ray.direction, reach)) };
  const place = nearestGridPlace(foot, stretch, grid);
  return place === undefined
    ? placeOn(ray, foot)
    : { ...placeOn(ray, place.at), reason: `${ray.reason}, ${place.reason}` };
}

const placeOn = ({ kind, reason, like }: Ray, at: Point): GuidePlace => ({
  kind,
  reason,
  at,
  ...(like !== undefined && { like }),
});

/** The place towards the pointer that makes the line as long as another. */
export function equalNear(scene: SnapScene, options: GuideOptions): GuidePlace | undefined {
  const { from, pointer } = options;
  const size = distance(from, pointer);
  const equal = equalLength(scene, size, options);
  if (equal === undefined || size === 0) return undefined;
  const at = add(from, scale(subtract(pointer, from), equal.length / size));
  return { kind: 'equal', reason: `as long as ${nameOf(equal.line)}`, at, like: equal.line.id };
}

function equalLength(scene: SnapScene, size: number, { radius, wanted }: GuideOptions) {
  if (!wanted('equal')) return undefined;
  return nearest(scene.lengths, radius, ({ length }) => Math.abs(length - size));
}
