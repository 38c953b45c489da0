import { expect, test } from 'vitest';
import {
  chromiumSwitches,
  findChromium,
  findReader,
  LIBRSVG,
  type Machine,
  onPath,
  POPPLER,
  QPDF,
  usualPlaces,
} from './find.mjs';

/**
 * A made-up machine: which files are there, which of them do not work, and what installing a package adds. It writes
 * down what was run.
 */
function machine(
  made: Partial<Machine> & { files?: string[]; broken?: string[]; apt?: Record<string, string[]> } = {},
): Machine & { ran: string[] } {
  const files = new Set(made.files ?? []);
  const ran: string[] = [];
  return {
    env: { PATH: '/usr/local/bin:/usr/bin' },
    platform: 'linux',
    root: false,
    isFile: (path) => files.has(path),
    works: (path) => !(made.broken ?? []).includes(path),
    run: async (command, args) => {
      ran.push([command, ...args].join(' '));
      if (args[0] === 'update') return 0;
      const added = made.apt?.[args[2] ?? ''];
      for (const file of added ?? []) files.add(file);
      return added === undefined ? 100 : 0;
    },
    ran,
    ...made,
  };
}

const noDownload = async () => null;
const mustNotDownload = async (): Promise<string | null> => {
  throw new Error('nothing was to be downloaded');
};

test('the environment names the Chromium before the system is looked at', async () => {
  const found = await findChromium(
    machine({
      env: { PATH: '/usr/bin', SEAMWRIGHT_CHROMIUM: '/opt/mine' },
      files: ['/opt/mine', '/usr/bin/chromium'],
    }),
    mustNotDownload,
  );
  expect(found).toEqual({ path: '/opt/mine', said: 'Chromium: /opt/mine, as SEAMWRIGHT_CHROMIUM says' });
});

test('a named Chromium that is not there is an error, and no other is taken instead', async () => {
  const here = machine({
    env: { PATH: '/usr/bin', SEAMWRIGHT_CHROMIUM: '/opt/gone' },
    files: ['/usr/bin/chromium', '/usr/bin/apt-get'],
    root: true,
  });
  const found = await findChromium(here, mustNotDownload);
  expect(found.path).toBeNull();
  expect(found.said).toContain('SEAMWRIGHT_CHROMIUM names /opt/gone, where there is no file');
  expect(here.ran).toEqual([]);
});

test("the system's Chromium comes before packages and downloads", async () => {
  const here = machine({ files: ['/usr/bin/google-chrome', '/usr/bin/apt-get'], root: true });
  expect(await findChromium(here, mustNotDownload)).toEqual({
    path: '/usr/bin/google-chrome',
    said: "Chromium: the system's, /usr/bin/google-chrome",
  });
  expect(here.ran).toEqual([]);
});

test("root gets Debian's package before Playwright's download", async () => {
  const here = machine({
    files: ['/usr/bin/apt-get'],
    root: true,
    apt: { chromium: ['/usr/bin/chromium'] },
  });
  expect(await findChromium(here, mustNotDownload)).toEqual({
    path: '/usr/bin/chromium',
    said: "Chromium: installed Debian's package, /usr/bin/chromium",
  });
  expect(here.ran).toEqual(['apt-get update', 'apt-get install -y chromium']);
});

test("without root, or where the package does not help, Playwright's download is taken", async () => {
  const download = async () => '/home/a/.cache/chrome';
  const said = "Chromium: Playwright's own download, /home/a/.cache/chrome";
  const user = machine({ files: ['/usr/bin/apt-get'] });
  expect((await findChromium(user, download)).said).toBe(said);
  expect(user.ran).toEqual([]);
  const noPackage = machine({ files: ['/usr/bin/apt-get'], root: true });
  expect((await findChromium(noPackage, download)).said).toBe(said);
});

test('a program that is there but does not answer is passed over', async () => {
  // Ubuntu's chromium-browser only tells how to install something else.
  const here = machine({
    files: ['/usr/bin/chromium-browser', '/usr/bin/google-chrome'],
    broken: ['/usr/bin/chromium-browser'],
  });
  expect((await findChromium(here, noDownload)).path).toBe('/usr/bin/google-chrome');
});

test('when nothing helps it says what was tried and what to do', async () => {
  const here = machine({ files: ['/usr/bin/apt-get'], root: true });
  expect(await findChromium(here, noDownload)).toEqual({
    path: null,
    said:
      "No Chromium (none on this system; Debian's package could not be installed; Playwright's own could not be " +
      'downloaded): install one, or set SEAMWRIGHT_CHROMIUM to the path of one',
  });
});

test('the sandbox is left out for root alone', () => {
  expect(chromiumSwitches(machine({ root: true }))).toContain('--no-sandbox');
  expect(chromiumSwitches(machine({ root: false }))).not.toContain('--no-sandbox');
});

test('names come before folders, and Windows has its own way of writing both', () => {
  expect(onPath(['a', 'b'], machine({ files: ['/usr/local/bin/b', '/usr/bin/a'] }))).toBe('/usr/bin/a');
  expect(onPath(['a'], machine({ env: {}, files: ['/usr/bin/a'] }))).toBeNull();
  const windows = machine({ platform: 'win32', env: { Path: 'C:\\x;D:\\y' }, files: ['D:\\y\\chrome.exe'] });
  expect(onPath(['chrome'], windows)).toBe('D:\\y\\chrome.exe');
});

test('the usual places of other systems are looked at', async () => {
  const mac = '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome';
  expect((await findChromium(machine({ platform: 'darwin', files: [mac] }), noDownload)).path).toBe(mac);
  expect(usualPlaces(machine({ platform: 'win32', env: { PROGRAMFILES: 'C:\\Program Files' } }))).toContain(
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  );
});

const files = POPPLER.programs.map((program) => `/usr/bin/${program}`);

test("a reader of PDFs: the system's, or Debian's package when root, or a line that says what is skipped", async () => {
  expect((await findReader(POPPLER, machine({ files }))).said).toBe(
    "Poppler: the system's, /usr/bin/pdftocairo",
  );
  const bare = machine({ files: ['/usr/bin/apt-get'], root: true, apt: { 'poppler-utils': files } });
  expect((await findReader(POPPLER, bare)).said).toBe(
    "Poppler: installed Debian's package, /usr/bin/pdftocairo",
  );
  expect(await findReader(QPDF, machine())).toEqual({
    path: null,
    said: 'No qpdf (qpdf) on the PATH: the tests that read printed pages by it are skipped',
  });
});

test("a reader of SVG: the system's, or the Debian package whose name is not the program's", async () => {
  expect((await findReader(LIBRSVG, machine({ files: ['/usr/bin/rsvg-convert'] }))).path).toBe(
    '/usr/bin/rsvg-convert',
  );
  const bare = machine({
    files: ['/usr/bin/apt-get'],
    root: true,
    apt: { 'librsvg2-bin': ['/usr/bin/rsvg-convert'] },
  });
  expect((await findReader(LIBRSVG, bare)).said).toBe(
    "librsvg: installed Debian's package, /usr/bin/rsvg-convert",
  );
});

test('half a Poppler is none', async () => {
  expect((await findReader(POPPLER, machine({ files: files.slice(0, 2) }))).path).toBeNull();
});
