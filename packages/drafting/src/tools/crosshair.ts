import type { Box, Point } from '@seamwright/geometry';
import { SNAP_DISTANCE } from '@seamwright/geometry';
import { type Grid, gridOf } from '../snapping/grid.ts';
import { inReadingOrder } from '../snapping/snap.ts';
import type { SnapScene } from '../snapping/snap-scene.ts';

/** What moves the crosshair, the keyboard's pointer. */
export type CrosshairMove =
  /** To the next line of the grid that way, or by one fine step. */
  | { readonly kind: 'step'; readonly toward: 'left' | 'right' | 'up' | 'down'; readonly fine: boolean }
  /** To the next place that can be caught, in reading order. */
  | { readonly kind: 'place'; readonly toward: 'next' | 'previous' };

export interface CrosshairContext {
  readonly scene: SnapScene;
  /** The grid to whose lines a step goes, or its spacing, inches, more than 0. */
  readonly grid: number | Grid;
  /** Inches of a fine step. */
  readonly fine: number;
  /** How far the crosshair goes. */
  readonly within: Box;
}

/** Inches: a fine step, the smallest that is marked on a quilter's ruler's finest scale. */
export const FINE_STEP = 1 / 32;

const DIRECTIONS = {
  left: { axis: 'x', sign: -1 },
  right: { axis: 'x', sign: 1 },
  up: { axis: 'y', sign: -1 },
  down: { axis: 'y', sign: 1 },
} as const;

/**
 * Where the crosshair goes from `at`; null when there is no further place, so that the Tab key can leave the drawing at
 * either end and nobody is caught in it.
 */
export function moveCrosshair(at: Point, move: CrosshairMove, context: CrosshairContext): Point | null {
  if (move.kind === 'place') return nextPlace(at, move.toward === 'next' ? 1 : -1, context.scene);
  const { axis, sign } = DIRECTIONS[move.toward];
  const { grid, fine, within } = context;
  const [least, most] = axis === 'x' ? [within.minX, within.maxX] : [within.minY, within.maxY];
  const to = move.fine ? at[axis] + sign * fine : nextLine(at[axis], grid, axis, sign);
  return { x: at.x, y: at.y, [axis]: Math.min(most, Math.max(least, to)) };
}

/** The next line of the grid strictly beyond `from`; one that is as good as there already is passed over. */
function nextLine(from: number, grid: number | Grid, axis: 'x' | 'y', sign: 1 | -1): number {
  const { origin, ...steps } = gridOf(grid) ?? { origin: { x: 0, y: 0 }, across: FINE_STEP, down: FINE_STEP };
  const step = axis === 'x' ? steps.across : steps.down;
  const beyond = from - origin[axis] + sign * Math.min(SNAP_DISTANCE, step / 2);
  const number = sign > 0 ? Math.floor(beyond / step) + 1 : Math.ceil(beyond / step) - 1;
  return origin[axis] + number * step + 0;
}

function nextPlace(at: Point, sign: 1 | -1, scene: SnapScene): Point | null {
  const here = { kind: 'middle', reason: '', at } as const;
  const others = scene.places.filter((place) => place.at.x !== at.x || place.at.y !== at.y);
  const order = inReadingOrder([...others, here]);
  return order[order.indexOf(here) + sign]?.at ?? null;
}
