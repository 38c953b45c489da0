import { expect, test } from 'vitest';
import { firstLoad, firstLoadProblems } from './first-load.mjs';

const manifest = {
  'index.html': {
    file: 'assets/index.js',
    isEntry: true,
    imports: ['_shared.js'],
    dynamicImports: ['pdf.ts'],
    css: ['assets/index.css'],
  },
  '_shared.js': { file: 'assets/shared.js', imports: ['_deep.js'] },
  // A ring of imports has to come to an end.
  '_deep.js': { file: 'assets/deep.js', imports: ['_shared.js'], css: ['assets/deep.css'] },
  'pdf.ts': { file: 'assets/pdf.js', imports: ['_shared.js', '_writer.js'] },
  '_writer.js': { file: 'assets/writer.js' },
};

test('the first load is the entry and what it imports at its start, not what it may import later', () => {
  expect(firstLoad(manifest)).toEqual([
    'assets/deep.css',
    'assets/deep.js',
    'assets/index.css',
    'assets/index.js',
    'assets/shared.js',
  ]);
});

test('a manifest without an entry, or with a chunk missing, is an error', () => {
  expect(() => firstLoad({})).toThrow('names no entry');
  expect(() => firstLoad({ a: { file: 'a.js', isEntry: true, imports: ['b'] } })).toThrow('has no chunk b');
});

const texts: Record<string, string> = { 'index.js': 'a', 'pdf.js': 'a %PDF-' };
const problems = (first: string[], mark: string) =>
  firstLoadProblems(first, Object.keys(texts), [{ what: 'The writer', mark }], (file) => texts[file] ?? '');

test('what must not be in the first load may be elsewhere', () => {
  expect(problems(['index.js'], '%PDF-')).toEqual([]);
  expect(problems(['index.js', 'pdf.js'], '%PDF-')).toEqual([
    'The writer is in pdf.js, which the first load needs: import it only when it is used.',
  ]);
});

test('a mark that no file holds would make the check blind, and is a problem', () => {
  expect(problems(['index.js'], 'no such words')).toEqual([
    'No file of the build holds “no such words”, by which The writer is known: choose another mark for it.',
  ]);
});
