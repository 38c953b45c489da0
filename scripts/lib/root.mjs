import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The repository's top folder. */
export const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * The workspace's own package.json.
 *
 * @returns {{ packageManager: string, engines: { node: string } }}
 */
export const workspace = () => JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
