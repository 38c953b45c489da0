/**
 * Counting what ran. A runner that ran nothing, or ended badly without naming a failed test, counts as one failure:
 * silence is never taken for success.
 */

/** @typedef {{ passed: number, failed: number, skipped: number }} Tally */

/**
 * @param {readonly Tally[]} tallies
 * @returns {Tally}
 */
export function sum(tallies) {
  return tallies.reduce(
    (all, one) => ({
      passed: all.passed + one.passed,
      failed: all.failed + one.failed,
      skipped: all.skipped + one.skipped,
    }),
    { passed: 0, failed: 0, skipped: 0 },
  );
}

/**
 * `N passed, N failed`, and `, N skipped` where there are any.
 *
 * @param {Tally} tally
 */
export function closingLine({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}

/**
 * The tally of a step that is one check.
 *
 * @param {boolean} good
 * @returns {Tally}
 */
export const oneCheck = (good) => ({ passed: good ? 1 : 0, failed: good ? 0 : 1, skipped: 0 });

/**
 * @param {Tally} tally
 * @param {number} exitStatus
 * @returns {Tally}
 */
function withSilenceCounted(tally, exitStatus) {
  const silent = tally.failed === 0 && (exitStatus !== 0 || tally.passed === 0);
  return silent ? { ...tally, failed: 1 } : tally;
}

/**
 * Reads what Vitest's `json` reporter wrote.
 *
 * @param {any} report `null` when it wrote nothing
 * @param {number} exitStatus
 * @returns {Tally}
 */
export function tallyVitest(report, exitStatus) {
  const files = report?.testResults ?? [];
  // A file that cannot be loaded has no tests to fail: it is one failure of its own.
  const unloadable = files.filter(
    (/** @type {any} */ file) =>
      file.status === 'failed' &&
      !file.assertionResults.some((/** @type {any} */ t) => t.status === 'failed'),
  ).length;
  return withSilenceCounted(
    {
      passed: report?.numPassedTests ?? 0,
      failed: (report?.numFailedTests ?? 0) + unloadable,
      skipped: (report?.numPendingTests ?? 0) + (report?.numTodoTests ?? 0),
    },
    exitStatus,
  );
}

/**
 * Reads what Playwright's `json` reporter wrote. A test that passed only when tried again counts as failed.
 *
 * @param {any} report `null` when it wrote nothing
 * @param {number} exitStatus
 * @returns {Tally}
 */
export function tallyPlaywright(report, exitStatus) {
  const stats = report?.stats ?? {};
  return withSilenceCounted(
    {
      passed: stats.expected ?? 0,
      failed: (stats.unexpected ?? 0) + (stats.flaky ?? 0),
      skipped: stats.skipped ?? 0,
    },
    exitStatus,
  );
}
