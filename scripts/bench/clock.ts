/** Milliseconds of the processor spent on repeating what takes little time; the least of the runs is least disturbed. */
const SPENT = 300;
const MOST_RUNS = 3000;
/** Milliseconds. What takes longer is run once. */
const LONG = 1000;
/** A run that takes fewer of the smallest steps in which the system counts the processor's use is timed by the clock alone. */
const STEPS = 50;

const used = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** Milliseconds: the smallest step in which the system counts the processor's use. Some count exactly, some by clock ticks. */
const STEP = Math.min(
  ...Array.from({ length: 5 }, () => {
    const before = used();
    let now = before;
    while (now === before) now = used();
    return now - before;
  }),
);

/** What one run takes, in milliseconds, and what came of it. While other programs have the processor, that is left out. */
function once<T>(run: () => T): { ms: number; result: T } {
  const usedBefore = used();
  const before = performance.now();
  const result = run();
  const passed = performance.now() - before;
  const counted = used() - usedBefore;
  // As far as the system counts finely enough.
  return { ms: counted < STEPS * STEP ? passed : Math.min(passed, counted), result };
}

/**
 * Milliseconds that `run` takes, and what came of it: the least of many runs where it takes little. The least, and not the mean:
 * what else goes on in a computer can only add to a time, so the least of many is the figure that comes out again.
 */
export function timed<T>(run: () => T): { ms: number; result: T } {
  // What others left is cleared away once. Before every run it would throw away what was compiled for it, too.
  globalThis.gc?.();
  let least = Number.POSITIVE_INFINITY;
  let spent = 0;
  for (let runs = 1; ; runs += 1) {
    const { ms, result } = once(run);
    least = Math.min(least, ms);
    spent += ms;
    if (runs === MOST_RUNS || spent > LONG || (spent > SPENT && runs > 1)) return { ms: least, result };
  }
}

/** Milliseconds spent on each of several computations before it is the next one's turn. */
const TURN = 5;

/**
 * The least milliseconds of each of several computations that are to be compared, measured in turn, round after round. Another
 * program that takes the processor's caches for a while then disturbs some rounds of all, and not all runs of one.
 */
export function timedInTurn(runs: readonly (() => unknown)[], rounds: number): number[] {
  globalThis.gc?.();
  const least = runs.map(() => Number.POSITIVE_INFINITY);
  for (let round = 0; round < rounds; round += 1) {
    runs.forEach((run, i) => {
      for (let spent = 0; spent < TURN; ) {
        const { ms } = once(run);
        least[i] = Math.min(least[i]!, ms);
        spent += ms;
      }
    });
  }
  return least;
}
