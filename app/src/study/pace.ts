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

  /** Milliseconds that a study of so many patches is likely to take: single ones that were held up do not count. */
  expected(patches: number): number {
    if (this.recent.length < REMEMBERED) return Number.POSITIVE_INFINITY;
    const middle = [...this.recent].sort((a, b) => a - b)[Math.floor(REMEMBERED / 2)]!;
    return middle * Math.max(patches, 1);
  }
}
