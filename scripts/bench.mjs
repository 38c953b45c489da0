/**
 * Measures how long the computation takes.
 *
 *     npm run bench                 what there is to measure
 *     npm run bench -- sewing       every bench whose package or file name holds the word
 *
 * A bench is a program, `packages/NAME/bench/WHAT.bench.ts`, that prints tables. It is built as the application is
 * and run by Node. Figures of one run may be compared with each other, hardly with those of another machine.
 */
import { readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { build } from 'vite';
import { root } from './lib/root.mjs';
import { run } from './lib/run.mjs';

const ENDING = '.bench.ts';

/** Every bench, as a path from the top folder. */
function benches() {
  const packages = readdirSync(join(root, 'packages'), { withFileTypes: true }).filter((entry) =>
    entry.isDirectory(),
  );
  return packages
    .flatMap(({ name }) => {
      const folder = join(root, 'packages', name, 'bench');
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
    const status = await run(process.execPath, ['--expose-gc', await built(file)], { minutes: 60 });
    if (status !== 0) process.exitCode = 1;
  }
}

await main();
