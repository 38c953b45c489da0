/**
 * Which code may import which. Rules that cannot fail are worth nothing: scripts/import-rules.test.ts breaks each one
 * and expects it to say so.
 *
 * No `tsConfig` here on purpose: dependency-cruiser resolves one with `extends` wrongly, and needs none.
 */

/** The packages in layers: what each may import. Tests included. */
const LAYERS = {
  geometry: [],
  arrangement: ['geometry'],
  sewing: ['geometry', 'arrangement'],
  drafting: ['geometry', 'arrangement'],
  cloth: ['geometry', 'arrangement', 'sewing'],
  pages: ['geometry', 'arrangement', 'sewing', 'cloth'],
  pattern: ['geometry', 'arrangement'],
};

const computation = Object.keys(LAYERS);
const oneOf = (names) => `(${names.join('|')})`;
const TEST = '[.](test|bench)[.]ts$|^packages/[^/]+/(test|bench)/|^app/src/test/';

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    ...computation.map((name) => ({
      name: `layer-${name}`,
      comment: `${name} may import ${LAYERS[name].join(', ') || 'none of our packages'}.`,
      severity: 'error',
      from: { path: `^packages/${name}/` },
      to: { path: '^packages/', pathNot: `^packages/${oneOf([name, ...LAYERS[name]])}/` },
    })),
    {
      name: 'layer-unknown',
      comment: 'A new package needs its place in LAYERS before it imports anything.',
      severity: 'error',
      from: { path: '^packages/', pathNot: `^packages/${oneOf([...computation, 'cli'])}/` },
      to: {},
    },
    {
      name: 'app-is-the-top',
      comment: 'Nothing imports the application.',
      severity: 'error',
      from: { pathNot: '^app/' },
      to: { path: '^app/' },
    },
    {
      name: 'cli-is-the-top',
      comment: 'Nothing imports the command line.',
      severity: 'error',
      from: { pathNot: '^packages/cli/' },
      to: { path: '^packages/cli/' },
    },
    {
      name: 'by-package-name',
      comment: 'Packages are imported by their name, never by a path into them.',
      severity: 'error',
      from: { path: '^(?:packages/)?([^/]+)/' },
      // What is imported by name is of type `undetermined` here, a path is `local`.
      to: { path: '^packages/[^/]+/', pathNot: '^packages/$1/', dependencyTypes: ['local'] },
    },
    {
      name: 'by-index',
      comment: 'What a package gives to others is what its index exports.',
      severity: 'error',
      from: { path: '^(?:packages/)?([^/]+)/' },
      to: { path: '^packages/[^/]+/', pathNot: '^packages/($1/|[^/]+/src/index[.]ts$)' },
    },
    {
      name: 'no-screen-in-computation',
      comment: 'No package knows React, the canvas, the store or the browser’s storage.',
      severity: 'error',
      from: { path: '^packages/' },
      to: { path: 'node_modules/(react|react-dom|konva|react-konva|zustand|idb|comlink|lucide-react)/' },
    },
    {
      name: 'no-node-in-computation',
      comment: 'The packages run in the browser: only the command line and tests know Node.',
      severity: 'error',
      from: { path: '^packages/', pathNot: `^packages/cli/|^packages/[^/]+/vite[.]config[.]ts$|${TEST}` },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'one-pdf-writer',
      comment:
        'One file writes PDFs, so that it alone, with its 100 kB, can be loaded late. Benches measure it against the library.',
      severity: 'error',
      from: { path: '^(packages|app|e2e)/', pathNot: '^packages/pages/(src/writers/pdf[.]ts$|bench/)' },
      to: { path: 'node_modules/jspdf/' },
    },
    {
      name: 'no-cycles',
      comment: 'Files that import each other cannot be read, tested or moved alone.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'no-tests-in-source',
      comment: 'What ships does not import tests.',
      severity: 'error',
      from: { pathNot: TEST },
      to: { path: TEST },
    },
    {
      name: 'no-oracles-in-source',
      comment: 'Libraries that only check results, and other development packages, do not ship.',
      severity: 'error',
      from: { path: '^(packages/[^/]+|app)/src/', pathNot: TEST },
      to: { dependencyTypes: ['npm-dev'], pathNot: 'node_modules/@types/' },
    },
    {
      name: 'no-undeclared',
      comment: 'The package that an import comes from is named in a package.json above it.',
      severity: 'error',
      from: {},
      to: { dependencyTypes: ['npm-no-pkg', 'npm-unknown'] },
    },
    {
      name: 'no-unresolved',
      comment: 'Every import leads somewhere.',
      severity: 'error',
      from: {},
      // The bundler knows what the package exports under a question.
      to: { couldNotResolve: true, pathNot: '^highs/runtime[?]url$' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)(dist|fixtures)/' },
    // Types count: a type that is imported the wrong way round is a dependency the wrong way round.
    tsPreCompilationDeps: true,
    combinedDependencies: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'node', 'default'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json'],
    },
  },
};
