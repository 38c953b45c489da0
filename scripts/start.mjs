/**
 * Installs, builds and serves Seamwright, and opens the demo pattern.
 *
 *     npm start
 *     npm start -- --port 5000 --no-open
 */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { opener } from './lib/desktop.mjs';
import { install } from './lib/install.mjs';
import { nodeProblem } from './lib/node-version.mjs';
import { root, workspace } from './lib/root.mjs';
import { runTool } from './lib/run.mjs';
import { address, fileServer, listen } from './lib/serve.mjs';

/** The port that was asked for, and whether a browser may be opened. */
function asked() {
  const { values } = parseArgs({
    options: { port: { type: 'string', default: '4173' }, 'no-open': { type: 'boolean', default: false } },
  });
  const port = Number(values.port);
  if (!/^\d+$/.test(values.port) || port > 65_000) {
    throw new Error(`--port is ${values.port}: give a whole number up to 65000.`);
  }
  return { wanted: port, mayOpen: !values['no-open'] };
}

/**
 * Opens an address in the system's browser where there is one to be seen.
 *
 * @param {string} url
 */
function openBrowser(url) {
  const command = opener(url, process);
  if (command === null) return;
  spawn(command.command, command.args, { stdio: 'ignore', detached: true })
    .on('error', () => console.log('No browser could be opened from here: open the address yourself.'))
    .unref();
}

async function main() {
  const problem = nodeProblem(process.versions.node, workspace().engines.node);
  if (problem !== null) throw new Error(problem);
  const { wanted, mayOpen } = asked();

  console.log('Installing …');
  if ((await install()) !== 0) {
    throw new Error(
      'The packages could not be installed: see above, and check that the npm registry can be reached.',
    );
  }
  console.log('\nBuilding …');
  if ((await runTool('vite', ['build', '--logLevel', 'warn'], { cwd: join(root, 'app') })) !== 0) {
    throw new Error('The application could not be built: see above.');
  }

  const port = await listen(fileServer(join(root, 'app', 'dist')), wanted);
  const home = address(port);
  console.log(`
Seamwright is at   ${home}
The demo pattern   ${home}?demo
Stop it with Ctrl+C.`);
  // A browser keeps each address's work apart.
  if (port !== wanted && wanted !== 0) {
    console.log(
      `Port ${wanted} is taken; work that you kept at ${address(wanted)} is not shown at this address.`,
    );
  }
  if (mayOpen) openBrowser(`${home}?demo`);
}

try {
  await main();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
