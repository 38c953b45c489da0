/** A document that was left behind, and the name of the step that leads from it to its neighbour. */
export interface Step<T> {
  readonly document: T;
  /** What the step does, in the maker's words, e.g. `Move a corner`: shown beside undo and redo. */
  readonly label: string;
}

/**
 * Every state of a document that the maker can go back to. Plain data, never changed in place; documents are
 * kept whole (they share what did not change), so going back gives exactly the document that was there.
 *
 * There is no limit on the number of steps.
 */
export interface History<T> {
  /** Oldest first. `past[i]` holds the document before its step. */
  readonly past: readonly Step<T>[];
  readonly present: T;
  /** Nearest first. `future[i]` holds the document after its step. */
  readonly future: readonly Step<T>[];
  /** While set, edits recorded with the same key become one step (a drag, typing in one field). */
  readonly group: string | null;
}

/** A history with nothing to undo. */
export const startHistory = <T>(document: T): History<T> => ({
  past: [],
  present: document,
  future: [],
  group: null,
});

/**
 * Makes `next` the present.
 *
 * What was undone before is dropped. With a `group` that is the one of the edit just before, no new step is made:
 * the two are undone together, under the first one's label. An edit that gives back the very document
 * that is there is no step.
 */
export function record<T>(
  history: History<T>,
  next: T,
  label: string,
  group: string | null = null,
): History<T> {
  if (next === history.present) return history;
  if (group !== null && group === history.group) return { ...history, present: next };
  return {
    past: [...history.past, { document: history.present, label }],
    present: next,
    future: [],
    group,
  };
}

/** Ends the running group: the next edit is a step of its own, whatever its key. */
export const endGroup = <T>(history: History<T>): History<T> =>
  history.group === null ? history : { ...history, group: null };

/** Goes one step back; the same history when there is none. */
export function undo<T>(history: History<T>): History<T> {
  const step = history.past.at(-1);
  if (step === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present: step.document,
    future: [{ document: history.present, label: step.label }, ...history.future],
    group: null,
  };
}

/** Goes one undone step forward; the same history when there is none. */
export function redo<T>(history: History<T>): History<T> {
  const [step, ...future] = history.future;
  if (step === undefined) return history;
  return {
    past: [...history.past, { document: history.present, label: step.label }],
    present: step.document,
    future,
    group: null,
  };
}

/**
 * Goes back or forward until `count` steps lie behind: 0 is before the first step that is kept. Beyond either end, as
 * far as there are steps.
 */
export function goToStep<T>(history: History<T>, count: number): History<T> {
  let now = history;
  while (now.past.length > count && now.past.length > 0) now = undo(now);
  while (now.past.length < count && now.future.length > 0) now = redo(now);
  return now;
}

/** What undo would take back, or null when there is nothing. */
export const undoLabel = <T>(history: History<T>): string | null => history.past.at(-1)?.label ?? null;

/** What redo would do again, or null when there is nothing. */
export const redoLabel = <T>(history: History<T>): string | null => history.future[0]?.label ?? null;
