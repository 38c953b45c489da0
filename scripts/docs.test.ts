import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { repositoryFiles } from './lib/files.mjs';
import { root } from './lib/root.mjs';

const tracked = repositoryFiles();
const documents = tracked.filter((path) => path.endsWith('.md'));
const packages = [...new Set(tracked.map((path) => /^packages\/([^/]+)\//.exec(path)?.[1]))].filter(
  (name) => name !== undefined,
);

/** The places inside the repository that a document's links and pictures lead to. */
const targets = (text: string): string[] =>
  [...text.matchAll(/\]\(([^)\s]+)\)/g)]
    .map((match) => match[1] ?? '')
    .filter((target) => !/^[a-z]+:/.test(target) && !target.startsWith('#'))
    .map((target) => target.replace(/#.*$/, ''));

test('links are found, and those to other places and to headings left out', () => {
  expect(targets('[a](b.md#c) ![d](e/f.svg) [g](https://h.example/) [i](#j)')).toEqual(['b.md', 'e/f.svg']);
});

test.each(documents)('every link in %s leads somewhere', (path) => {
  const missing = targets(readFileSync(join(root, path), 'utf8')).filter(
    (target) => !existsSync(join(root, dirname(path), target)),
  );
  expect(missing).toEqual([]);
});

test.each(packages)('the package %s has a README', (name) => {
  expect(existsSync(join(root, 'packages', name, 'README.md'))).toBe(true);
});

test.each(packages)('the package %s is in the picture of the layers', (name) => {
  expect(readFileSync(join(root, 'docs/images/layers.svg'), 'utf8')).toContain(`>${name}</text>`);
});
