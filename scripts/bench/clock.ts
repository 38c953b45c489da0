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

/**
 * Milliseconds that `run` takes, and what came of it: the least of many runs where it takes little. The least, and not the mean:
 * what else goes on in a computer can only add to a time, so the least of many is the figure that comes out again.
 *
 * While other programs have the processor, that is left out, as far as the system counts finely enough.
 */
export function timed<T>(run: () => T): { ms: number; result: T } {
  // What others left is cleared away once. Before every run it would throw away what was compiled for it, too.
  globalThis.gc?.();
  let least = Number.POSITIVE_INFINITY;
  let spent = 0;
  for (let runs = 1; ; runs += 1) {
    const usedBefore = used();
    const before = performance.now();
    const result = run();
    const passed = performance.now() - before;
    const counted = used() - usedBefore;
    const took = counted < STEPS * STEP ? passed : Math.min(passed, counted);
    least = Math.min(least, took);
    spent += took;
    if (runs === MOST_RUNS || spent > LONG || (spent > SPENT && runs > 1)) return { ms: least, result };
  }
}
