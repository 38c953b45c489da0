import { spawnSync } from 'node:child_process';
import { expect, it } from 'vitest';
import { run } from './run.mjs';

const node = process.execPath;

it('tells the exit status of a program', async () => {
  expect(await run(node, ['-e', 'process.exit(3)'])).toBe(3);
});

it('stops a program that takes too long, and counts it as failed', async () => {
  expect(await run(node, ['-e', 'setTimeout(() => {}, 60_000)'], { minutes: 0.01 })).toBe(1);
});

it('ends at once where a program is not there', () => {
  const module = new URL('./run.mjs', import.meta.url).href;
  const script = `import { run } from ${JSON.stringify(module)}; process.exitCode = await run('no-such-program', []);`;
  // By itself it would wait for the half hour that a program has.
  const { status, signal } = spawnSync(node, ['--input-type=module', '-e', script], { timeout: 20_000 });
  expect({ status, signal }).toEqual({ status: 127, signal: null });
});
