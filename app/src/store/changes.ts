import { type Drawing, isGiven, sameGifts } from '@seamwright/arrangement';
import { type LengthUnit, type Result, sentence } from '@seamwright/geometry';
import {
  type Block,
  endGroup,
  goToStep as gone,
  type History,
  type Pattern,
  record,
  redoLabel,
  redo as redone,
  undoLabel,
  undo as undone,
} from '@seamwright/pattern';
import { announce, dismiss, tell, useNotices, warn } from './notices.ts';
import { currentBlock, NOTHING, pattern, useWork } from './work.ts';

/**
 * The way every edit of the open block's drawing goes: `edit` makes the new drawing, and one step for undo is
 * kept under `label` (`Add split`). A problem leaves the drawing as it was and is shown as a sentence. Ends what a
 * tool had in hand. With a `group`, edits that follow one another with the same key are one step.
 */
export function change(
  label: string,
  edit: (drawing: Drawing) => Result<Drawing>,
  group: string | null = null,
): Result<Drawing> {
  const block = currentBlock(useWork.getState());
  const result = edit(block.drawing);
  if (!result.ok) {
    holdInHand(null);
    warn(sentence(result.problem));
  } else {
    const drawing = result.value;
    const same = drawing === block.drawing;
    changeBlock(label, block.id, (before) => (same ? before : { ...before, drawing }), group);
  }
  return result;
}

/** Shows and studies `drawing` without making it part of the document; null lets go. For drags under way. */
export function holdInHand(drawing: Drawing | null): void {
  if (useWork.getState().inHand !== drawing) useWork.setState({ inHand: drawing });
}

/** One step for undo that changes one block. */
export function changeBlock(
  label: string,
  id: string,
  edit: (block: Block) => Block,
  group: string | null = null,
): void {
  const edited = (block: Block) => (block.id === id ? edit(block) : block);
  changePattern(
    label,
    (before) => {
      const blocks = before.blocks.map(edited);
      return blocks.every((block, i) => block === before.blocks[i]) ? before : { ...before, blocks };
    },
    group,
  );
}

/** One step for undo that changes the pattern. */
export function changePattern(
  label: string,
  edit: (pattern: Pattern) => Pattern,
  group: string | null = null,
): void {
  useWork.setState((work) => ({
    history: record(work.history, edit(pattern(work)), label, group),
    inHand: null,
  }));
  withdrawOffer();
}

/** Says what the last step did, and offers to take it back; the offer goes with the next step. */
export function tellWithUndo(text: string): void {
  const last = useWork.getState().history.past.at(-1);
  tell(text, {
    label: 'Undo',
    run: () => {
      // Another pattern may have been opened meanwhile, whose last step is another.
      if (useWork.getState().history.past.at(-1) === last) undo();
      dismiss();
    },
  });
}

/** An offer is about the last step: after another one it would undo what it does not name. */
function withdrawOffer(): void {
  if (useNotices.getState().notice?.offer !== undefined) dismiss();
}

/** The next edit is a step of its own, whatever its group: for when a field is left or a drag ends. */
export function endStep(): void {
  useWork.setState((work) => ({ history: endGroup(work.history) }));
}

/** Replaces the present document without a step: for what follows from the last step, or is no edit at all. */
export function amendPattern(edit: (pattern: Pattern) => Pattern): void {
  useWork.setState((work) => {
    const present = edit(pattern(work));
    return present === pattern(work) ? work : { history: { ...work.history, present } };
  });
}

/** Inches or centimetres: how lengths are shown, no edit of the work, so no step. */
export function showIn(unit: LengthUnit): void {
  if (pattern(useWork.getState()).unit === unit) return;
  amendPattern((before) => ({ ...before, unit }));
  announce(unit === 'in' ? 'Lengths in inches' : 'Lengths in centimetres');
}

export function undo(): void {
  const { history } = useWork.getState();
  const label = undoLabel(history);
  if (label === null) return;
  goThrough(undone(history));
  announce(`Undone: ${label}`);
}

export function redo(): void {
  const { history } = useWork.getState();
  const label = redoLabel(history);
  if (label === null) return;
  goThrough(redone(history));
  announce(`Done again: ${label}`);
}

/** Goes back or forward until that many steps lie behind. */
export function goToStep(count: number): void {
  const { history } = useWork.getState();
  if (history.past.length === count) return;
  goThrough(gone(history, count));
  const last = undoLabel(useWork.getState().history);
  announce(last === null ? 'Back before the first step' : `Now after: ${last}`);
}

/**
 * Shows the document that was gone back (or forward) to. The block that the step was about opens, so that nobody
 * undoes what is not to be seen, and where the open one is gone, the one before it; the unit stays, it is how the maker reads and no work.
 */
function goThrough(history: History<Pattern>): void {
  const work = useWork.getState();
  const { unit, blocks } = pattern(work);
  const after = history.present;
  const present = after.unit === unit ? after : { ...after, unit };
  const same = (a: Block, b: Block) =>
    a.id === b.id &&
    a.name === b.name &&
    a.grid === b.grid &&
    a.gridParts === b.gridParts &&
    a.drawing === b.drawing &&
    a.sewing === b.sewing &&
    a.pressings === b.pressings &&
    a.tracing === b.tracing &&
    sameToAll(a, b);
  const isThere = ({ id }: Block) => after.blocks.some((block) => block.id === id);
  const changed = after.blocks.filter((block) => !blocks.some((before) => same(before, block)));
  const nearest =
    blocks.slice(0, blocks.indexOf(currentBlock(work)) + 1).findLast(isThere) ?? after.blocks[0]!;
  const shown = changed.find(({ id }) => id === nearest.id) ?? changed[0] ?? nearest;
  useWork.setState({ history: { ...history, present }, blockId: shown.id, selection: NOTHING, inHand: null });
  withdrawOffer();
}

/** Whether the maker gave the patches of both the same: the rest of the records is found anew for every drawing. */
function sameToAll({ patches: a }: Block, { patches: b }: Block): boolean {
  if (a === b) return true;
  const given = (patches: Block['patches']) => new Map(patches.filter(isGiven).map((one) => [one.id, one]));
  const [before, after] = [given(a), given(b)];
  return (
    before.size === after.size &&
    [...before].every(([id, one]) => after.has(id) && sameGifts(one, after.get(id)!))
  );
}
