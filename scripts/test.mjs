/**
 * Installs what the checks need and runs every check.
 *
 *     npm test                                  all of them
 *     node scripts/test.mjs --only style,types  these alone, on what is installed already
 *     node scripts/test.mjs --list              what there is
 *     node scripts/test.mjs --pictures          the browser tests renew the guide's pictures in docs/images, too
 *
 * Each step says its result in one line; a failed step does not stop those that do not need it. The last line is the
 * sum over all tests and all other checks. The exit status is 0 when nothing failed.
 */
import { parseArgs } from 'node:util';
import { allChecks } from './lib/checks.mjs';
import { nodeProblem } from './lib/node-version.mjs';
import { workspace } from './lib/root.mjs';
import { chooseSteps, runSteps, summary } from './lib/steps.mjs';
import { sum } from './lib/totals.mjs';

/** @type {import('node:util').ParseArgsConfig} */
const call = {
  options: {
    only: { type: 'string', default: '' },
    list: { type: 'boolean', default: false },
    pictures: { type: 'boolean', default: false },
  },
};

/**
 * What was asked for.
 *
 * @returns {{ list: boolean, steps: import('./lib/steps.mjs').Step[] }}
 */
function asked() {
  const { values } = parseArgs(call);
  const only = String(values.only)
    .split(',')
    .filter((name) => name !== '');
  const steps = allChecks({ renewPictures: values.pictures === true });
  return { list: values.list === true, steps: chooseSteps(steps, only) };
}

async function main() {
  const problem = nodeProblem(process.versions.node, workspace().engines.node);
  if (problem !== null) throw new Error(problem);
  const { list, steps } = asked();
  if (list) {
    for (const step of steps) console.log(`${step.name.padEnd(10)} ${step.does}`);
    return;
  }
  const results = await runSteps(steps, console.log);
  process.exitCode = sum(results.map((result) => result.tally)).failed > 0 ? 1 : 0;
  console.log(summary(results));
}

try {
  await main();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 2;
}
