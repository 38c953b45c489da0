/**
 * Serves the built application on a free port and says which; for the browser tests.
 *
 *     node scripts/serve.mjs [FOLDER]
 */
import { join } from 'node:path';
import { root } from './lib/root.mjs';
import { fileServer, listen } from './lib/serve.mjs';

const folder = process.argv[2] ?? join(root, 'app', 'dist');
const port = await listen(fileServer(folder), 0);
console.log(`Serving on port ${port}`);
