import type { LineId } from '@seamwright/arrangement';
import {
  distance,
  distanceToSegment,
  isOnSegment,
  nearestOnSegment,
  type Point,
  SAME_COORDINATE,
  SNAP_DISTANCE,
} from '@seamwright/geometry';
import type { DrawnLine } from '../lines.ts';
import { nearest } from '../nearest.ts';
import type { Placement } from '../placement.ts';
import { type Grid, gridOf, nearestGridPlace, nearestOnGrid } from './grid.ts';
import {
  alongRay,
  equalNear,
  footNear,
  type GuideKind,
  type GuideOptions,
  type GuidePlace,
  rayOnLine,
  raysNear,
} from './guides.ts';
import type { CatchPlace } from './places.ts';
import type { SnapScene } from './snap-scene.ts';

export type SnapKind = CatchPlace['kind'] | GuideKind | 'line' | 'edge' | 'grid' | 'free';

/** The kinds that can be switched on and off, in the order of their rank, with their names for the maker. */
export const SNAP_KINDS: readonly { readonly kind: Exclude<SnapKind, 'free'>; readonly name: string }[] = [
  { kind: 'corner', name: 'Corners of the block' },
  { kind: 'end', name: 'Ends of lines' },
  { kind: 'crossing', name: 'Crossings' },
  { kind: 'middle', name: 'Middles' },
  { kind: 'perpendicular', name: 'Square to a line' },
  { kind: 'parallel', name: 'Parallel to a line' },
  { kind: 'angle', name: 'Angle steps' },
  { kind: 'line', name: 'On a line' },
  { kind: 'edge', name: 'On the edge' },
  { kind: 'equal', name: 'As long as another line' },
  { kind: 'grid', name: 'Grid' },
];

/** What the pointer was caught by. */
export interface Snap extends Placement {
  readonly kind: SnapKind;
  /** What it is, for beside the pointer, e.g. `end of a line`; empty when nothing was caught. */
  readonly reason: string;
  /** The line that the one being drawn would be square to, parallel to or as long as. */
  readonly like?: LineId;
}

export interface SnapOptions {
  /** How far away the pointer is still caught, inches on the block: a distance on the screen divided by the zoom. */
  readonly radius: number;
  /** Spacing of the grid, inches, its lines through the block's origin; 0 for none; or any {@link Grid}. */
  readonly grid: number | Grid;
  /** What may be caught; everything when left out. `free` is always there. */
  readonly kinds?: ReadonlySet<SnapKind>;
  /** The first end of the line that is being drawn: only with it can a place be square, parallel, as long or at an angle. */
  readonly from?: Point;
  /** Degrees between the angles that catch, from level; none when left out or 0. */
  readonly angleStep?: number;
}

/** Catches nothing but what the pointer is on already: for fine placing. */
export const EXACTLY: SnapOptions = { radius: SNAP_DISTANCE, grid: 0 };

const byRank: readonly (readonly SnapKind[])[] = [['corner', 'end'], ['crossing'], ['middle']];

/**
 * What a pointer at `pointer` means. Inches on the block.
 *
 * Within the radius the first of these that there is, and of several such the nearest:
 *
 * 1. a point: a corner of the block, an end of a line
 * 2. a crossing
 * 3. a middle: of a line, of a stretch between two crossings, of the block
 * 4. the foot of the new line square to a line
 * 5. where the new line, square to the line that it starts on, parallel to a line, straight on from one or at a step of
 *    the angle, meets a line; but where it is only the step of the angle, a place of the grid on that line, if that is nearer
 * 6. a place on a line or on the edge
 * 7. a place that makes the new line run as in 5: there as long as another line, else where the grid crosses it; but a
 *    point of the grid, if that is nearer
 * 8. a point of the grid; without a grid, a place that makes the new line as long as another
 *
 * A rarer thing wins over a commoner one however near the commoner one is, because the commoner one can be had a little
 * farther along, and the rarer one nowhere else.
 *
 * With a grid, a place on a line is the nearest one at which the line meets the grid; and where nothing else is in reach,
 * the nearest grid point catches from any distance: whoever draws on a grid wants no end off it.
 */
export function snap(pointer: Point, scene: SnapScene, options: SnapOptions): Snap {
  const { radius, kinds, from, angleStep = 0 } = options;
  const wanted = (kind: SnapKind) => kinds === undefined || kinds.has(kind);

  for (const rank of byRank) {
    const near = nearest(scene.places, radius, ({ kind, at }) =>
      rank.includes(kind) && wanted(kind) ? distance(at, pointer) : Infinity,
    );
    if (near !== undefined) return near;
  }

  const grid = wanted('grid') ? gridOf(options.grid) : null;
  const near = scene.lines.filter(
    ({ kind, from, to }) =>
      wanted(kind === 'edge' ? 'edge' : 'line') && isOnSegment(pointer, from, to, radius),
  );
  const guides: GuideOptions | undefined =
    from === undefined || distance(from, pointer) <= radius
      ? undefined
      : { from, pointer, radius, angleStep, grid, wanted };
  const rays = guides === undefined ? [] : raysNear(scene, guides);
  const line = nearest(near, radius, ({ from: a, to: b }) => distanceToSegment(pointer, a, b));
  if (guides !== undefined) {
    const meeting = footNear(near, guides) ?? rayOnLine(rays, near, guides);
    if (meeting !== undefined && !givesWay(meeting, line, grid, pointer)) return meeting;
  }

  if (line === undefined && guides !== undefined) {
    const guided = alongRay(scene, rays, guides) ?? (grid === null ? equalNear(scene, guides) : undefined);
    const off = grid === null ? Infinity : distance(nearestOnGrid(pointer, grid), pointer) + SAME_COORDINATE;
    if (guided !== undefined && distance(guided.at, pointer) <= off)
      return onWhatIsThere(guided, scene, kinds);
  }
  if (grid !== null) {
    const led: Snap =
      line === undefined
        ? { kind: 'grid', reason: 'on the grid', at: nearestOnGrid(pointer, grid) }
        : onLine(pointer, line, grid);
    // The grid reaches farther than the radius: where it leads there may be a point, or a line.
    const there = snap(led.at, scene, { ...EXACTLY, ...(kinds && { kinds }) });
    if (there.kind === 'free') return led;
    if (there.kind !== 'line' && there.kind !== 'edge') return there;
    return line === undefined ? { ...there, reason: `${there.reason}, at the grid` } : led;
  }
  if (line !== undefined) return onLine(pointer, line, null);
  return { kind: 'free', reason: '', at: { x: pointer.x, y: pointer.y } };
}

/**
 * Whether a step of the angle that meets a line gives way to the grid there. Such steps are many, and near any place
 * where a line meets the grid there is one: whoever points at the grid would be put a little beside it.
 */
function givesWay(
  meeting: GuidePlace,
  line: DrawnLine | undefined,
  grid: Grid | null,
  pointer: Point,
): boolean {
  if (meeting.kind !== 'angle' || grid === null || line === undefined) return false;
  const onGrid = distance(onLine(pointer, line, grid).at, pointer);
  return onGrid + SAME_COORDINATE < distance(meeting.at, pointer);
}

/** A place that a guide led to, with the point or the lines that are in that very place. */
function onWhatIsThere(guided: GuidePlace, scene: SnapScene, kinds: SnapOptions['kinds']): Snap {
  const there = snap(guided.at, scene, { ...EXACTLY, ...(kinds && { kinds }) });
  if (there.point === undefined && there.on === undefined) return guided;
  if (distance(there.at, guided.at) > SAME_COORDINATE) return guided;
  const { at, point, on } = there;
  return { ...guided, at, ...(point !== undefined && { point }), ...(on !== undefined && { on }) };
}

function onLine(pointer: Point, line: DrawnLine, grid: Grid | null): Snap {
  const { from, to, id } = line;
  const kind = line.kind === 'edge' ? 'edge' : 'line';
  const name = kind === 'edge' ? 'on the edge' : 'on a line';
  const foot = nearestOnSegment(pointer, from, to);
  const place = grid === null ? undefined : nearestGridPlace(foot, line, grid, line.kind);
  return place === undefined
    ? { kind, reason: name, at: foot, on: [id] }
    : { kind, reason: `${name}, ${place.reason}`, at: place.at, on: [id] };
}

/**
 * Typed coordinates as a placement: on the point or the lines that are in that very place. A middle nearby does not
 * pull: who types a number means it.
 */
export const placeExactly = (at: Point, scene: SnapScene): Snap =>
  snap(at, scene, { ...EXACTLY, kinds: solid });

const solid: ReadonlySet<SnapKind> = new Set(['corner', 'end', 'crossing', 'line', 'edge']);

/** Places to catch in reading order (rows from the top, each from the left), for going through them by key. */
export function inReadingOrder(places: readonly CatchPlace[]): readonly CatchPlace[] {
  const row = ({ at }: CatchPlace) => Math.round(at.y / SNAP_DISTANCE);
  return [...places].sort((p, q) => row(p) - row(q) || p.at.x - q.at.x);
}
