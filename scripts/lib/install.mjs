import { workspace } from './root.mjs';
import { run } from './run.mjs';

/**
 * The arguments of `npx` that install the workspace's packages.
 *
 * @param {string} packageManager the field of package.json, e.g. `pnpm@10.34.9`
 * @returns {string[]}
 */
export function installArguments(packageManager) {
  if (!/^pnpm@\d+\.\d+\.\d+$/.test(packageManager)) {
    throw new Error(`packageManager is ${packageManager}; it has to be pnpm@ and one exact version`);
  }
  // --prod=false: with NODE_ENV=production in the environment the tools would be left out.
  return ['--yes', packageManager, 'install', '--frozen-lockfile', '--prod=false'];
}

/**
 * Installs exactly what the lockfile says, with the pinned pnpm fetched for this one run; nothing global.
 *
 * @returns {Promise<number>} exit status
 */
export function install() {
  return run(
    process.platform === 'win32' ? 'npx.cmd' : 'npx',
    installArguments(workspace().packageManager),
    // CI: pnpm then asks nothing.
    { env: { CI: 'true' } },
  );
}
