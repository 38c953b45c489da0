/**
 * Checks that a first visit does not load what only some visits need. Needs the build.
 */
import { readdirSync } from 'node:fs';
import { dist, firstLoadProblems, firstVisitFiles, readBuilt, readManifest } from './lib/first-load.mjs';

/** @type {import('./lib/first-load.mjs').Forbidden[]} */
const FORBIDDEN = [
  { what: 'the PDF writer (jspdf)', mark: '%PDF-' },
  { what: 'the shelf of starting points', mark: 'Courthouse steps' },
];

const first = firstVisitFiles(readManifest(), readBuilt);
const scripts = readdirSync(dist, { recursive: true })
  .map((file) => String(file).replaceAll('\\', '/'))
  .filter((file) => file.endsWith('.js'));
const problems = firstLoadProblems(first, scripts, FORBIDDEN, readBuilt);

console.log(`A first visit loads ${first.join(', ')}`);
for (const problem of problems) console.error(problem);
if (problems.length === 0) console.log(`None of them holds ${FORBIDDEN.map((f) => f.what).join(', ')}`);
process.exitCode = problems.length === 0 ? 0 : 1;
