import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { root } from './root.mjs';

/** The built application. */
export const dist = join(root, 'app', 'dist');

/**
 * Reads a file of the built application.
 *
 * @param {string} file path inside the built folder
 */
export const readBuilt = (file) => readFileSync(join(dist, file), 'utf8');

/**
 * What Vite's manifest says of one chunk.
 *
 * @typedef {object} Chunk
 * @property {string} file
 * @property {boolean} [isEntry]
 * @property {readonly string[]} [imports] keys of the chunks that it imports at its start
 * @property {readonly string[]} [dynamicImports] keys of the chunks that it may import later
 * @property {readonly string[]} [css]
 * @property {readonly string[]} [assets] files that it names; scripts among them are workers
 */

/** @typedef {Readonly<Record<string, Chunk>>} Manifest */

/**
 * The manifest of the build.
 *
 * @returns {Manifest}
 */
export const readManifest = () => JSON.parse(readBuilt('.vite/manifest.json'));

/** The key of the chunk that a first visit goes on to: the station in which a block is drawn. */
const FIRST_STATION = 'src/stations/draft/draft-station.tsx';

/**
 * The scripts and style sheets that are loaded before anything is shown: the entry's, and all that it imports at its
 * start.
 *
 * @param {Manifest} manifest
 * @returns {string[]} paths inside the built folder, sorted
 */
export const entryFiles = (manifest) => [...chunkFiles(manifest, entryKeys(manifest)).loaded].sort();

/**
 * The scripts and style sheets that are loaded before a line can be drawn: the entry's, the first station's, and those
 * of the workers that either starts.
 *
 * @param {Manifest} manifest
 * @param {(file: string) => string} read
 * @returns {string[]} paths inside the built folder, sorted
 */
export function firstVisitFiles(manifest, read) {
  const { loaded, workers } = chunkFiles(manifest, [...entryKeys(manifest), FIRST_STATION]);
  return [...new Set([...loaded, ...withStaticImports(workers, read)])].sort();
}

/** @param {Manifest} manifest */
function entryKeys(manifest) {
  const keys = Object.keys(manifest).filter((key) => manifest[key]?.isEntry);
  if (keys.length === 0) throw new Error('The manifest names no entry: is this the build of an application?');
  return keys;
}

/**
 * The files of some chunks and of all that they import at their start, directly or not.
 *
 * @param {Manifest} manifest
 * @param {readonly string[]} keys
 */
function chunkFiles(manifest, keys) {
  const loaded = new Set();
  const workers = new Set();
  const seen = new Set(keys);
  // A Set yields what is added to it while it is walked.
  for (const key of seen) {
    const chunk = manifest[key];
    if (chunk === undefined) throw new Error(`The manifest has no chunk ${key}`);
    for (const file of [chunk.file, ...(chunk.css ?? [])]) loaded.add(file);
    for (const asset of chunk.assets ?? []) if (asset.endsWith('.js')) workers.add(asset);
    for (const next of chunk.imports ?? []) seen.add(next);
  }
  return { loaded, workers };
}

/**
 * Scripts, with what they import at their start. Workers are built apart, and the manifest says nothing of them.
 *
 * @param {Iterable<string>} files
 * @param {(file: string) => string} read
 */
function withStaticImports(files, read) {
  const seen = new Set(files);
  for (const file of seen) {
    for (const target of staticImports(read(file))) seen.add(posix.join(posix.dirname(file), target));
  }
  return seen;
}

/**
 * The files that a built script imports at its start; not those that it may `import()` later.
 *
 * @param {string} code
 * @returns {string[]} as written, e.g. `./shared.js`
 */
export const staticImports = (code) =>
  [...code.matchAll(/\b(?:import|from)\s*["'`](\.{1,2}\/[^"'`]+)["'`]/g)].map((match) => match[1] ?? '');

/**
 * Something that a first visit must not load, known by words that every build of it holds.
 *
 * @typedef {{ what: string, mark: string }} Forbidden
 */

/**
 * Compares what is loaded first with what must not be.
 *
 * The marks have to turn up in some file of the build: otherwise the check would have gone blind, and that is a
 * problem too.
 *
 * @param {readonly string[]} first files that are loaded first
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
      .map((file) => `${what} is in ${file}, which a first visit loads: import it only when it is used.`);
  });
}
