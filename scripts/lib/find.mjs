import { spawnSync } from 'node:child_process';
import { statSync } from 'node:fs';
import { posix, win32 } from 'node:path';
import { run } from './run.mjs';

/**
 * Finding the programs that the checks need and that no npm package brings: a Chromium, and readers of PDFs.
 *
 * What may be looked at and done is handed in as a {@link Machine}, so that the order of places can be tested
 * without any of them being there.
 */

/**
 * @typedef {object} Machine
 * @property {Record<string, string | undefined>} env
 * @property {string} platform as in `process.platform`
 * @property {boolean} root may packages of the system be installed
 * @property {(path: string) => boolean} isFile
 * @property {(path: string) => boolean} works does the program answer when asked for its version
 * @property {(command: string, args: readonly string[]) => Promise<number>} run exit status
 */

/**
 * What came of a search: `path` of the program or, where there is none, `null`; and one line saying what was done.
 *
 * @typedef {{ path: string, said: string } | { path: null, said: string }} Found
 */

/** @type {Machine} */
export const thisMachine = {
  env: process.env,
  platform: process.platform,
  root: process.getuid?.() === 0,
  isFile: (path) => statSync(path, { throwIfNoEntry: false })?.isFile() ?? false,
  works: (path) =>
    // Chrome on Windows opens a window when asked for its version.
    process.platform === 'win32' ||
    spawnSync(path, [/pdf(to|info)/.test(path) ? '-v' : '--version'], { stdio: 'ignore', timeout: 20_000 })
      .status === 0,
  run: (command, args) => run(command, args, { env: { DEBIAN_FRONTEND: 'noninteractive' } }),
};

/** Names of the programs on the PATH, the plain one first. */
const CHROMIUM_NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

/**
 * The first of `names` that is a file in a folder of the PATH.
 *
 * @param {readonly string[]} names
 * @param {Machine} machine
 * @returns {string | null}
 */
export function onPath(names, machine) {
  const { delimiter, join } = machine.platform === 'win32' ? win32 : posix;
  const folders = (machine.env.PATH ?? machine.env.Path ?? '').split(delimiter).filter((f) => f !== '');
  const ending = machine.platform === 'win32' ? '.exe' : '';
  for (const name of names) {
    for (const folder of folders) {
      const path = join(folder, name + ending);
      if (machine.isFile(path) && machine.works(path)) return path;
    }
  }
  return null;
}

/**
 * Where installers put a Chromium that is not on the PATH.
 *
 * @param {Machine} machine
 * @returns {string[]}
 */
export function usualPlaces(machine) {
  if (machine.platform === 'darwin') {
    return [
      '/Applications/Chromium.app/Contents/MacOS/Chromium',
      '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    ];
  }
  if (machine.platform === 'win32') {
    return ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA']
      .map((name) => machine.env[name])
      .filter((folder) => folder !== undefined)
      .flatMap((folder) => [
        win32.join(folder, 'Chromium', 'Application', 'chrome.exe'),
        win32.join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
      ]);
  }
  return [];
}

/**
 * A Chromium that is already there: the one that `SEAMWRIGHT_CHROMIUM` names, or else the system's.
 *
 * @param {Machine} machine
 * @returns {Found}
 */
export function presentChromium(machine) {
  const named = machine.env.SEAMWRIGHT_CHROMIUM;
  if (named !== undefined && named !== '') {
    return machine.isFile(named)
      ? { path: named, said: `Chromium: ${named}, as SEAMWRIGHT_CHROMIUM says` }
      : {
          path: null,
          said: `SEAMWRIGHT_CHROMIUM names ${named}, where there is no file: correct it, or unset it to have a Chromium found`,
        };
  }
  const system =
    onPath(CHROMIUM_NAMES, machine) ??
    usualPlaces(machine).find((path) => machine.isFile(path) && machine.works(path)) ??
    null;
  return system === null
    ? { path: null, said: 'Chromium: none on this system' }
    : { path: system, said: `Chromium: the system's, ${system}` };
}

/**
 * Can Debian packages be installed here.
 *
 * @param {Machine} machine
 */
const hasDebianPackages = (machine) =>
  machine.platform === 'linux' && machine.root && onPath(['apt-get'], machine) !== null;

/**
 * Installs one Debian package.
 *
 * @param {string} name
 * @param {Machine} machine
 * @returns {Promise<boolean>} whether it went well
 */
async function installDebianPackage(name, machine) {
  if ((await machine.run('apt-get', ['update'])) !== 0) return false;
  return (await machine.run('apt-get', ['install', '-y', name])) === 0;
}

/**
 * A Chromium for the browser tests. In this order: the one that `SEAMWRIGHT_CHROMIUM` names (and no other, when it
 * is set), the system's, Debian's package when root, Playwright's own download.
 *
 * @param {Machine} machine
 * @param {() => Promise<string | null>} download fetches Playwright's own and returns its path, `null` if it cannot
 * @returns {Promise<Found>}
 */
export async function findChromium(machine, download) {
  const present = presentChromium(machine);
  if (present.path !== null || machine.env.SEAMWRIGHT_CHROMIUM) return present;

  const tried = ['none on this system'];
  if (hasDebianPackages(machine)) {
    if (await installDebianPackage('chromium', machine)) {
      const path = onPath(CHROMIUM_NAMES, machine);
      if (path !== null) return { path, said: `Chromium: installed Debian's package, ${path}` };
    }
    tried.push("Debian's package could not be installed");
  }
  const path = await download();
  if (path !== null) return { path, said: `Chromium: Playwright's own download, ${path}` };
  tried.push("Playwright's own could not be downloaded");
  return {
    path: null,
    said: `No Chromium (${tried.join('; ')}): install one, or set SEAMWRIGHT_CHROMIUM to the path of one`,
  };
}

/**
 * The switches of a Chromium that tests drive: no window, no graphics card, no calls home.
 *
 * @param {Machine} machine
 * @returns {string[]}
 */
export function chromiumSwitches(machine) {
  return [
    // Chromium refuses to start its sandbox as root, and only then is it left out.
    ...(machine.root ? ['--no-sandbox'] : []),
    '--headless',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ];
}

/**
 * A reader of printed pages: programs that come together, in one Debian package.
 *
 * @typedef {{ name: string, programs: readonly [string, ...string[]], debian: string }} Reader
 */

/** @type {Reader} */
export const POPPLER = {
  name: 'Poppler',
  programs: ['pdftocairo', 'pdfinfo', 'pdftotext', 'pdftoppm'],
  debian: 'poppler-utils',
};

/** @type {Reader} */
export const QPDF = { name: 'qpdf', programs: ['qpdf'], debian: 'qpdf' };

/** @type {Reader} */
export const LIBRSVG = { name: 'librsvg', programs: ['rsvg-convert'], debian: 'librsvg2-bin' };

/**
 * A reader by which the tests measure printed pages. In this order: the system's, Debian's package when root. Without
 * it the tests that need it skip themselves.
 *
 * @param {Reader} reader
 * @param {Machine} machine
 * @returns {Promise<Found>} with the path of its first program
 */
export async function findReader({ name, programs, debian }, machine) {
  const present = () => {
    const paths = programs.map((program) => onPath([program], machine));
    return paths.includes(null) ? null : (paths[0] ?? null);
  };
  const system = present();
  if (system !== null) return { path: system, said: `${name}: the system's, ${system}` };
  if (hasDebianPackages(machine) && (await installDebianPackage(debian, machine))) {
    const path = present();
    if (path !== null) return { path, said: `${name}: installed Debian's package, ${path}` };
  }
  return {
    path: null,
    said: `No ${name} (${programs.join(', ')}) on the PATH: the tests that read printed pages by it are skipped`,
  };
}
