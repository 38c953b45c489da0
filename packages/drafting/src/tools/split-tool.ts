import { distance, type Point, type Segment, SNAP_DISTANCE } from '@seamwright/geometry';
import { runOut } from '../edits/add-split.ts';
import type { Ends } from '../edits/index.ts';
import { placedAt } from '../place-at.ts';
import { type Snap, snap } from '../snapping/snap.ts';
import { snapScene } from '../snapping/snap-scene.ts';
import { addSymmetric, imagesOf, NO_SYMMETRY } from '../symmetry/index.ts';
import { measured } from './measured.ts';
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
 *
 * In a chain, `placing` from the new end takes the place of `idle` after each edit, until `back` or `finish`.
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
    case 'finish':
      return { state: splitTool.start };
    default:
      return { state };
  }
}

/** What the pointer means; with a first end down, as the other end of a line that may have to be of some measure. */
function caught(event: Pointing, context: ToolContext, start?: Snap): Snap {
  const found = snap(event.at, snapScene(context.drawing), catching(event, context, start?.at));
  return start === undefined ? found : measured(start, found, event, context);
}

const placing = (start: Snap): Result => ({
  state: { kind: 'placing', start },
  preview: { snap: start },
});

/** A first press that is called off leaves nothing behind; between presses there is nothing to call off. */
const calledOff = (state: SplitState): Result => ({
  state: state.kind === 'placing' ? state : splitTool.start,
});

const startOf = (state: SplitState): Snap | undefined => (state.kind === 'idle' ? undefined : state.start);

function down(state: SplitState, event: Pointing, context: ToolContext): Result {
  const here = caught(event, context, startOf(state));
  if (state.kind === 'idle')
    return { state: { kind: 'pressing', start: here, from: event.at }, preview: { snap: here } };
  return drawnTo(here, { kind: 'pressingEnd', start: state.start }, context);
}

function move(state: SplitState, event: Pointing, context: ToolContext): Result {
  const here = caught(event, context, startOf(state));
  if (state.kind === 'idle') return { state, preview: { snap: here } };
  if (state.kind !== 'pressing') return drawnTo(here, state, context);
  return hasLeft(state.from, event)
    ? drawnTo(here, { kind: 'drawing', start: state.start }, context)
    : { state, preview: { snap: state.start } };
}

function drawnTo(here: Snap, state: SplitState & { readonly start: Snap }, context: ToolContext): Result {
  const { start } = state;
  const drawn = toBeDrawn(start, here, context);
  return {
    state,
    preview: { snap: here, line: { a: start.at, b: here.at }, ...(drawn !== undefined && { drawn }) },
  };
}

/** The stretches that a press would draw, where these are not just the line to it. */
function toBeDrawn(start: Snap, end: Snap, context: ToolContext): readonly Segment[] | undefined {
  const { drawing, symmetry = NO_SYMMETRY } = context;
  const run = endsOf(context) === 'run' && !isSamePlace(start, end) ? runOut(drawing, start, end) : undefined;
  const line = run?.ok ? { a: run.value[0].at, b: run.value[1].at } : { a: start.at, b: end.at };
  if (symmetry.turns > 1 || symmetry.mirrors.length > 0)
    return imagesOf(drawing, symmetry, line, endsOf(context));
  return run?.ok ? [line] : undefined;
}

/** A line whose length was typed, or that another one begins at, ends where it is put. */
const endsOf = ({ ends = 'held', chain, measure }: ToolContext): Ends =>
  chain || measure?.length !== undefined ? 'held' : ends;

function up(state: SplitState, event: Pointing, context: ToolContext): Result {
  const here = caught(event, context, startOf(state));
  switch (state.kind) {
    case 'idle':
      return { state, preview: { snap: here } };
    case 'pressing':
      return placing(state.start);
    case 'placing':
      return drawnTo(here, state, context);
    case 'drawing':
      // Drawn out and brought back: one end is down, as if the press had never left.
      return isSamePlace(here, state.start) ? placing(state.start) : draw(state.start, here, context);
    case 'pressingEnd':
      return draw(state.start, here, context);
  }
}

function press(state: SplitState, event: Pointing, context: ToolContext): Result {
  const here = caught(event, context, startOf(state));
  return state.kind === 'idle' ? placing(here) : draw(state.start, here, context);
}

const isSamePlace = (one: Snap, other: Snap): boolean => distance(one.at, other.at) <= SNAP_DISTANCE;

/**
 * A line that is refused leaves its first end down, so that only the second has to be put elsewhere. In a chain the end
 * of a line is the first end of the next; pressed once more in its place, the chain is at its end.
 */
function draw(start: Snap, end: Snap, context: ToolContext): Result {
  const { drawing, symmetry = NO_SYMMETRY, chain } = context;
  if (chain && isSamePlace(start, end)) return { state: splitTool.start, preview: { snap: end } };
  const result = addSymmetric(drawing, start, end, symmetry, endsOf(context));
  if (!result.ok) return { ...placing(start), problem: result.problem };
  const edit = { label: 'Draw a line', drawing: result.value };
  if (!chain) return { state: splitTool.start, preview: { snap: end }, edit };
  const { kind, reason } = end;
  return { ...placing({ kind, reason, ...placedAt(result.value, end.at) }), edit };
}
