import type { Drawing } from '@seamwright/arrangement';
import {
  type AdjustState,
  adjustTool,
  chosenIn,
  type Edit,
  type OutlineState,
  outlineTool,
  type Pick,
  type Preview,
  type SplitState,
  splitTool,
  type ToolContext,
  type ToolEvent,
} from '@seamwright/drafting';
import { ok, type Point, type Problem, sentence } from '@seamwright/geometry';
import { create } from 'zustand';
import { change, holdInHand } from '../../store/changes.ts';
import { announce } from '../../store/notices.ts';
import { select, selectNothing } from '../../store/selection.ts';
import { currentBlock, type Selection, useWork } from '../../store/work.ts';

/** A tool and how far it is. */
export type Held =
  | { readonly tool: 'split'; readonly state: SplitState }
  | { readonly tool: 'adjust'; readonly state: AdjustState }
  | { readonly tool: 'outline'; readonly state: OutlineState };

export type ToolName = Held['tool'];

interface Hand {
  readonly held: Held;
  readonly preview: Preview;
  /** Why the last press did nothing; until the next one. */
  readonly problem: Problem | null;
  /** The keyboard's pointer; null while a mouse or finger is used. */
  readonly crosshair: Point | null;
  /** The last pointer was a finger: what is written beside it goes above it. */
  readonly finger: boolean;
  /** Ends keep to the grid where nothing else is near. */
  readonly toGrid: boolean;
}

const START: Readonly<Record<ToolName, Held>> = {
  split: { tool: 'split', state: splitTool.start },
  adjust: { tool: 'adjust', state: adjustTool.start },
  outline: { tool: 'outline', state: outlineTool.start },
};

const NO_PREVIEW: Preview = {};

/** The maker's hand at the Draft station: which tool, and what it is doing. Not part of the document. */
export const useHand = create<Hand>()(() => ({
  held: START.split,
  preview: NO_PREVIEW,
  problem: null,
  crosshair: null,
  finger: false,
  toGrid: true,
}));

/** Puts the tool down and takes another; what was begun with it is dropped. */
export function takeUp(tool: ToolName): void {
  useHand.setState({ held: START[tool], preview: NO_PREVIEW, problem: null });
  holdInHand(null);
}

/** Drops what was begun and forgets the crosshair, for when the block or the station is left. */
export function restHand(): void {
  takeUp(useHand.getState().held.tool);
  useHand.setState({ crosshair: null });
}

/** Whether there is something to go back from. */
export const isBusy = ({ held }: Hand): boolean => held.state.kind !== 'idle';

function toolContext(): ToolContext {
  const { drawing, grid } = currentBlock(useWork.getState());
  return { drawing, grid: useHand.getState().toGrid ? grid : 0 };
}

/** Passes an event to the tool in hand, and does what it answers. */
export function send(event: ToolEvent): void {
  const context = toolContext();
  const { held, preview = NO_PREVIEW, edit, problem } = step(useHand.getState().held, event, context);
  // A sentence about a press stays while the pointer goes on; one about a drag only while it is true.
  const keeps = problem === undefined && isSmall(event) && preview.drawing === undefined;
  useHand.setState((hand) => ({ held, preview, problem: keeps ? hand.problem : (problem ?? null) }));
  if (held.tool === 'adjust') showChosen(chosenIn(held.state));
  if (edit !== undefined) carryOut(edit);
  else holdInHand(preview.drawing ?? null);
  // An outline is drawn once; what comes next is lines.
  if (edit !== undefined && held.tool === 'outline') takeUp('split');
  // While a point is dragged over places that are refused, the sentence on the screen is enough.
  if (problem !== undefined && !isSmall(event)) announce(sentence(problem));
  else if (edit === undefined && event.type === 'press') announce(nextStep(held));
}

const isSmall = ({ type }: ToolEvent): boolean => type === 'move' || type === 'leave';

/** What the next press does, for the eye and for the ear; empty where that is plain. */
export function nextStep({ tool, state }: Held): string {
  if (tool === 'split') return state.kind === 'placing' ? 'One end is down. Now the other.' : '';
  if (tool === 'adjust') return state.kind === 'carrying' ? 'Taken up. Put it down where it goes.' : '';
  if (state.kind === 'idle') return 'Put down the first corner of the new outline.';
  return state.corners.length < 3
    ? 'Put down the next corner.'
    : 'Put down the next corner, or press on the first to close.';
}

interface Answer {
  readonly held: Held;
  readonly preview?: Preview;
  readonly edit?: Edit;
  readonly problem?: Problem;
}

function step(held: Held, event: ToolEvent, context: ToolContext): Answer {
  switch (held.tool) {
    case 'split': {
      const { state, ...rest } = splitTool.step(held.state, event, context);
      return { held: { tool: held.tool, state }, ...rest };
    }
    case 'adjust': {
      const { state, ...rest } = adjustTool.step(withChosen(held.state, context.drawing), event, context);
      return { held: { tool: held.tool, state }, ...rest };
    }
    case 'outline': {
      const { state, ...rest } = outlineTool.step(held.state, event, context);
      return { held: { tool: held.tool, state }, ...rest };
    }
  }
}

/** Deletes the point or line that is chosen, whichever tool is in hand; not in the middle of something. */
export function deleteChosen(): void {
  const hand = useHand.getState();
  if (isBusy(hand)) return;
  const context = toolContext();
  const idle = withChosen(adjustTool.start, context.drawing);
  const { edit, problem } = adjustTool.step(idle, { type: 'delete' }, context);
  useHand.setState({ problem: problem ?? null });
  if (problem !== undefined) announce(sentence(problem));
  if (edit === undefined) return;
  selectNothing();
  carryOut(edit);
}

function carryOut({ label, drawing }: Edit): void {
  change(label, () => ok(drawing));
  announce(label);
}

/** What is chosen lies in the store, where panels choose too: an idle tool starts from that. */
function withChosen(state: AdjustState, drawing: Drawing): AdjustState {
  if (state.kind !== 'idle') return state;
  const chosen = chosenOf(useWork.getState().selection, drawing);
  return chosen === undefined ? { kind: 'idle' } : { kind: 'idle', chosen };
}

/** The point or line that is in hand, if it is still there. */
export function chosenOf({ points, lines }: Selection, drawing: Drawing): Pick | undefined {
  const [point, line] = [points[0], lines[0]];
  if (point !== undefined && drawing.points[point] !== undefined) return { kind: 'point', id: point };
  return line === undefined ? undefined : { kind: 'line', id: line };
}

function showChosen(chosen: Pick | undefined): void {
  const { points, lines } = useWork.getState().selection;
  const before = points[0] ?? lines[0];
  if (chosen?.id === before) return;
  choose(chosen);
}

/** Takes a point or a line in hand; with the adjusting tool, unless a tool is at work. */
export function choose(chosen: Pick | undefined): void {
  if (chosen === undefined) selectNothing();
  else select(chosen.kind === 'point' ? { points: [chosen.id] } : { lines: [chosen.id] });
}
