import { expect, test } from 'vitest';
import { entryFiles, firstLoadProblems, firstVisitFiles, staticImports } from './first-load.mjs';

const manifest = {
  'index.html': {
    file: 'assets/index.js',
    isEntry: true,
    imports: ['_shared.js'],
    dynamicImports: ['src/stations/draft/draft-station.tsx', 'paper.ts'],
    css: ['assets/index.css'],
    assets: ['assets/study.worker.js', 'assets/sans.woff2'],
  },
  '_shared.js': { file: 'assets/shared.js', imports: ['_deep.js'] },
  // A ring of imports has to come to an end.
  '_deep.js': { file: 'assets/deep.js', imports: ['_shared.js'], css: ['assets/deep.css'] },
  'src/stations/draft/draft-station.tsx': { file: 'assets/draft.js', imports: ['index.html', '_canvas.js'] },
  '_canvas.js': { file: 'assets/canvas.js' },
  'paper.ts': { file: 'assets/paper.js', imports: ['_shared.js'] },
};

const built: Record<string, string> = {
  'assets/study.worker.js': 'import{a}from"./geometry.js";import("./pdf.js")',
  'assets/geometry.js': 'import`./study.worker.js`;export const a=1',
  'assets/pdf.js': 'writes %PDF- 1.3',
};
const read = (file: string) => built[file] ?? '';

const ENTRY = [
  'assets/deep.css',
  'assets/deep.js',
  'assets/index.css',
  'assets/index.js',
  'assets/shared.js',
];

test('before anything is shown: the entry and what it imports at its start, not what it may import later', () => {
  expect(entryFiles(manifest)).toEqual(ENTRY);
});

test('before a line can be drawn: that, the first station, and the worker with what it imports at its start', () => {
  expect(firstVisitFiles(manifest, read)).toEqual(
    [...ENTRY, 'assets/canvas.js', 'assets/draft.js', 'assets/geometry.js', 'assets/study.worker.js'].sort(),
  );
});

test('a manifest without an entry, or with a chunk missing, is an error', () => {
  expect(() => entryFiles({})).toThrow('names no entry');
  expect(() => entryFiles({ a: { file: 'a.js', isEntry: true, imports: ['b'] } })).toThrow('has no chunk b');
});

test('imports at the start are told from later ones, however they are written', () => {
  const code =
    'import{a as b}from"./a.js";import*as c from\'../b.js\';import "./c.js";export{d}from`./d.js`;' +
    'const e=()=>import("./late.js");import("./later.js");import f from"bare";';
  expect(staticImports(code)).toEqual(['./a.js', '../b.js', './c.js', './d.js']);
});

const problems = (first: string[], mark: string) =>
  firstLoadProblems(first, Object.keys(built), [{ what: 'The writer', mark }], read);

test('what must not be loaded first may be elsewhere', () => {
  expect(problems(['assets/study.worker.js'], '%PDF-')).toEqual([]);
  expect(problems(['assets/study.worker.js', 'assets/pdf.js'], '%PDF-')).toEqual([
    'The writer is in assets/pdf.js, which a first visit loads: import it only when it is used.',
  ]);
});

test('a mark that no file holds would make the check blind, and is a problem', () => {
  expect(problems(['assets/study.worker.js'], 'no such words')).toEqual([
    'No file of the build holds “no such words”, by which The writer is known: choose another mark for it.',
  ]);
});
