import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { root } from './lib/root.mjs';

const config = join(root, '.dependency-cruiser.cjs');
const rules: { forbidden: { name: string }[] } = createRequire(import.meta.url)(config);
const cruiser = join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');

/** What each package may import, as the README files say it; written again here, so that the two have to agree. */
const MAY_IMPORT: Record<string, string[]> = {
  geometry: [],
  arrangement: ['geometry'],
  sewing: ['arrangement', 'geometry'],
  drafting: ['arrangement', 'geometry'],
  cloth: ['sewing', 'arrangement', 'geometry'],
  pages: ['cloth', 'sewing', 'arrangement', 'geometry'],
  pattern: ['arrangement', 'geometry'],
};
const PACKAGES = [...Object.keys(MAY_IMPORT), 'cli', 'rogue'];
const LIBRARIES = ['react', 'konva', 'zustand', 'idb', 'jspdf', 'jsts'];

/** A little repository in which each file breaks one rule, or none. Path, then what it holds. */
const files: Record<string, string> = {};
/** The violations that the rules have to find in it, and no others: `rule: from → to`. */
const expected: string[] = [];

function file(path: string, code: string, violation?: { rule: string; to: string }): void {
  files[path] = code;
  if (violation !== undefined) expected.push(`${violation.rule}: ${path} → ${violation.to}`);
}

for (const from of Object.keys(MAY_IMPORT)) {
  for (const to of Object.keys(MAY_IMPORT)) {
    if (from === to) continue;
    const allowed = MAY_IMPORT[from]?.includes(to);
    const path = `packages/${from}/src/uses-${to}.ts`;
    file(
      path,
      `import type { Name } from '@seamwright/${to}';\nexport type Other = Name;\n`,
      allowed ? undefined : { rule: `layer-${from}`, to: `packages/${to}/src/index.ts` },
    );
  }
}
file('packages/sewing/src/uses-pages.test.ts', "import '@seamwright/pages';\n", {
  rule: 'layer-sewing',
  to: 'packages/pages/src/index.ts',
});
file('packages/rogue/src/uses.ts', "import '@seamwright/geometry';\n", {
  rule: 'layer-unknown',
  to: 'packages/geometry/src/index.ts',
});
file('packages/cli/src/uses.ts', "import '@seamwright/pages';\nimport 'node:fs';\n");
file('packages/cli/src/uses-app.ts', "import '../../../app/src/main.ts';\n", {
  rule: 'app-is-the-top',
  to: 'app/src/main.ts',
});
file('app/src/main.ts', "import '@seamwright/pattern';\nimport 'react';\n");
file('app/src/uses-cli.ts', "import '@seamwright/cli';\n", {
  rule: 'cli-is-the-top',
  to: 'packages/cli/src/index.ts',
});
file('packages/sewing/src/by-path.ts', "import '../../geometry/src/index.ts';\n", {
  rule: 'by-package-name',
  to: 'packages/geometry/src/index.ts',
});
file('app/src/deep.ts', "import '@seamwright/geometry/src/inner.ts';\n", {
  rule: 'by-index',
  to: 'packages/geometry/src/inner.ts',
});
file('packages/geometry/src/inner.ts', 'export type Inner = 1;\n');
for (const library of ['react', 'konva', 'zustand', 'idb']) {
  file(`packages/drafting/src/uses-${library}.ts`, `import '${library}';\n`, {
    rule: 'no-screen-in-computation',
    to: `node_modules/${library}/index.js`,
  });
}
file('packages/pages/src/uses-node.ts', "import 'node:fs';\n", { rule: 'no-node-in-computation', to: 'fs' });
file('packages/pages/src/uses-node.test.ts', "import 'node:fs';\n");
file('packages/pages/src/writers/pdf.ts', "import 'jspdf';\n");
file('packages/pages/bench/writing.bench.ts', "import 'jspdf';\n");
file('packages/pages/src/other.ts', "import 'jspdf';\n", {
  rule: 'one-pdf-writer',
  to: 'node_modules/jspdf/index.js',
});
// A cycle is told once.
file('packages/geometry/src/hen.ts', "import { b } from './egg.ts';\nexport const a = () => b;\n");
file('packages/geometry/src/egg.ts', "import { a } from './hen.ts';\nexport const b = () => a;\n", {
  rule: 'no-cycles',
  to: 'packages/geometry/src/hen.ts',
});
file('packages/geometry/src/uses-test.ts', "import './good.test.ts';\n", {
  rule: 'no-tests-in-source',
  to: 'packages/geometry/src/good.test.ts',
});
file('packages/geometry/src/good.test.ts', "import 'jsts';\n");
file('packages/geometry/src/uses-oracle.ts', "import 'jsts';\n", {
  rule: 'no-oracles-in-source',
  to: 'node_modules/jsts/index.js',
});
file('packages/geometry/src/uses-undeclared.ts', "import 'undeclared';\n", {
  rule: 'no-undeclared',
  to: 'node_modules/undeclared/index.js',
});
file('packages/geometry/src/uses-nothing.ts', "import './not-there.ts';\n", {
  rule: 'no-unresolved',
  to: './not-there.ts',
});

let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'seamwright-rules-'));
  const write = (path: string, text: string) => {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  };
  const dependencies = Object.fromEntries(LIBRARIES.filter((l) => l !== 'jsts').map((l) => [l, '1.0.0']));
  write('package.json', JSON.stringify({ dependencies, devDependencies: { jsts: '1.0.0' } }));
  for (const library of [...LIBRARIES, 'undeclared']) {
    write(`node_modules/${library}/package.json`, JSON.stringify({ name: library, main: 'index.js' }));
    write(`node_modules/${library}/index.js`, 'export {};\n');
  }
  mkdirSync(join(folder, 'node_modules/@seamwright'));
  for (const name of PACKAGES) {
    write(
      `packages/${name}/package.json`,
      JSON.stringify({
        name: `@seamwright/${name}`,
        exports: { '.': './src/index.ts', './src/*': './src/*' },
      }),
    );
    write(`packages/${name}/src/index.ts`, 'export type Name = 1;\n');
    symlinkSync(join(folder, 'packages', name), join(folder, 'node_modules/@seamwright', name), 'junction');
  }
  for (const [path, text] of Object.entries(files)) write(path, text);
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('the import rules find each breach in a repository made of breaches, and nothing else', () => {
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    [cruiser, '--config', config, '--output-type', 'json', 'packages', 'app'],
    { cwd: folder, encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 },
  );
  expect(stderr).toBe('');
  const { summary }: { summary: { violations: { rule: { name: string }; from: string; to: string }[] } } =
    JSON.parse(stdout);
  const found = summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} → ${to}`);
  expect(found.sort()).toEqual(expected.sort());
  expect(status).toBe(0); // its json output reports, its other outputs fail
});

test('a breach makes the command fail', () => {
  const { status } = spawnSync(process.execPath, [cruiser, '--config', config, 'packages', 'app'], {
    cwd: folder,
    stdio: 'ignore',
  });
  expect(status).not.toBe(0);
});

test('no rule goes unbroken above', () => {
  const broken = new Set(expected.map((line) => line.slice(0, line.indexOf(':'))));
  expect([...broken].sort()).toEqual(rules.forbidden.map((rule) => rule.name).sort());
});
