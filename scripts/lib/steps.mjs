import { closingLine, sum } from './totals.mjs';

/** @typedef {import('./totals.mjs').Tally} Tally */

/**
 * @typedef {object} Step
 * @property {string} name one word, for `--only`
 * @property {string} does what it checks
 * @property {readonly string[]} needs names of steps without whose success it says nothing
 * @property {() => Promise<Tally>} run
 */

/** @typedef {{ name: string, tally: Tally, seconds: number, note: string }} StepResult */

/**
 * The steps that were asked for, in their own order.
 *
 * @param {readonly Step[]} steps
 * @param {readonly string[]} only names; empty: all
 * @returns {Step[]}
 */
export function chooseSteps(steps, only) {
  const unknown = only.filter((name) => !steps.some((step) => step.name === name));
  if (unknown.length > 0) {
    throw new Error(
      `There is no step ${unknown.join(', ')}. The steps are ${steps.map((s) => s.name).join(', ')}.`,
    );
  }
  return steps.filter((step) => only.length === 0 || only.includes(step.name));
}

/**
 * Runs the steps one after the other. A failed step does not stop the rest, except those that need it: they count as
 * skipped. Steps that were not chosen are taken to be done.
 *
 * @param {readonly Step[]} steps
 * @param {(line: string) => void} say
 * @param {() => number} now milliseconds
 * @returns {Promise<StepResult[]>}
 */
export async function runSteps(steps, say, now = () => performance.now()) {
  /** @type {StepResult[]} */
  const results = [];
  const withoutSuccess = new Set();
  for (const step of steps) {
    const missing = step.needs.filter((name) => withoutSuccess.has(name));
    const start = now();
    say(`\n── ${step.name}: ${step.does}`);
    const tally = missing.length > 0 ? { passed: 0, failed: 0, skipped: 1 } : await step.run();
    const result = {
      name: step.name,
      tally,
      seconds: (now() - start) / 1000,
      note: missing.length > 0 ? `not run, for want of ${missing.join(' and ')}` : '',
    };
    if (missing.length > 0 || tally.failed > 0) withoutSuccess.add(step.name);
    results.push(result);
    say(resultLine(result));
  }
  return results;
}

/**
 * One step's result in one line.
 *
 * @param {StepResult} result
 */
export function resultLine({ name, tally, seconds, note }) {
  const sign = tally.failed > 0 ? '✗' : tally.passed > 0 ? '✓' : '–';
  return `${sign} ${name.padEnd(10)} ${`${seconds.toFixed(1)} s`.padStart(8)}  ${closingLine(tally)}${note && ` (${note})`}`;
}

/**
 * What the whole run came to: every step's line once more, and the totals alone on the last line.
 *
 * @param {readonly StepResult[]} results
 */
export function summary(results) {
  return ['', ...results.map(resultLine), '', closingLine(sum(results.map((r) => r.tally)))].join('\n');
}
