import { createRequire } from 'node:module';
import type loadHighs from 'highs';
import { timed } from '../../../scripts/bench/clock.ts';
import { ms, Table } from '../../../scripts/bench/table.ts';
import {
  cuttingChart,
  FAT_QUARTER,
  type LoadSolver,
  type PieceCut,
  PLAIN_RULES,
  planCloths,
  planSheets,
} from '../src/index.ts';
import { laysAlong, leastHalfRectangle } from '../src/sizes/half-rectangles.ts';
import { rectangleAt } from '../src/sizes/rectangles.ts';

/**
 * How long charts and plans of the least fabric take, and how near the plans come to what is proved to be needed.
 * Run: `npm run bench -- cloth`.
 */

// Bundled, HiGHS would not find its WebAssembly.
const highs = (createRequire(import.meta.url)('highs') as typeof loadHighs)();
const load: LoadSolver = () => highs;

/** Numbers from 0 to below 1, the same each time (mulberry32). */
function randoms(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Pieces of 1 1/2 to 12 in, in quarters, a third of them half-rectangles. */
function pieces(count: number, fabrics: number): PieceCut[] {
  const random = randoms(count + fabrics);
  const size = () => 1.5 + Math.floor(random() * 43) / 4;
  return Array.from({ length: count }, (_, i) => ({
    patch: i,
    name: `A${i + 1}`,
    cloth: `fabric ${i % fabrics}`,
    shape: random() < 1 / 3 ? ('half-rectangle' as const) : ('rectangle' as const),
    width: size(),
    height: size(),
    angle: 0,
    toleranceShift: 0.25,
    toleranceAngle: 3,
  }));
}

/** Milliseconds that the processor spent, with what came of it: other programs have it in the meantime. */
async function spent<T>(run: () => Promise<T>): Promise<{ ms: number; result: T }> {
  const before = process.cpuUsage();
  const result = await run();
  const { user, system } = process.cpuUsage(before);
  return { ms: (user + system) / 1000, result };
}

const CASES: readonly (readonly [patches: number, fabrics: number, copies: number])[] = [
  [20, 4, 1],
  [20, 4, 40],
  [100, 8, 1],
  [100, 8, 40],
  [500, 8, 1],
  [500, 8, 40],
  [500, 1, 1],
  [500, 1, 40],
];

await highs;
for (const trim of [false, true]) {
  const table = new Table(
    `The least fabric${trim ? ', pieces trimmed from higher strips' : ''}. First fit alone, then with HiGHS; above the bound`,
    [
      'patches',
      'fabrics',
      'copies',
      'chart ms',
      'quick ms',
      'quick in',
      'plan ms',
      'plan in',
      'bound in',
      'above',
      'proved',
    ],
    7,
  );
  for (const [count, fabrics, copies] of CASES) {
    const all = pieces(count, fabrics);
    const chart = timed(() => cuttingChart(all, { blocks: copies }));
    const plan = async (solver?: LoadSolver) => {
      const { ms: taken, result: planned } = await spent(() =>
        planCloths(chart.result, [], { ...PLAIN_RULES, trim, sheets: [] }, solver),
      );
      if (!planned.ok) throw new Error(planned.problem.what);
      const sum = (of: (each: (typeof plans)[number]['plan']) => number) =>
        plans.reduce((total, each) => total + of(each.plan), 0);
      const plans = planned.value;
      return {
        ms: taken,
        length: sum(({ lengthInches }) => lengthInches),
        bound: sum(({ atLeast }) => atLeast),
        proved: sum(({ provenLeast }) => (provenLeast ? 1 : 0)),
      };
    };
    const quick = await plan();
    const full = await plan(load);
    table.row(
      count,
      fabrics,
      copies,
      ms(chart.ms),
      ms(quick.ms),
      quick.length.toFixed(2),
      ms(full.ms),
      full.length.toFixed(2),
      full.bound.toFixed(2),
      `${(100 * (full.length / full.bound - 1)).toFixed(2)} %`,
      `${full.proved} of ${fabrics}`,
    );
  }
}

const halves = new Table(
  'The least half-rectangle, spare of a quarter inch; a half of a 36 in square, and a strip of 40 × 0.3 in',
  ['round up to', 'turn', 'square ms', 'strip ms'],
  7,
);
for (const roundUpTo of [1 / 4, 1 / 16, 1 / 64]) {
  for (const turn of [0, 5]) {
    const rules = { allowance: 0.25, spare: 0.25, turn, roundUpTo };
    const takes = (...corners: readonly (readonly [number, number])[]) => {
      const shape = corners.map(([x, y]) => ({ x, y }));
      const lays = laysAlong({ a: shape[0]!, b: shape[1]! }, shape[2]!);
      const whole = rectangleAt(shape, 0, rules);
      return ms(timed(() => leastHalfRectangle(shape, lays, rules, 2 * whole.width * whole.height)).ms);
    };
    halves.row(
      `1/${1 / roundUpTo} in`,
      `${turn}°`,
      takes([0, 0], [36.5, 0], [36.5, 36.5], [36.1, 36.5], [0, 0.4]),
      takes([0, 0], [40.5, 0], [40.5, 0.8], [0, 0.8]),
    );
  }
}

const quarters = new Table(
  'Fat quarters for the same, one fabric',
  ['patches', 'copies', 'ms', 'quarters', 'at least'],
  7,
);
for (const [count, copies] of [
  [20, 1],
  [100, 1],
  [500, 1],
  [500, 40],
] as const) {
  const rows = cuttingChart(pieces(count, 1), { blocks: copies });
  const { ms: taken, result: planned } = await spent(() =>
    planSheets(
      rows.map(({ width, height, cut }) => ({ width, height, count: cut })),
      FAT_QUARTER,
      {},
      load,
    ),
  );
  if (!planned.ok) throw new Error(planned.problem.what);
  quarters.row(count, copies, ms(taken), planned.value.sheets.length, planned.value.atLeast);
}
