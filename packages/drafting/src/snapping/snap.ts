import {
  distance,
  distanceToSegment,
  lerp,
  nearestOnSegment,
  type Point,
  SNAP_DISTANCE,
} from '@seamwright/geometry';
import type { DrawnLine } from '../lines.ts';
import { nearest } from '../nearest.ts';
import type { Placement } from '../placement.ts';
import type { CatchPlace } from './places.ts';
import type { SnapScene } from './snap-scene.ts';

export type SnapKind = CatchPlace['kind'] | 'line' | 'edge' | 'grid' | 'free';

/** What the pointer was caught by. */
export interface Snap extends Placement {
  readonly kind: SnapKind;
  /** What it is, for beside the pointer, e.g. `end of a line`; empty when nothing was caught. */
  readonly reason: string;
}

export interface SnapOptions {
  /** How far away the pointer is still caught, inches on the block: a distance on the screen divided by the zoom. */
  readonly radius: number;
  /** Spacing of the grid, inches; 0 for none. Its lines run through the block's origin. */
  readonly grid: number;
  /** What may be caught; everything when left out. `free` is always there. */
  readonly kinds?: ReadonlySet<SnapKind>;
}

/** Catches nothing but what the pointer is on already: for fine placing. */
export const EXACTLY: SnapOptions = { radius: SNAP_DISTANCE, grid: 0 };

const byRank: readonly (readonly SnapKind[])[] = [['corner', 'end'], ['crossing'], ['middle']];

/**
 * What a pointer at `pointer` means. Inches on the block.
 *
 * Within the radius a point that is there already comes before a crossing, a crossing before a middle, a middle
 * before any other place on a line or edge; among equals the nearest is taken. A rarer thing wins over a commoner one
 * however near the commoner one is, because the commoner one can be had a little farther along, and the
 * rarer one nowhere else.
 *
 * With a grid, a place on a line is the nearest one at which the line meets the grid; and where no line is in reach,
 * the nearest grid point catches from any distance: whoever draws on a grid wants no end off it.
 */
export function snap(pointer: Point, scene: SnapScene, options: SnapOptions): Snap {
  const { radius, grid, kinds } = options;
  const wanted = (kind: SnapKind) => kinds === undefined || kinds.has(kind);

  for (const rank of byRank) {
    const near = nearest(scene.places, radius, ({ kind, at }) =>
      rank.includes(kind) && wanted(kind) ? distance(at, pointer) : Infinity,
    );
    if (near !== undefined) return near;
  }

  const line = nearest(scene.lines, radius, ({ kind, from, to }) =>
    wanted(kind === 'edge' ? 'edge' : 'line') ? distanceToSegment(pointer, from, to) : Infinity,
  );
  const step = wanted('grid') ? grid : 0;
  if (step > 0) {
    const led: Snap =
      line === undefined
        ? { kind: 'grid', reason: 'on the grid', at: nearestOnGrid(pointer, step) }
        : onLine(pointer, line, step);
    // The grid reaches farther than the radius: where it leads there may be a point, or a line.
    const there = snap(led.at, scene, { ...EXACTLY, ...(kinds && { kinds }) });
    if (there.kind === 'free') return led;
    if (there.kind !== 'line' && there.kind !== 'edge') return there;
    return line === undefined ? { ...there, reason: `${there.reason}, at the grid` } : led;
  }
  if (line !== undefined) return onLine(pointer, line, step);
  return { kind: 'free', reason: '', at: { x: pointer.x, y: pointer.y } };
}

export const nearestOnGrid = ({ x, y }: Point, step: number): Point => ({
  // + 0 turns −0 into 0.
  x: Math.round(x / step) * step + 0,
  y: Math.round(y / step) * step + 0,
});

function onLine(pointer: Point, line: DrawnLine, step: number): Snap {
  const { from, to, id } = line;
  const kind = line.kind === 'edge' ? 'edge' : 'line';
  const name = kind === 'edge' ? 'on the edge' : 'on a line';
  const foot = nearestOnSegment(pointer, from, to);
  const grid = step > 0 ? nearestGridCrossing(foot, line, step) : undefined;
  return grid === undefined
    ? { kind, reason: name, at: foot, on: [id] }
    : { kind, reason: `${name}, at the grid`, at: grid, on: [id] };
}

/** Of the places where the line crosses a line of the grid, the one nearest to `foot`; none on a short line. */
function nearestGridCrossing(foot: Point, { from, to }: DrawnLine, step: number): Point | undefined {
  const crossings: Point[] = [];
  for (const axis of ['x', 'y'] as const) {
    const run = to[axis] - from[axis];
    // Along the grid's own direction (up to rounding) there are no crossings, or all of the line is one.
    if (Math.abs(run) <= SNAP_DISTANCE) continue;
    const below = Math.floor(foot[axis] / step);
    for (const multiple of [below, below + 1]) {
      const share = (multiple * step - from[axis]) / run;
      // The coordinate of the grid's own line without rounding, so that it reads as it is meant.
      if (share >= 0 && share <= 1) crossings.push({ ...lerp(from, to, share), [axis]: multiple * step + 0 });
    }
  }
  return nearest(crossings, Infinity, (at) => distance(at, foot));
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
