import {
  adjustTool,
  drawnLines,
  type Edit,
  type Measure,
  NO_SYMMETRY,
  type Parts,
  type Pointing,
  type Preview,
  partsIn,
  restingWith,
  type Symmetry,
  type ToolEvent,
} from '@seamwright/drafting';
import { ok, type Point, type Problem, SNAP_DISTANCE, sentence } from '@seamwright/geometry';
import { create } from 'zustand';
import { change, endStep, holdInHand } from '../../store/changes.ts';
import { announce } from '../../store/notices.ts';
import { chooseParts, selectNothing } from '../../store/selection.ts';
import { currentBlock, useWork } from '../../store/work.ts';
import { type Held, nextStep, START, step, type ToolName } from './held.ts';
import { toolContext } from './tool-context.ts';
import { stopPlacing } from './tracing/placing.ts';

export interface Hand {
  readonly held: Held;
  readonly preview: Preview;
  /** Why the last press did nothing; until the next one. */
  readonly problem: Problem | null;
  /** Where was pointed last; null before the first time. */
  readonly pointing: Pointing | null;
  /** The keyboard's pointer; null while a mouse or finger is used. */
  readonly crosshair: Point | null;
  /** The last pointer was a finger: what is written beside it goes above it. */
  readonly finger: boolean;
  /** Each press adds to what is chosen, as with Shift: for hands without a keyboard. */
  readonly adds: boolean;
  /** How what is done is repeated about the block's centre. */
  readonly symmetry: Symmetry;
  /** What was typed for the line that is being drawn. */
  readonly measure: Measure;
}

const NO_PREVIEW: Preview = {};
const NO_MEASURE: Measure = {};

/** The maker's hand at the Draft station: which tool, and what it is doing. Not part of the document. */
export const useHand = create<Hand>()(() => ({
  held: START.split,
  preview: NO_PREVIEW,
  problem: null,
  pointing: null,
  crosshair: null,
  finger: false,
  adds: false,
  symmetry: NO_SYMMETRY,
  measure: NO_MEASURE,
}));

/** Puts the tool down and takes another; what was begun with it is dropped. */
export function takeUp(tool: ToolName): void {
  useHand.setState({ held: START[tool], preview: NO_PREVIEW, problem: null, measure: NO_MEASURE });
  holdInHand(null);
  stopPlacing();
}

/** Drops what was begun and forgets the crosshair, for when the block or the station is left. */
export function restHand(): void {
  takeUp(useHand.getState().held.tool);
  useHand.setState({ crosshair: null, pointing: null });
}

/** Whether there is something to go back from. */
export const isBusy = ({ held }: Hand): boolean => held.state.kind !== 'idle';

/** Passes an event to the tool in hand, and does what it answers. */
export function send(event: ToolEvent): void {
  const hand = useHand.getState();
  const resting = hand.held.tool === 'adjust' && hand.held.state.kind === 'idle';
  // What is chosen lies in the store, where panels choose too: an idle tool starts from that.
  const before: Held = resting ? { tool: 'adjust', state: restingWith(chosenParts()) } : hand.held;
  const { held, preview = NO_PREVIEW, edit, problem } = step(before, event, toolContext(hand));
  // A sentence about a press stays while the pointer goes on; one about a drag only while it is true.
  const keeps = problem === undefined && isSmall(event) && preview.drawing === undefined;
  useHand.setState({
    held,
    preview,
    problem: keeps ? hand.problem : (problem ?? null),
    ...('at' in event && { pointing: { at: event.at, reach: event.reach, exact: event.exact } }),
    ...((edit !== undefined || event.type === 'back') && { measure: NO_MEASURE }),
  });
  if (held.tool === 'adjust') showChosen(partsIn(held.state));
  // Who draws a line has let go of what was chosen.
  else if (isPress(event)) selectNothing();
  if (isPress(event)) endStep();
  if (edit !== undefined) carryOut(edit);
  else holdInHand(preview.drawing ?? null);
  // An outline is drawn once; what comes next is lines.
  if (edit !== undefined && held.tool === 'outline') takeUp('split');
  // While a point is dragged over places that are refused, the sentence on the screen is enough.
  if (problem !== undefined && !isSmall(event)) announce(sentence(problem));
  else if (edit === undefined && event.type === 'press') announce(nextStep(held));
}

const isSmall = ({ type }: ToolEvent): boolean => type === 'move' || type === 'leave';
const isPress = ({ type }: ToolEvent): boolean => type === 'down' || type === 'press';

/** Changes what the hand works with, and shows at once what would now come of a press where was pointed last. */
export function adjustHand(to: Partial<Pick<Hand, 'adds' | 'symmetry' | 'measure'>>): void {
  useHand.setState(to);
  lookAgain();
}

/** The same, after something else has changed: a setting, the grid. */
export function lookAgain(): void {
  const { held, pointing } = useHand.getState();
  if (held.state.kind === 'idle') return;
  if (pointing !== null) send({ type: 'move', ...pointing });
  else if (held.tool === 'split')
    send({ type: 'move', at: held.state.start.at, reach: SNAP_DISTANCE, exact: true });
}

/** Deletes what is chosen, whichever tool is in hand; not in the middle of something. */
export function deleteChosen(): void {
  if (ask({ type: 'delete' }, null)) selectNothing();
}

/** Moves what is chosen by so much, inches; not in the middle of something. False: nothing is chosen. */
export function nudgeChosen(by: Point): boolean {
  const { points, lines } = chosenParts();
  if (points.length + lines.length === 0) return false;
  return ask({ type: 'nudge', by }, `nudge ${[...points, ...lines].join()}`);
}

/** Has the adjusting tool do something with what is chosen. True: it was done. */
function ask(event: ToolEvent, group: string | null): boolean {
  const hand = useHand.getState();
  if (isBusy(hand)) return false;
  const { edit, problem } = adjustTool.step(restingWith(chosenParts()), event, toolContext(hand));
  useHand.setState({ problem: problem ?? null });
  if (problem !== undefined) announce(sentence(problem));
  if (edit !== undefined) carryOut(edit, group);
  return edit !== undefined;
}

function carryOut({ label, drawing }: Edit, group: string | null = null): void {
  change(label, () => ok(drawing), group);
  announce(label);
}

/** The points and lines that are chosen and still there. */
function chosenParts(): Parts {
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

function showChosen({ points, lines }: Parts): void {
  const before = useWork.getState().selection;
  if (isSame(points, before.points) && isSame(lines, before.lines)) return;
  chooseParts({ points, lines });
  const count = points.length + lines.length;
  if (count > 1) announce(`${count} things chosen`);
}

const isSame = (some: readonly string[], others: readonly string[]): boolean =>
  some.length === others.length && some.every((id, i) => id === others[i]);
