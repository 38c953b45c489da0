import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { root } from './root.mjs';

const windows = process.platform === 'win32';

/** Some tools colour their output in a CI, where nothing shows colours. */
const plain = process.stdout.isTTY || process.env.FORCE_COLOR ? {} : { NO_COLOR: '1' };

/**
 * @typedef {object} RunOptions
 * @property {string} [cwd] the repository's top folder unless said
 * @property {Record<string, string | undefined>} [env] added to this process's environment; `undefined` takes a variable out
 * @property {number} [minutes] a program that has not ended by then is stopped and counts as failed
 * @property {boolean} [quiet] keep what the program prints off the screen
 */

/**
 * Runs a program to its end, with no standard input and with its output streamed to ours.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @param {RunOptions} [options]
 * @returns {Promise<number>} its exit status; 127 when it could not be started, 1 when a signal ended it
 */
export function run(command, args, options = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: options.cwd ?? root,
      env: { ...process.env, ...plain, ...options.env },
      stdio: ['ignore', options.quiet ? 'ignore' : 'inherit', options.quiet ? 'ignore' : 'inherit'],
      // npm's programs are .cmd files there, which only a shell can start.
      shell: windows && command.endsWith('.cmd'),
    });
    // Not by the option of that name: Node would wait for it to pass, though the program never started.
    const tooLong = setTimeout(() => child.kill(), (options.minutes ?? 30) * 60_000);
    /** @param {number} status */
    const end = (status) => {
      clearTimeout(tooLong);
      resolve(status);
    };
    child.on('error', () => end(127));
    child.on('exit', (code, signal) => end(signal === null ? (code ?? 1) : 1));
  });
}

/**
 * Runs a program that the workspace's own packages installed.
 *
 * @param {string} name e.g. `biome`
 * @param {readonly string[]} args
 * @param {RunOptions} [options]
 */
export function runTool(name, args, options) {
  return run(join(root, 'node_modules', '.bin', windows ? `${name}.cmd` : name), args, options);
}
