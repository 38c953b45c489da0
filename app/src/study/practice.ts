/** Milliseconds without a question: not between two moves of a drag. */
const QUIET = 100;

/** Patches: when so many have been studied, the engine has compiled what a study runs through (measured; see docs/performance.md). */
export const ENOUGH = 4000;

/** Patches: a question that comes meanwhile waits for the end of one study, so none of a larger block is begun. */
const LARGEST = 400;

/** Does something later, as a task of its own; gives back what calls it off. */
export type Later = (task: () => void) => () => void;

/** How much is practised, and when. */
export interface Routine {
  readonly later: Later;
  /** One drawing is studied again so often at least, and at most. */
  readonly least: number;
  readonly most: number;
  /** @param studied patches that were studied up to now */
  readonly isEnough: (studied: number) => boolean;
}

/** As soon as what came meanwhile is done, until a first drag is no slower than the next. */
const SOON: Routine = {
  later: (task) => {
    const timer = setTimeout(task);
    return () => clearTimeout(timer);
  },
  least: 0,
  most: 20,
  isEnough: (studied) => studied >= ENOUGH,
};

/**
 * Studies what was asked last again, while nobody asks anything. An engine that is new to it takes ten times as long for a
 * study as one that has done the same for a while, for it compiles what is run often; without practice that would be the
 * first moves of the first drag.
 */
export class Practice {
  private studied = 0;
  private callOff = () => {};

  constructor(private readonly routine: Routine = SOON) {}

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
    const { later, least, most, isEnough } = this.routine;
    let times = 0;
    const next = () => {
      if (times === most || (times >= least && isEnough(this.studied))) return;
      times += 1;
      this.studied += patches;
      again();
      this.callOff = later(next);
    };
    const timer = setTimeout(next, QUIET);
    this.callOff = () => clearTimeout(timer);
  }

  /** Called at each question that does not wait for an answer. */
  stop(): void {
    this.callOff();
  }
}
