import type { Drawing } from '@seamwright/arrangement';
import {
  type AdjustState,
  adjustTool,
  drawnLines,
  type Edit,
  type Measure,
  NO_SYMMETRY,
  type OutlineState,
  outlineTool,
  type Parts,
  type Pick,
  type Preview,
  partsIn,
  restingWith,
  type SplitState,
  type Symmetry,
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
import { toolContext } from './tool-context.ts';

/** A tool and how far it is. */
export type Held =
  | { readonly tool: 'split'; readonly state: SplitState }
  | { readonly tool: 'adjust'; readonly state: AdjustState }
  | { readonly tool: 'outline'; readonly state: OutlineState };

export type ToolName = Held['tool'];

export interface Hand {
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
  /** How what is done is repeated about the block's centre. */
  readonly symmetry: Symmetry;
  /** What was typed for the line that is being drawn. */
  readonly measure: Measure;
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
  symmetry: NO_SYMMETRY,
  measure: {},
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

/** Passes an event to the tool in hand, and does what it answers. */
export function send(event: ToolEvent): void {
  const context = toolContext(useHand.getState());
  const { held, preview = NO_PREVIEW, edit, problem } = step(useHand.getState().held, event, context);
  // A sentence about a press stays while the pointer goes on; one about a drag only while it is true.
  const keeps = problem === undefined && isSmall(event) && preview.drawing === undefined;
  useHand.setState((hand) => ({ held, preview, problem: keeps ? hand.problem : (problem ?? null) }));
  if (held.tool === 'adjust') showChosen(partsIn(held.state));
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
      const { state, ...rest } = adjustTool.step(withChosen(held.state), event, context);
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
  const { edit, problem } = adjustTool.step(
    restingWith(chosenParts()),
    { type: 'delete' },
    toolContext(hand),
  );
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
const withChosen = (state: AdjustState): AdjustState =>
  state.kind === 'idle' ? restingWith(chosenParts()) : state;

/** The points and lines that are chosen and still there. */
export function chosenParts(): Parts {
  const { drawing } = currentBlock(useWork.getState());
  const { points, lines } = useWork.getState().selection;
  const drawn = drawnLines(drawing);
  return {
    points: points.filter((id) => drawing.points[id] !== undefined),
    lines: lines.filter((id) => drawn.has(id)),
  };
}

/** How what is done is repeated about the block's centre. */
export const currentSymmetry = (): Symmetry => useHand.getState().symmetry;

/** The point or line that is in hand, if it is still there. */
export function chosenOf({ points, lines }: Selection, drawing: Drawing): Pick | undefined {
  const [point, line] = [points[0], lines[0]];
  if (point !== undefined && drawing.points[point] !== undefined) return { kind: 'point', id: point };
  return line === undefined ? undefined : { kind: 'line', id: line };
}

function showChosen({ points, lines }: Parts): void {
  const before = useWork.getState().selection;
  if (isSame(points, before.points) && isSame(lines, before.lines)) return;
  if (points.length + lines.length === 0) selectNothing();
  else select({ points, lines });
}

const isSame = (some: readonly string[], others: readonly string[]): boolean =>
  some.length === others.length && some.every((id, i) => id === others[i]);

/** Takes a point or a line in hand; with the adjusting tool, unless a tool is at work. */
export function choose(chosen: Pick | undefined): void {
  if (chosen === undefined) selectNothing();
  else select(chosen.kind === 'point' ? { points: [chosen.id] } : { lines: [chosen.id] });
}
