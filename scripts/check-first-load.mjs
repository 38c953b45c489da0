/**
 * Checks that what only some visits need is not in the application's first load. Needs the build.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { dist, firstLoad, firstLoadProblems, readManifest } from './lib/first-load.mjs';

/** @type {import('./lib/first-load.mjs').Forbidden[]} */
const FORBIDDEN = [{ what: 'the PDF writer (jspdf)', mark: '/PrintScaling' }];

const first = firstLoad(readManifest());
const all = readdirSync(dist, { recursive: true })
  .map((file) => String(file).replaceAll('\\', '/'))
  .filter((file) => file.endsWith('.js'));
const problems = firstLoadProblems(first, all, FORBIDDEN, (file) => readFileSync(join(dist, file), 'utf8'));

console.log(`The first load is ${first.join(', ')}`);
for (const problem of problems) console.error(problem);
if (problems.length === 0) console.log(`It holds none of: ${FORBIDDEN.map((f) => f.what).join(', ')}`);
process.exitCode = problems.length === 0 ? 0 : 1;
