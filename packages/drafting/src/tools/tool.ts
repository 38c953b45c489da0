import type { Drawing, LineId, PointId } from '@seamwright/arrangement';
import type { Box, Point, Problem, Segment } from '@seamwright/geometry';
import type { Ends } from '../edits/index.ts';
import type { Grid } from '../snapping/grid.ts';
import { EXACTLY, type Snap, type SnapKind, type SnapOptions } from '../snapping/snap.ts';
import type { Symmetry } from '../symmetry/index.ts';

/** A place that is pointed at. Coordinates are inches on the block. */
export interface Pointing {
  readonly at: Point;
  /** How near counts as on it, inches: a distance on the screen divided by the zoom, larger for a finger. */
  readonly reach: number;
  /** True where the place is meant as it is (the crosshair, a key held down): nothing pulls from afar. */
  readonly exact: boolean;
  /** True where a press adds to what is chosen, or takes it away again. */
  readonly adds?: boolean;
}

/** What happens to a tool. What a key or a finger means in these words is for the screen to say. */
export type ToolEvent =
  /** A press, a move with or without one, and its end. */
  | ({ readonly type: 'down' | 'move' | 'up' } & Pointing)
  /** Press and release in one, without a pointer: the crosshair's "here". */
  | ({ readonly type: 'press' } & Pointing)
  /** The pointer left the drawing. */
  | { readonly type: 'leave' }
  /** The press is called off (a second finger came): as if it had not been. */
  | { readonly type: 'cancel' }
  /** One step back. */
  | { readonly type: 'back' }
  /** That is all: close the outline. */
  | { readonly type: 'finish' }
  /** Take what is chosen in hand, to be put down by the next press. */
  | { readonly type: 'take' }
  /** Move what is chosen by so much, inches. */
  | { readonly type: 'nudge'; readonly by: Point }
  | { readonly type: 'delete' };

/** What a tool works on; the same until the drawing is edited. */
export interface ToolContext {
  readonly drawing: Drawing;
  /** The grid, or its spacing in inches; 0: no grid. */
  readonly grid: number | Grid;
  /** What may be caught. When left out, all places and lines, but nothing that only the line's first end makes worth it. */
  readonly kinds?: ReadonlySet<SnapKind>;
  /** Degrees between the angles that catch; none when left out. */
  readonly angleStep?: number;
  /** How what is done is repeated; not at all when left out. */
  readonly symmetry?: Symmetry;
  /** What becomes of ends of new lines that were put on nothing; held when left out. */
  readonly ends?: Ends;
  /** Whether each line begins where the last one ended. */
  readonly chain?: boolean;
  /** What was typed for the line that is being drawn: its length (inches), its angle (degrees, see angles.ts), or both. */
  readonly measure?: Measure;
  /** Whether a drag that begins beside everything frames what is to be chosen. */
  readonly frames?: boolean;
}

/** A length, an angle, or both, that a line must have. */
export interface Measure {
  readonly length?: number;
  readonly angle?: number;
}

/** A point or a line of the drawing. */
export type Pick =
  | { readonly kind: 'point'; readonly id: PointId }
  | { readonly kind: 'line'; readonly id: LineId };

/** What the screen shows while a tool is at work; none of it is part of the drawing yet. */
export interface Preview {
  /** What the pointer was caught by. */
  readonly snap?: Snap;
  /** The line that is being drawn, from where it was begun to what is caught. */
  readonly line?: Segment;
  /** What would be drawn: the line after its ends have run, then its images. Only where that is more than `line`. */
  readonly drawn?: readonly Segment[];
  /** What a frame that is being drawn round things to choose encloses. */
  readonly frame?: Box;
  /** The corners of the outline that is being drawn. */
  readonly corners?: readonly Point[];
  /** The drawing as it would become. */
  readonly drawing?: Drawing;
  /** What a press would choose. */
  readonly over?: Pick;
}

/** A finished edit: the new drawing, and its name for undo. */
export interface Edit {
  readonly label: string;
  readonly drawing: Drawing;
}

/** What a tool answers to an event. Plain data: whoever holds the tool keeps the state and carries out the edit. */
export interface Outcome<State> {
  readonly state: State;
  readonly preview?: Preview;
  readonly edit?: Edit;
  /** Why the edit could not be made; the drawing stays as it is. */
  readonly problem?: Problem;
}

/** A drawing tool: a state machine. `step` has no memory and no effect. */
export interface Tool<State> {
  readonly start: State;
  readonly step: (state: State, event: ToolEvent, context: ToolContext) => Outcome<State>;
}

/** How an event is caught in a context; `from` is the first end of the line that is being drawn. */
export function catching({ reach, exact }: Pointing, context: ToolContext, from?: Point): SnapOptions {
  if (exact) return EXACTLY;
  const { grid, kinds, angleStep } = context;
  if (kinds === undefined) return { radius: reach, grid };
  return {
    radius: reach,
    grid,
    kinds,
    ...(from !== undefined && { from }),
    ...(angleStep !== undefined && { angleStep }),
  };
}

/** Share of the reach that a press may wander and still be a press in one place. */
const STEADY = 0.5;

/** Whether a press that began at `from` has become a drag. */
export const hasLeft = (from: Point, { at, reach }: Pointing): boolean =>
  Math.hypot(at.x - from.x, at.y - from.y) > STEADY * reach;
