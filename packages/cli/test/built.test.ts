import { spawnSync } from 'node:child_process';
import { existsSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { beforeAll, describe, expect, it } from 'vitest';
import { Folder, HORIZON } from './harness.ts';

const folder = new Folder();
const dist = folder.file('dist');

/** Runs the built program as a shell would, from a folder that has nothing to do with it. */
function spawned(...args: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [`${dist}/seamwright.js`, ...args], {
    cwd: folder.path,
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
}

describe('the built program', () => {
  beforeAll(async () => {
    await build({
      configFile: fileURLToPath(new URL('../vite.config.ts', import.meta.url)),
      logLevel: 'error',
      build: { outDir: dist },
    });
  });

  it('needs nothing but what the build puts beside it', () => {
    const horizon = folder.file('horizon.svg', HORIZON);
    expect(spawned('foundations', horizon, '--out', 'block.pdf', '--paper', 'a4')).toEqual({
      status: 0,
      stdout: 'horizon sews on one foundation.\nWrote block.pdf: 1 page, A4. Print at 100 %, no scaling.\n',
      stderr: '',
    });
    expect(folder.read('block.pdf').slice(0, 5)).toBe('%PDF-');
  });

  it('reads the pattern that it writes', () => {
    expect(spawned('demo', '--out', 'demo.json').status).toBe(0);
    const { status, stdout } = spawned('sewing', 'demo.json', '--json', '--block', 'lighthouse');
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({
      format: 'seamwright-sewing/1',
      verdict: 'several foundations',
    });
  });

  it('finds the solver that it plans fabric with', () => {
    const { status, stdout, stderr } = spawned(
      'cutting',
      folder.file('h.svg', HORIZON),
      '--copies',
      '8',
      '--json',
    );
    expect([status, stderr]).toEqual([0, '']);
    // By hand in cutting.test.ts; first fit alone would take 13 in.
    expect(JSON.parse(stdout).cloths).toMatchObject([{ lengthInches: 12, provenLeast: true }]);
  });

  it('ends with 2 and one line on standard error when the input is unusable', () => {
    expect(spawned('sewing', 'missing.svg')).toEqual({
      status: 2,
      stdout: '',
      stderr: 'missing.svg: There is no such file. Check its name.\n',
    });
    expect(spawned('foundations', 'missing.svg', '--out', 'none.pdf').status).toBe(2);
    expect(existsSync(folder.file('none.pdf'))).toBe(false);
  });

  it('does not take a mistake of its own for a block that cannot be sewn', () => {
    rmSync(folder.file('dist/fonts'), { recursive: true });
    const { status, stdout, stderr } = spawned(
      'foundations',
      folder.file('h.svg', HORIZON),
      '--out',
      'h.pdf',
    );
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(
      /^This is a mistake of Seamwright’s, not of yours: .*fonts\/regular\.ttf.*\. Please report it\n$/,
    );
  });

  it('says nothing of a reader that stops early', () => {
    const { status, stderr } = spawnSync(
      'sh',
      ['-c', '"$0" "$1" demo | head -c 1 > head.txt', process.execPath, `${dist}/seamwright.js`],
      { cwd: folder.path, encoding: 'utf8' },
    );
    expect([status, stderr, folder.read('head.txt')]).toEqual([0, '', '{']);
  });

  it.runIf(existsSync('/dev/full'))('ends with 2 and one line when what it prints cannot be written', () => {
    const horizon = folder.file('horizon.svg', HORIZON);
    const into = (stream: string) =>
      spawnSync(
        'sh',
        ['-c', `"$0" "$@" ${stream}`, process.execPath, `${dist}/seamwright.js`, 'sewing', horizon],
        {
          cwd: folder.path,
          encoding: 'utf8',
        },
      );
    const { status, stderr } = into('> /dev/full');
    expect([status, stderr]).toEqual([
      2,
      'The answer cannot be written to standard output (ENOSPC). Make room there, or send it elsewhere.\n',
    ]);
    expect(into('> /dev/full 2> /dev/full').status).toBe(2);
  });
});
