import type { Drawing } from '@seamwright/arrangement';
import { type Box, ok, type Point, type Result } from '@seamwright/geometry';
import { deleteParts, deletePoint, deleteSplit, type Parts } from '../edits/index.ts';
import { drawnLines } from '../lines.ts';
import { withImages } from '../symmetry/index.ts';
import { type Chosen, chosenParts, isChosen, NONE_CHOSEN, ofParts, partsInFrame, toggled } from './chosen.ts';
import { type Grip, type InHand, movedTo, nudged, taken } from './in-hand.ts';
import { pickAt } from './pick-at.ts';
import {
  hasLeft,
  type Outcome,
  type Pick,
  type Pointing,
  type Tool,
  type ToolContext,
  type ToolEvent,
} from './tool.ts';

/**
 * Chooses points and lines, one or several; moves them, deletes them.
 *
 * ```
 *          down              left the place                 up
 *   idle ───────▶ pressing ─────────────────▶ dragging ───────────▶ idle + edit
 *    ▲               │  │ left the place, beside everything     up
 *    │               │  └──────────────────▶ framing ──────────────▶ idle, chosen
 *    │               │ up: chosen
 *    └───────────────┘
 *          take, or press on a point         down                up
 *   idle ─────────────────────────▶ carrying ──────▶ puttingDown ───▶ idle + edit
 * ```
 *
 * Carrying is dragging without holding anything down: for keys, and for hands that cannot drag.
 */
export type AdjustState =
  | ({ readonly kind: 'idle' } & Chosen)
  | ({
      readonly kind: 'pressing';
      readonly on?: Pick;
      readonly from: Point;
      readonly adds?: boolean;
    } & Chosen)
  | ({ readonly kind: 'framing'; readonly from: Point; readonly to: Point; readonly adds?: boolean } & Chosen)
  | ({ readonly kind: 'dragging'; readonly hand: InHand } & Chosen)
  | { readonly kind: 'carrying'; readonly hand: InHand }
  | { readonly kind: 'puttingDown'; readonly hand: InHand };

type Answer = Outcome<AdjustState>;

export const adjustTool: Tool<AdjustState> = { start: { kind: 'idle' }, step };

/** The one thing that is chosen, whatever goes on; none when several are. */
export const chosenIn = (state: AdjustState): Pick | undefined => selectionOf(state).chosen;

/** All that is chosen, whatever goes on. */
export const partsIn = (state: AdjustState): Parts => chosenParts(selectionOf(state));

function selectionOf(state: AdjustState): Chosen {
  if (!('hand' in state)) return bare(state);
  const { grip } = state.hand;
  return grip.kind === 'parts' ? ofParts(grip.parts) : { chosen: { kind: grip.kind, id: grip.id } };
}

/** What is chosen of a state, without the rest of it. */
const bare = ({ chosen, many }: Chosen): Chosen => ({ ...(chosen && { chosen }), ...(many && { many }) });

function step(state: AdjustState, event: ToolEvent, context: ToolContext): Answer {
  // The drawing was changed from elsewhere (undo): what was in hand belongs to one that is gone.
  if ('hand' in state && state.hand.base !== context.drawing)
    return step(idle(selectionOf(state)), event, context);
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
      return { state: state.kind === 'idle' ? idle(NONE_CHOSEN) : idle(before(state)) };
    case 'take':
      return take(state, context);
    case 'nudge':
      return state.kind === 'idle' ? nudge(state, event.by, context) : { state };
    case 'delete':
      return state.kind === 'idle' ? remove(state, context) : { state };
    default:
      return 'hand' in state ? shown(state) : { state };
  }
}

const idle = (chosen: Chosen): AdjustState => ({ kind: 'idle', ...bare(chosen) });

/** The tool at rest with these chosen: for what was chosen elsewhere, in a list. */
export const restingWith = (parts: Parts): AdjustState => idle(ofParts(parts));

/** What was chosen before the press or the taking. */
const before = (state: AdjustState): Chosen =>
  state.kind === 'carrying' || state.kind === 'puttingDown' ? selectionOf(state) : bare(state);

function cancel(state: AdjustState): Answer {
  if (state.kind === 'puttingDown') return shown({ kind: 'carrying', hand: state.hand });
  return state.kind === 'carrying' ? shown(state) : { state: idle(before(state)) };
}

function down(state: AdjustState, event: Pointing, context: ToolContext): Answer {
  if ('hand' in state) return shown({ kind: 'puttingDown', hand: movedTo(state.hand, event, context).hand });
  const on = pickAt(context.drawing, event.at, event.reach);
  return {
    state: {
      kind: 'pressing',
      from: event.at,
      ...(on && { on }),
      ...(event.adds && { adds: true }),
      ...bare(state),
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
  if (state.kind === 'framing') return framed({ ...state, to: event.at });
  if (!hasLeft(state.from, event)) return { state, ...(state.on && { preview: { over: state.on } }) };
  const { on, from, adds } = state;
  if (on === undefined)
    return context.frames
      ? framed({ kind: 'framing', from, to: event.at, ...(adds && { adds }), ...bare(state) })
      : { state };
  // What is one of several that are chosen takes the others along.
  const grip: Grip = state.many && isChosen(state, on) ? { kind: 'parts', parts: state.many } : on;
  const { hand, problem } = movedTo(taken(grip, context.drawing, from), event, context);
  return {
    ...shown({ kind: 'dragging', hand, ...bare(state) }),
    ...(problem && { problem }),
  };
}

const framed = (state: AdjustState & { readonly kind: 'framing' }): Answer => ({
  state,
  preview: { frame: frameOf(state) },
});

const frameOf = ({ from, to }: { readonly from: Point; readonly to: Point }): Box => ({
  minX: Math.min(from.x, to.x),
  minY: Math.min(from.y, to.y),
  maxX: Math.max(from.x, to.x),
  maxY: Math.max(from.y, to.y),
});

function up(state: AdjustState, event: Pointing, context: ToolContext): Answer {
  switch (state.kind) {
    case 'idle':
      return { state };
    case 'framing': {
      const inside = partsInFrame(context.drawing, frameOf({ from: state.from, to: event.at }));
      if (!state.adds) return { state: idle(ofParts(inside)) };
      const known = chosenParts(state);
      return {
        state: idle(
          ofParts({
            points: [...new Set([...known.points, ...inside.points])],
            lines: [...new Set([...known.lines, ...inside.lines])],
          }),
        ),
      };
    }
    case 'pressing':
      return { state: hasLeft(state.from, event) ? idle(state) : pressedOn(state, state.on, state.adds) };
    case 'carrying':
      return shown(state);
    default:
      return putDown(state.hand, event, context);
  }
}

const pressedOn = (state: Chosen, on: Pick | undefined, adds?: boolean): AdjustState =>
  idle(
    adds ? (on === undefined ? state : toggled(state, on)) : on === undefined ? NONE_CHOSEN : { chosen: on },
  );

function press(state: AdjustState, event: Pointing, context: ToolContext): Answer {
  if ('hand' in state) return putDown(state.hand, event, context);
  const on = pickAt(context.drawing, event.at, event.reach);
  if (event.adds) return { state: pressedOn(state, on, true) };
  return on?.kind === 'point' ? carry(on, context) : { state: pressedOn(state, on) };
}

function take(state: AdjustState, context: ToolContext): Answer {
  const { chosen, many } = selectionOf(state);
  if (many !== undefined) return carry({ kind: 'parts', parts: many }, context);
  return chosen !== undefined && isThere(context.drawing, chosen) ? carry(chosen, context) : { state };
}

const isThere = (drawing: Drawing, { kind, id }: Pick): boolean =>
  kind === 'point' ? drawing.points[id] !== undefined : drawnLines(drawing).has(id);

const carry = (grip: Grip, { drawing }: ToolContext): Answer =>
  shown({ kind: 'carrying', hand: taken(grip, drawing) });

function shown(state: AdjustState & { readonly hand: InHand }): Answer {
  const { grip, to } = state.hand;
  const over = grip.kind === 'parts' ? {} : { over: { kind: grip.kind, id: grip.id } };
  return { state, preview: to === undefined ? over : { snap: to.snap, drawing: to.drawing, ...over } };
}

function putDown(hand: InHand, event: Pointing, context: ToolContext): Answer {
  const { hand: moved, problem } = movedTo(hand, event, context);
  const { base, grip, to } = moved;
  const drawing = to?.drawing ?? base;
  if (grip.kind !== 'point') {
    const state = idle(grip.kind === 'parts' ? ofParts(grip.parts) : { chosen: grip });
    if (problem !== undefined) return { state, problem };
    return drawing === base ? { state } : { state, edit: { label: labelOf(grip, base), drawing } };
  }
  const { id } = grip;
  if (problem !== undefined) return { state: idle({ chosen: grip }), problem };
  // The point may have become one with the point that it was put on.
  const survivor = drawing.points[id] === undefined ? (to?.snap.point ?? id) : id;
  return {
    state: idle({ chosen: { kind: 'point', id: survivor } }),
    edit: { label: labelOf(grip, base), drawing },
  };
}

function labelOf(grip: Grip, drawing: Drawing): string {
  if (grip.kind === 'parts') return 'Move several parts';
  if (grip.kind === 'point') return drawing.outline.includes(grip.id) ? 'Move a corner' : 'Move a point';
  return drawnLines(drawing).get(grip.id)?.kind === 'edge' ? 'Move an edge' : 'Move a line';
}

function nudge(state: AdjustState & { readonly kind: 'idle' }, by: Point, context: ToolContext): Answer {
  const parts = chosenParts(state);
  if (parts.points.length === 0 && parts.lines.length === 0) return { state };
  const result = nudged(context.drawing, parts, by, context);
  const chosen = state.chosen ?? { kind: 'parts' as const, parts };
  return result.ok
    ? { state, edit: { label: labelOf(chosen, context.drawing), drawing: result.value } }
    : { state, problem: result.problem };
}

function remove(state: AdjustState & { readonly kind: 'idle' }, context: ToolContext): Answer {
  const { drawing, symmetry } = context;
  const parts = chosenParts(state);
  if (parts.points.length === 0 && parts.lines.length === 0) return { state };
  const all = symmetry === undefined ? parts : withImages(drawing, parts, symmetry);
  const [label, result] = removal(drawing, all);
  return result.ok
    ? { state: idle(NONE_CHOSEN), edit: { label, drawing: result.value } }
    : { state, problem: result.problem };
}

function removal(drawing: Drawing, parts: Parts): readonly [string, Result<Drawing>] {
  const [point, line] = [parts.points[0], parts.lines[0]];
  if (parts.points.length + parts.lines.length > 1)
    return ['Delete several parts', deleteParts(drawing, parts)];
  if (point !== undefined)
    return [
      drawing.outline.includes(point) ? 'Remove a corner' : 'Delete a point',
      deletePoint(drawing, point),
    ];
  if (line === undefined) return ['', ok(drawing)];
  return drawnLines(drawing).get(line)?.kind === 'edge'
    ? ['', deleteParts(drawing, parts)]
    : ['Delete a line', deleteSplit(drawing, line)];
}
