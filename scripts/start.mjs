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

const { values } = parseArgs({
  options: { port: { type: 'string', default: '4173' }, 'no-open': { type: 'boolean', default: false } },
});

/**
 * Says why it cannot go on, and ends.
 *
 * @param {string} message
 * @returns {never}
 */
function giveUp(message) {
  console.error(message);
  process.exit(1);
}

const problem = nodeProblem(process.versions.node, workspace().engines.node);
if (problem !== null) giveUp(problem);
const wanted = Number(values.port);
if (!/^\d+$/.test(values.port) || wanted > 65_000) {
  giveUp(`--port is ${values.port}: give a whole number up to 65000.`);
}

console.log('Installing …');
if ((await install()) !== 0) {
  giveUp('The packages could not be installed: see above, and check that the npm registry can be reached.');
}
console.log('\nBuilding …');
if ((await runTool('vite', ['build', 'app', '--logLevel', 'warn'])) !== 0) {
  giveUp('The application could not be built: see above.');
}

const port = await listen(fileServer(join(root, 'app', 'dist')), wanted);
const home = address(port);
console.log(`
Seamwright is at   ${home}
The demo pattern   ${home}?demo
Stop it with Ctrl+C.`);
if (port !== wanted) {
  // A browser keeps each address's work apart.
  console.log(
    `Port ${wanted} is taken; work that you kept at ${address(wanted)} is not shown at this address.`,
  );
}

const open = values['no-open'] ? null : opener(`${home}?demo`, process);
if (open !== null) {
  spawn(open.command, open.args, { stdio: 'ignore', detached: true })
    .on('error', () => console.log('No browser could be opened from here: open the address yourself.'))
    .unref();
}
