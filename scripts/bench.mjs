/**
 * Measures how long the computation takes, and how immediate the screen feels.
 *
 *     npm run bench                 what there is to measure
 *     npm run bench -- sewing       every bench whose package or file name holds the word
 *
 * A bench of a package is a program, `packages/NAME/bench/WHAT.bench.ts`, that prints tables. It is built as the
 * application is and run by Node. One of the screen, `e2e/bench/WHAT.bench.ts`, is run in the browser that the tests use, on
 * the application as it is built. Figures of one run may be compared with each other, hardly with those of another machine.
 */
import { readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { build } from 'vite';
import { root } from './lib/root.mjs';
import { run, runTool } from './lib/run.mjs';

const ENDING = '.bench.ts';

/** The folder of what is done in a browser. */
const SCREEN = 'e2e';

/** Every bench, as a path from the top folder. */
function benches() {
  const packages = readdirSync(join(root, 'packages'), { withFileTypes: true }).filter((entry) =>
    entry.isDirectory(),
  );
  return [...packages.map(({ name }) => join('packages', name)), SCREEN]
    .flatMap((owner) => {
      const folder = join(root, owner, 'bench');
      try {
        return readdirSync(folder).map((file) => relative(root, join(folder, file)));
      } catch {
        return [];
      }
    })
    .filter((file) => file.endsWith(ENDING));
}

/**
 * Builds a bench into one file that Node runs.
 *
 * @param {string} file path from the top folder
 * @returns {Promise<string>} the built program
 */
async function built(file) {
  const [owner, what] = named(file);
  const folder = join(root, 'packages', owner ?? '');
  const outDir = join(folder, 'dist', 'bench');
  const program = `${what}.js`;
  await build({
    root: folder,
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    ssr: { noExternal: true },
    build: {
      ssr: join(root, file),
      outDir,
      emptyOutDir: false,
      target: 'node20',
      minify: false,
      rollupOptions: { output: { entryFileNames: program } },
    },
  });
  return join(outDir, program);
}

/**
 * What a bench goes by: its package's name and its own.
 *
 * @param {string} file path from the top folder
 */
function named(file) {
  const parts = file.split(sep);
  return [parts[1] ?? '', (parts.at(-1) ?? '').slice(0, -ENDING.length)];
}

/**
 * Builds the application, and runs a bench in the browser.
 *
 * @param {string} file path from the top folder
 * @returns {Promise<number>} exit status
 */
async function onScreen(file) {
  const status = await runTool('vite', ['build', '--logLevel', 'warn'], { cwd: join(root, 'app') });
  if (status !== 0) return status;
  return runTool('playwright', ['test', '-c', 'e2e/bench/playwright.config.ts', file], {
    env: { NO_COLOR: undefined },
  });
}

async function main() {
  const [word = ''] = process.argv.slice(2);
  const all = benches();
  const chosen = all.filter((file) => word !== '' && named(file).some((name) => name.includes(word)));
  if (chosen.length === 0) {
    console.log(`Say what to measure, e.g. npm run bench -- sewing. There is:\n${all.join('\n')}`);
    process.exitCode = word === '' ? 0 : 2;
    return;
  }
  for (const file of chosen) {
    console.log(`\n${file}`);
    const status = file.startsWith(SCREEN)
      ? await onScreen(file)
      : await run(process.execPath, ['--expose-gc', await built(file)], { minutes: 60 });
    if (status !== 0) process.exitCode = 1;
  }
}

await main();
