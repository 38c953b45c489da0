import type { Drawing, PointId } from '@seamwright/arrangement';
import { fail, type Point, type Result } from '@seamwright/geometry';
import { deletePoint, deleteSplit, movePoint } from '../edits/index.ts';
import { followersOf } from '../facts.ts';
import { drawnLines } from '../lines.ts';
import { type Snap, snap } from '../snapping/snap.ts';
import { type SnapScene, snapScene } from '../snapping/snap-scene.ts';
import { pickAt } from './pick-at.ts';
import {
  catching,
  hasLeft,
  type Outcome,
  type Pick,
  type Pointing,
  type Tool,
  type ToolContext,
  type ToolEvent,
} from './tool.ts';

/** A point in hand: where it would be put down, and what the drawing would then be. */
interface InHand {
  readonly point: PointId;
  /** The drawing that it was taken from. */
  readonly base: Drawing;
  /** What it can be caught by: all that does not follow it. */
  readonly scene: SnapScene;
  /** The last place where it could be put; none before the first move. */
  readonly to?: { readonly snap: Snap; readonly drawing: Drawing };
}

/**
 * Chooses points and lines, moves points, deletes.
 *
 * ```
 *          down              left the place                 up
 *   idle ───────▶ pressing ─────────────────▶ dragging ───────────▶ idle + edit
 *    ▲               │ up: chosen
 *    └───────────────┘
 *          take, or press on a point         down                up
 *   idle ─────────────────────────▶ carrying ──────▶ puttingDown ───▶ idle + edit
 * ```
 *
 * Carrying is dragging without holding anything down: for keys, and for hands that cannot drag.
 */
export type AdjustState =
  | { readonly kind: 'idle'; readonly chosen?: Pick }
  | { readonly kind: 'pressing'; readonly on?: Pick; readonly from: Point; readonly chosen?: Pick }
  | { readonly kind: 'dragging'; readonly hand: InHand; readonly chosen?: Pick }
  | { readonly kind: 'carrying'; readonly hand: InHand }
  | { readonly kind: 'puttingDown'; readonly hand: InHand };

type Answer = Outcome<AdjustState>;

export const adjustTool: Tool<AdjustState> = { start: { kind: 'idle' }, step };

/** What is chosen, whatever goes on. */
export function chosenIn(state: AdjustState): Pick | undefined {
  switch (state.kind) {
    case 'idle':
    case 'pressing':
      return state.chosen;
    default:
      return { kind: 'point', id: state.hand.point };
  }
}

function step(state: AdjustState, event: ToolEvent, context: ToolContext): Answer {
  // The drawing was changed from elsewhere (undo): what was in hand belongs to one that is gone.
  if ('hand' in state && state.hand.base !== context.drawing)
    return step(idle(chosenIn(state)), event, context);
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
      return cancel(state);
    case 'back':
      return { state: state.kind === 'idle' ? idle() : letGo(state) };
    case 'take':
      return take(state, context);
    case 'delete':
      return state.kind === 'idle' ? remove(state, context) : { state };
    default:
      return 'hand' in state ? shown(state) : { state };
  }
}

const idle = (chosen?: Pick): AdjustState =>
  chosen === undefined ? { kind: 'idle' } : { kind: 'idle', chosen };

/** The state before the press or the taking; what was chosen then is chosen again. */
const letGo = (state: AdjustState): AdjustState =>
  idle(state.kind === 'carrying' || state.kind === 'puttingDown' ? chosenIn(state) : state.chosen);

function cancel(state: AdjustState): Answer {
  if (state.kind === 'puttingDown') return shown({ kind: 'carrying', hand: state.hand });
  return state.kind === 'carrying' ? shown(state) : { state: letGo(state) };
}

function down(state: AdjustState, event: Pointing, context: ToolContext): Answer {
  if ('hand' in state) return shown({ kind: 'puttingDown', hand: movedTo(state.hand, event, context).hand });
  const on = pickAt(context.drawing, event.at, event.reach);
  return {
    state: {
      kind: 'pressing',
      from: event.at,
      ...(on && { on }),
      ...(state.chosen && { chosen: state.chosen }),
    },
    ...(on && { preview: { over: on } }),
  };
}

function move(state: AdjustState, event: Pointing, context: ToolContext): Answer {
  if ('hand' in state) {
    const { hand, problem } = movedTo(state.hand, event, context);
    return { ...shown({ ...state, hand }), ...(problem && { problem }) };
  }
  if (state.kind === 'idle') {
    const over = pickAt(context.drawing, event.at, event.reach);
    return { state, ...(over && { preview: { over } }) };
  }
  if (!hasLeft(state.from, event)) return { state, ...(state.on && { preview: { over: state.on } }) };
  // Lines are moved by their ends.
  if (state.on?.kind !== 'point') return { state };
  const { hand, problem } = movedTo(taken(state.on.id, context.drawing), event, context);
  return {
    ...shown({ kind: 'dragging', hand, ...(state.chosen && { chosen: state.chosen }) }),
    ...(problem && { problem }),
  };
}

function up(state: AdjustState, event: Pointing, context: ToolContext): Answer {
  if (state.kind === 'idle') return { state };
  if (state.kind === 'pressing') return { state: idle(hasLeft(state.from, event) ? state.chosen : state.on) };
  return state.kind === 'carrying' ? shown(state) : putDown(state.hand, event, context);
}

function press(state: AdjustState, event: Pointing, context: ToolContext): Answer {
  if ('hand' in state) return putDown(state.hand, event, context);
  const on = pickAt(context.drawing, event.at, event.reach);
  return on?.kind === 'point' ? carry(on.id, context) : { state: idle(on) };
}

function take(state: AdjustState, context: ToolContext): Answer {
  const chosen = chosenIn(state);
  return chosen?.kind === 'point' && context.drawing.points[chosen.id] !== undefined
    ? carry(chosen.id, context)
    : { state };
}

const carry = (point: PointId, { drawing }: ToolContext): Answer =>
  shown({ kind: 'carrying', hand: taken(point, drawing) });

const taken = (point: PointId, base: Drawing): InHand => ({
  point,
  base,
  scene: snapScene(base, followersOf(base, point)),
});

function movedTo(hand: InHand, event: Pointing, context: ToolContext) {
  const target = snap(event.at, hand.scene, catching(event, context));
  const result = movePoint(hand.base, hand.point, target);
  // A place that is refused leaves the point where it could last be.
  return result.ok
    ? { hand: { ...hand, to: { snap: target, drawing: result.value } }, problem: undefined }
    : { hand, problem: result.problem };
}

function shown(state: AdjustState & { readonly hand: InHand }): Answer {
  const { point, to } = state.hand;
  const over: Pick = { kind: 'point', id: point };
  return { state, preview: to === undefined ? { over } : { snap: to.snap, drawing: to.drawing, over } };
}

function putDown(hand: InHand, event: Pointing, context: ToolContext): Answer {
  const { hand: moved, problem } = movedTo(hand, event, context);
  const { base, point, to } = moved;
  if (problem !== undefined) return { state: idle({ kind: 'point', id: point }), problem };
  const drawing = to?.drawing ?? base;
  // The point may have become one with the point that it was put on.
  const id = drawing.points[point] === undefined ? (to?.snap.point ?? point) : point;
  const label = base.outline.includes(point) ? 'Move a corner' : 'Move a point';
  return { state: idle({ kind: 'point', id }), edit: { label, drawing } };
}

function remove(state: AdjustState & { readonly kind: 'idle' }, { drawing }: ToolContext): Answer {
  const { chosen } = state;
  if (chosen === undefined) return { state };
  const [label, result] = removal(drawing, chosen);
  return result.ok
    ? { state: idle(), edit: { label, drawing: result.value } }
    : { state, problem: result.problem };
}

function removal(drawing: Drawing, { kind, id }: Pick): readonly [string, Result<Drawing>] {
  if (kind === 'point')
    return [drawing.outline.includes(id) ? 'Remove a corner' : 'Delete a point', deletePoint(drawing, id)];
  if (drawnLines(drawing).get(id)?.kind === 'edge')
    return [
      '',
      fail('An edge of the outline cannot be deleted by itself', '', 'Remove one of its corners instead'),
    ];
  return ['Delete a line', deleteSplit(drawing, id)];
}
