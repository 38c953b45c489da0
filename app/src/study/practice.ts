/** Milliseconds without a question: not between two moves of a drag. */
const QUIET = 100;

/** Patches: when so many have been studied, the engine has compiled what a study runs through (measured; see docs/performance.md). */
const ENOUGH = 4000;

/** One drawing is studied again so often at most. */
const MOST = 20;

/** Patches: a question that comes meanwhile waits for the end of one study, so none of a larger block is begun. */
const LARGEST = 400;

/**
 * Studies what was asked last again, while nobody asks anything. A new worker takes ten times as long as one that has
 * done the same for a while, for the engine compiles what is run often; without practice that would be the first moves of
 * the first drag.
 */
export class Practice {
  private studied = 0;
  private timer: ReturnType<typeof setTimeout> | undefined;

  /**
   * Called at each answer.
   *
   * @param patches of the drawing; 0 where it could not be taken apart
   * @param again studies the same drawing once more
   */
  after(patches: number, again: () => void): void {
    clearTimeout(this.timer);
    this.studied += patches;
    if (patches === 0 || patches > LARGEST) return;
    let left = MOST;
    const next = () => {
      if (left === 0 || this.studied >= ENOUGH) return;
      left -= 1;
      this.studied += patches;
      again();
      // As a task of its own: what was asked meanwhile comes first.
      this.timer = setTimeout(next);
    };
    this.timer = setTimeout(next, QUIET);
  }
}
