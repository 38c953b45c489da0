import { distance, type Point, SNAP_DISTANCE } from '@seamwright/geometry';
import { addSplit } from '../edits/index.ts';
import { type Snap, snap } from '../snapping/snap.ts';
import { snapScene } from '../snapping/snap-scene.ts';
import {
  catching,
  hasLeft,
  type Outcome,
  type Pointing,
  type Tool,
  type ToolContext,
  type ToolEvent,
} from './tool.ts';

/**
 * Draws splits. Two presses, or one press drawn out to the other end: both make a line, and no mode decides which.
 *
 * ```
 *          down              left the place           up
 *   idle ───────▶ pressing ─────────────────▶ drawing ───▶ idle + edit
 *                    │ up
 *                    ▼        down                  up
 *                 placing ───────────▶ pressingEnd ───▶ idle + edit
 * ```
 */
export type SplitState =
  | { readonly kind: 'idle' }
  /** The first press is down and has not left its place. */
  | { readonly kind: 'pressing'; readonly start: Snap; readonly from: Point }
  /** The first press was drawn out. */
  | { readonly kind: 'drawing'; readonly start: Snap }
  /** One end is put down; the other is looked for. */
  | { readonly kind: 'placing'; readonly start: Snap }
  /** The second press is down. */
  | { readonly kind: 'pressingEnd'; readonly start: Snap };

type Result = Outcome<SplitState>;

export const splitTool: Tool<SplitState> = { start: { kind: 'idle' }, step };

function step(state: SplitState, event: ToolEvent, context: ToolContext): Result {
  switch (event.type) {
    case 'down':
      return down(state, event, context);
    case 'move':
      return move(state, event, context);
    case 'up':
      return up(state, event, context);
    case 'press':
      return press(state, event, context);
    case 'cancel':
      return state.kind === 'pressingEnd' ? placing(state.start) : calledOff(state);
    case 'back':
      return { state: splitTool.start };
    default:
      return { state };
  }
}

const caught = (event: Pointing, context: ToolContext): Snap =>
  snap(event.at, snapScene(context.drawing), catching(event, context));

const placing = (start: Snap): Result => ({
  state: { kind: 'placing', start },
  preview: { snap: start },
});

/** A first press that is called off leaves nothing behind; between presses there is nothing to call off. */
const calledOff = (state: SplitState): Result => ({
  state: state.kind === 'placing' ? state : splitTool.start,
});

function down(state: SplitState, event: Pointing, context: ToolContext): Result {
  const here = caught(event, context);
  if (state.kind === 'idle')
    return { state: { kind: 'pressing', start: here, from: event.at }, preview: { snap: here } };
  return drawnTo(here, { kind: 'pressingEnd', start: state.start });
}

function move(state: SplitState, event: Pointing, context: ToolContext): Result {
  const here = caught(event, context);
  if (state.kind === 'idle') return { state, preview: { snap: here } };
  if (state.kind !== 'pressing') return drawnTo(here, state);
  return hasLeft(state.from, event)
    ? drawnTo(here, { kind: 'drawing', start: state.start })
    : { state, preview: { snap: state.start } };
}

const drawnTo = (here: Snap, state: SplitState & { readonly start: Snap }): Result => ({
  state,
  preview: { snap: here, line: { a: state.start.at, b: here.at } },
});

function up(state: SplitState, event: Pointing, context: ToolContext): Result {
  const here = caught(event, context);
  switch (state.kind) {
    case 'idle':
      return { state, preview: { snap: here } };
    case 'pressing':
      return placing(state.start);
    case 'placing':
      return drawnTo(here, state);
    case 'drawing':
      // Drawn out and brought back: one end is down, as if the press had never left.
      return isSamePlace(here, state.start) ? placing(state.start) : draw(state.start, here, context);
    case 'pressingEnd':
      return draw(state.start, here, context);
  }
}

function press(state: SplitState, event: Pointing, context: ToolContext): Result {
  const here = caught(event, context);
  return state.kind === 'idle' ? placing(here) : draw(state.start, here, context);
}

const isSamePlace = (one: Snap, other: Snap): boolean => distance(one.at, other.at) <= SNAP_DISTANCE;

/** A line that is refused leaves its first end down, so that only the second has to be put elsewhere. */
function draw(start: Snap, end: Snap, context: ToolContext): Result {
  const result = addSplit(context.drawing, start, end);
  return result.ok
    ? {
        state: splitTool.start,
        preview: { snap: end },
        edit: { label: 'Draw a line', drawing: result.value },
      }
    : { ...placing(start), problem: result.problem };
}
