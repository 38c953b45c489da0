import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './root.mjs';

/** The built application. */
export const dist = join(root, 'app', 'dist');

/**
 * What Vite's manifest says of one chunk.
 *
 * @typedef {object} Chunk
 * @property {string} file
 * @property {boolean} [isEntry]
 * @property {readonly string[]} [imports] keys of the chunks that it imports at its start
 * @property {readonly string[]} [dynamicImports] keys of the chunks that it may import later
 * @property {readonly string[]} [css]
 */

/** @typedef {Readonly<Record<string, Chunk>>} Manifest */

/**
 * The manifest of the build in `app/dist`.
 *
 * @returns {Manifest}
 */
export const readManifest = () => JSON.parse(readFileSync(join(dist, '.vite', 'manifest.json'), 'utf8'));

/**
 * The scripts and style sheets that a visit loads before anything is asked for: the entry and all that it imports
 * at its start, directly or not.
 *
 * @param {Manifest} manifest
 * @returns {string[]} paths inside the built folder, sorted
 */
export function firstLoad(manifest) {
  const entries = Object.keys(manifest).filter((key) => manifest[key]?.isEntry);
  if (entries.length === 0)
    throw new Error('The manifest names no entry: is this the build of an application?');
  const seen = new Set(entries);
  const files = new Set();
  // A Set yields what is added to it while it is walked.
  for (const key of seen) {
    const chunk = manifest[key];
    if (chunk === undefined) throw new Error(`The manifest has no chunk ${key}, which another one imports`);
    files.add(chunk.file);
    for (const css of chunk.css ?? []) files.add(css);
    for (const next of chunk.imports ?? []) seen.add(next);
  }
  return [...files].sort();
}

/**
 * Something that the first load must not hold, known by words that every build of it holds.
 *
 * @typedef {{ what: string, mark: string }} Forbidden
 */

/**
 * Compares the first load with what it must not hold.
 *
 * The marks have to turn up in some file of the build: otherwise the check would have gone blind, and that is a
 * problem too.
 *
 * @param {readonly string[]} first files of the first load
 * @param {readonly string[]} all every script of the build
 * @param {readonly Forbidden[]} forbidden
 * @param {(file: string) => string} read
 * @returns {string[]} one sentence for each problem
 */
export function firstLoadProblems(first, all, forbidden, read) {
  return forbidden.flatMap(({ what, mark }) => {
    const holders = all.filter((file) => read(file).includes(mark));
    if (holders.length === 0) {
      return [`No file of the build holds “${mark}”, by which ${what} is known: choose another mark for it.`];
    }
    return holders
      .filter((file) => first.includes(file))
      .map((file) => `${what} is in ${file}, which the first load needs: import it only when it is used.`);
  });
}
