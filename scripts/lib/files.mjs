import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './root.mjs';

/**
 * The repository's files, those that are new and not ignored too: paths with slashes, from the top folder on.
 *
 * @returns {string[]}
 */
export const repositoryFiles = () =>
  execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', '-z'], {
    cwd: root,
    encoding: 'utf8',
  })
    .split('\0')
    // Git names files that were deleted and not yet committed.
    .filter((path) => path !== '' && existsSync(join(root, path)));
