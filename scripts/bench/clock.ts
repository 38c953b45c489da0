/** Milliseconds spent on repeating what takes little time; the least of the runs is least disturbed. */
const SPENT = 150;
const MOST_RUNS = 30;
/** Milliseconds. What takes longer is run once. */
const LONG = 1000;
/** Milliseconds. In a shorter time the system may not count the processor's use exactly. */
const COUNTED = 50;

/**
 * Milliseconds that `run` takes, and what came of it: the least of several runs where it takes little.
 *
 * Where a run is so long that other programs have the processor in the meantime, that is left out.
 */
export function timed<T>(run: () => T): { ms: number; result: T } {
  // What others left is cleared away once. Before every run it would throw away what was compiled for it, too.
  globalThis.gc?.();
  let least = Number.POSITIVE_INFINITY;
  const start = performance.now();
  for (let runs = 1; ; runs += 1) {
    const usedBefore = process.cpuUsage();
    const before = performance.now();
    const result = run();
    const now = performance.now();
    const { user, system } = process.cpuUsage(usedBefore);
    const passed = now - before;
    least = Math.min(least, passed < COUNTED ? passed : Math.min(passed, (user + system) / 1000));
    const spent = now - start;
    if (runs === MOST_RUNS || spent > LONG || (spent > SPENT && runs > 1)) return { ms: least, result };
  }
}
