/** Milliseconds without a question: not between two moves of a drag. */
const QUIET = 100;

/** Patches: when so many have been studied, the engine has compiled what a study runs through (measured; see docs/performance.md). */
const ENOUGH = 4000;

/** One drawing is studied again so often at most. */
const MOST = 20;

/** Patches: a question that comes meanwhile waits for the end of one study, so none of a larger block is begun. */
const LARGEST = 400;

/** Does something later, as a task of its own; gives back what calls it off. */
export type Later = (task: () => void) => () => void;

/** As soon as what came meanwhile is done. */
const soon: Later = (task) => {
  const timer = setTimeout(task);
  return () => clearTimeout(timer);
};

/**
 * Studies what was asked last again, while nobody asks anything. An engine that is new to it takes ten times as long for a
 * study as one that has done the same for a while, for it compiles what is run often; without practice that would be the
 * first moves of the first drag.
 */
export class Practice {
  private studied = 0;
  private callOff = () => {};

  /**
   * @param later when the next one is done
   * @param least so often the last drawing is studied again however many have been before
   */
  constructor(
    private readonly later: Later = soon,
    private readonly least = 0,
  ) {}

  /**
   * Called at each answer.
   *
   * @param patches of the drawing; 0 where it could not be taken apart
   * @param again studies the same drawing once more
   */
  after(patches: number, again: () => void): void {
    this.stop();
    this.studied += patches;
    if (patches === 0 || patches > LARGEST) return;
    let times = 0;
    const next = () => {
      if (times === MOST || (times >= this.least && this.studied >= ENOUGH)) return;
      times += 1;
      this.studied += patches;
      again();
      this.callOff = this.later(next);
    };
    const timer = setTimeout(next, QUIET);
    this.callOff = () => clearTimeout(timer);
  }

  /** Called at each question that does not wait for an answer. */
  stop(): void {
    this.callOff();
  }
}
