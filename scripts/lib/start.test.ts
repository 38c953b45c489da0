import { expect, test } from 'vitest';
import { opener } from './desktop.mjs';
import { installArguments } from './install.mjs';
import { nodeProblem } from './node-version.mjs';
import { workspace } from './root.mjs';

test('a Node that is too old is told what to do; newer ones pass', () => {
  expect(nodeProblem('20.18.3', '>=20.19')).toBe(
    'Seamwright needs Node 20.19 or newer, and this is Node 20.18.3: install a newer one and try again.',
  );
  expect(nodeProblem('18.20.0', '>=20.19')).not.toBeNull();
  expect(nodeProblem('20.19.0', '>=20.19')).toBeNull();
  expect(nodeProblem('22.0.0', '>=20.19')).toBeNull();
});

test('the workspace pins one exact pnpm, and its Node range is one that the check can read', () => {
  expect(installArguments(workspace().packageManager)).toContain(workspace().packageManager);
  expect(() => installArguments('pnpm@latest')).toThrow('one exact version');
  expect(nodeProblem(process.versions.node, workspace().engines.node)).toBeNull();
});

test('a browser is opened only where somebody looks at a desktop', () => {
  const seen = { platform: 'linux', env: { DISPLAY: ':0' }, stdout: { isTTY: true } };
  expect(opener('http://a/', seen)).toEqual({ command: 'xdg-open', args: ['http://a/'] });
  expect(opener('http://a/', { ...seen, platform: 'darwin' })?.command).toBe('open');
  expect(opener('http://a/', { ...seen, platform: 'win32' })?.command).toBe('explorer.exe');
  expect(opener('http://a/', { ...seen, env: {} })).toBeNull();
  expect(opener('http://a/', { ...seen, env: { DISPLAY: ':0', CI: 'true' } })).toBeNull();
  expect(opener('http://a/', { ...seen, stdout: {} })).toBeNull();
});
