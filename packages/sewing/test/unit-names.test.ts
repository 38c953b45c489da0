import { expect, it } from 'vitest';
import { planSewing, replay, sewingReport } from '../src/index.ts';
import { blockOf, l, patchAt } from './grid-block.ts';

/** n × n squares: n foundations, its rows, each joined to those below it. */
function rowsOf(n: number) {
  const places = Array.from({ length: n - 1 }, (_, i) => i + 1);
  return blockOf(
    n,
    n,
    places.flatMap((at) => [l(at, 0, at, n), l(0, at, n, at)]),
  );
}

it('units are named by their letters as long as each section has a single one', () => {
  const { joins } = planSewing(rowsOf(4), { effort: 0 });
  expect(joins.map(({ units, makes }) => [...units, makes])).toContainEqual(['C', 'D', 'CD']);
});

it('what A and B make is told apart from a section AB', () => {
  const block = rowsOf(29);
  // The first to be joined are the lowest.
  const pins = [
    { kind: 'letter', patch: patchAt(block, 0.5, 27.5), letter: 'A' },
    { kind: 'letter', patch: patchAt(block, 0.5, 28.5), letter: 'B' },
  ] as const;
  const plan = planSewing(block, { effort: 0, pins });
  const names = [...plan.sections.map(({ letter }) => letter), ...plan.joins.map(({ makes }) => makes)];
  expect(names).toContain('AB');
  expect(names).toContain('A+B');
  expect(new Set(names).size).toBe(names.length);
  expect(replay(sewingReport(block, plan))).toEqual([]);
});
