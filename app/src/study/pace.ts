/** So many studies tell how long the next one takes. */
const REMEMBERED = 5;

/** How long a study takes here now, by the last few: it depends on the computer, and on how often the engine has done it. */
export class Pace {
  /** Milliseconds for each patch, the latest last. */
  private recent: readonly number[] = [];

  /** @param milliseconds that a study of so many patches took */
  note(patches: number, milliseconds: number): void {
    this.recent = [...this.recent, milliseconds / Math.max(patches, 1)].slice(-REMEMBERED);
  }

  /**
   * Milliseconds that a study of so many patches is likely to take: as many for each as the quickest of the last took. Whatever
   * else a computer does can only add to a time, and holds up the worker as well.
   */
  expected(patches: number): number {
    if (this.recent.length < REMEMBERED) return Number.POSITIVE_INFINITY;
    return Math.min(...this.recent) * Math.max(patches, 1);
  }
}
