import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { findChromium, findReader, LIBRSVG, POPPLER, QPDF, thisMachine } from './find.mjs';
import { install } from './install.mjs';
import { root } from './root.mjs';
import { run, runTool } from './run.mjs';
import { oneCheck, tallyPlaywright, tallyVitest } from './totals.mjs';

/** @typedef {import('./steps.mjs').Step} Step */
/** @typedef {import('./totals.mjs').Tally} Tally */

/**
 * Runs one tool of the workspace; it has to end well.
 *
 * @param {string} tool
 * @param {string[]} args
 */
const one = async (tool, ...args) => oneCheck((await runTool(tool, args)) === 0);

/**
 * Runs a test runner that leaves a report, and counts what the report says.
 *
 * @param {string} name the report's
 * @param {(reportFile: string) => Promise<number>} runner exit status
 * @param {(report: unknown, exitStatus: number) => Tally} tally
 */
async function counted(name, runner, tally) {
  const folder = join(root, 'test-results');
  mkdirSync(folder, { recursive: true });
  const file = join(folder, `${name}.json`);
  // An old report must not be taken for this run's.
  rmSync(file, { force: true });
  const status = await runner(file);
  let report = null;
  try {
    report = JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    // No report counts as a failure; the runner has said why.
  }
  return tally(report, status);
}

/** Compiles the TypeScript of every part, all at a time: each keeps one core busy, and says what is wrong in it. */
async function types() {
  const parts = ['packages', 'app', 'e2e', 'scripts'];
  const statuses = await Promise.all(parts.map((part) => runTool('tsc', ['-p', part])));
  return oneCheck(statuses.every((status) => status === 0));
}

async function build() {
  const statuses = [];
  for (const part of ['app', 'packages/cli']) {
    statuses.push(await runTool('vite', ['build', '--logLevel', 'warn'], { cwd: join(root, part) }));
  }
  return oneCheck(statuses.every((status) => status === 0));
}

/** Playwright's own Chromium, if it can be had: its path, or `null`. */
async function downloadChromium() {
  if ((await runTool('playwright', ['install', 'chromium'])) !== 0) return null;
  const { chromium } = await import('@playwright/test');
  return thisMachine.isFile(chromium.executablePath()) ? chromium.executablePath() : null;
}

async function chromium() {
  const found = await findChromium(thisMachine, downloadChromium);
  console.log(found.said);
  // The steps after this one take the same.
  if (found.path !== null) process.env.SEAMWRIGHT_CHROMIUM = found.path;
  return oneCheck(found.path !== null);
}

/**
 * Without a reader the tests that need it skip themselves; so does this step, and the totals show them all.
 *
 * @param {import('./find.mjs').Reader} wanted
 */
async function reader(wanted) {
  const found = await findReader(wanted, thisMachine);
  console.log(found.said);
  return found.path === null ? { passed: 0, failed: 0, skipped: 1 } : oneCheck(true);
}

const unit = () =>
  counted(
    'unit',
    (file) =>
      runTool('vitest', ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${file}`]),
    tallyVitest,
  );

/** @param {boolean} renewPictures */
const e2e = (renewPictures) =>
  counted(
    'e2e',
    (file) =>
      runTool('playwright', ['test', '-c', 'e2e/playwright.config.ts'], {
        env: {
          PLAYWRIGHT_JSON_OUTPUT_FILE: file,
          // Playwright sets the opposite for its web server, and Node then warns of the two.
          NO_COLOR: undefined,
          SEAMWRIGHT_PICTURES: renewPictures ? 'renew' : undefined,
        },
      }),
    tallyPlaywright,
  );

/**
 * Every check of the project, in order.
 *
 * @param {{ renewPictures: boolean }} options
 * @returns {Step[]}
 */
export const allChecks = ({ renewPictures }) => [
  {
    name: 'install',
    does: 'the packages that the lockfile names',
    needs: [],
    run: async () => oneCheck((await install()) === 0),
  },
  {
    name: 'chromium',
    does: 'a browser for the browser tests',
    needs: ['install'],
    run: chromium,
  },
  {
    name: 'poppler',
    does: 'a reader by which printed pages are measured',
    needs: [],
    run: () => reader(POPPLER),
  },
  {
    name: 'qpdf',
    does: 'a reader by which PDFs are checked for soundness',
    needs: [],
    run: () => reader(QPDF),
  },
  {
    name: 'librsvg',
    does: 'a reader by which saved SVG pages are measured',
    needs: [],
    run: () => reader(LIBRSVG),
  },
  {
    name: 'style',
    does: 'formatting and lint (Biome)',
    needs: ['install'],
    run: () => {
      // “biome ci” colours its output whatever NO_COLOR says.
      const colours = process.stdout.isTTY ? 'force' : 'off';
      return one('biome', 'ci', '--error-on-warnings', `--colors=${colours}`, '.');
    },
  },
  {
    name: 'types',
    does: 'types (TypeScript, strict)',
    needs: ['install'],
    run: types,
  },
  {
    name: 'imports',
    does: 'imports point one way (dependency-cruiser)',
    needs: ['install'],
    run: () => one('depcruise', '--config', '.dependency-cruiser.cjs', 'packages', 'app', 'e2e'),
  },
  {
    name: 'unused',
    does: 'no file, export or dependency is unused (knip)',
    needs: ['install'],
    run: () => one('knip'),
  },
  {
    name: 'build',
    does: 'the application and the command line (Vite)',
    needs: ['install'],
    run: build,
  },
  {
    name: 'budget',
    does: 'the size of what a visit loads first (size-limit)',
    needs: ['install', 'build'],
    run: () => one('size-limit'),
  },
  {
    name: 'firstload',
    does: 'what a visit must not load first',
    needs: ['install', 'build'],
    run: async () => oneCheck((await run(process.execPath, ['scripts/check-first-load.mjs'])) === 0),
  },
  {
    name: 'unit',
    does: 'unit and property tests (Vitest)',
    // After the build, because the contract of the command line is tested on what was built; a failed build stops none
    // of the others.
    needs: ['install'],
    run: unit,
  },
  {
    name: 'e2e',
    does: 'the built application in a real Chromium (Playwright)',
    needs: ['install', 'chromium', 'build'],
    run: () => e2e(renewPictures),
  },
];
