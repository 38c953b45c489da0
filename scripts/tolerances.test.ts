import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { repositoryFiles } from './lib/files.mjs';
import { root } from './lib/root.mjs';

/** Below this a number in the code is taken to be a tolerance. The smallest length that the trade writes is 1/64. */
const SMALL = 1e-3;

const HOME = 'packages/geometry/src/tolerance.ts';

/** Checkers share nothing with what they check, tolerances neither: a change in {@link HOME} has to show. */
const CHECKERS = ['packages/sewing/src/replay.ts'];

/** The small numbers written in a file, comments aside, each with its line. */
function smallNumbers(path: string, text: string): string[] {
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isNumericLiteral(node) && Number(node.text) > 0 && Number(node.text) < SMALL) {
      const { line } = file.getLineAndCharacterOfPosition(node.getStart(file));
      found.push(`${path}:${line + 1}: ${node.getText(file)}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

test('small numbers are found in code and not in comments', () => {
  const text = '// 1e-9\nconst a = x < 1e-6;\nconst b = 0.25 + 0 + .0001;\n';
  expect(smallNumbers('a.ts', text)).toEqual(['a.ts:2: 1e-6', 'a.ts:3: .0001']);
});

test('tolerances have one home', () => {
  const files = repositoryFiles().filter((path) => /^packages\/[^/]+\/src\/.*\.ts$/.test(path));
  expect(files).toEqual(expect.arrayContaining([HOME, ...CHECKERS]));
  const elsewhere = files
    .filter((path) => path !== HOME && !CHECKERS.includes(path) && !path.endsWith('.test.ts'))
    .flatMap((path) => smallNumbers(path, readFileSync(join(root, path), 'utf8')));
  expect(elsewhere).toEqual([]);
});
