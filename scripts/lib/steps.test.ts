import { expect, test } from 'vitest';
import { chooseSteps, resultLine, runSteps, summary } from './steps.mjs';
import { oneCheck } from './totals.mjs';

const step = (name: string, good: boolean, needs: string[] = [], ran: string[] = []) => ({
  name,
  does: `the ${name}`,
  needs,
  run: async () => {
    ran.push(name);
    return oneCheck(good);
  },
});

test('a failed step does not stop the others, but what needs it is skipped, and what needs that', async () => {
  const ran: string[] = [];
  const results = await runSteps(
    [
      step('build', false, [], ran),
      step('style', true, [], ran),
      step('e2e', true, ['build'], ran),
      step('pictures', true, ['e2e'], ran),
    ],
    () => {},
  );
  expect(ran).toEqual(['build', 'style']);
  expect(results.map((r) => r.tally)).toEqual([
    { passed: 0, failed: 1, skipped: 0 },
    { passed: 1, failed: 0, skipped: 0 },
    { passed: 0, failed: 0, skipped: 1 },
    { passed: 0, failed: 0, skipped: 1 },
  ]);
  expect(results[2]?.note).toBe('not run, for want of build');
  expect(summary(results).split('\n').at(-1)).toBe('1 passed, 1 failed, 2 skipped');
});

test('steps that were left out are taken to be done', async () => {
  const all = [step('build', true), step('e2e', true, ['build'])];
  const results = await runSteps(chooseSteps(all, ['e2e']), () => {});
  expect(results.map((r) => [r.name, r.tally.passed])).toEqual([['e2e', 1]]);
});

test('steps are run in their own order, whatever order they are asked for in', () => {
  const all = ['a', 'b', 'c'].map((name) => step(name, true));
  expect(chooseSteps(all, ['c', 'a']).map((s) => s.name)).toEqual(['a', 'c']);
  expect(chooseSteps(all, [])).toEqual(all);
});

test('a step that does not exist is an error that names those that do', () => {
  expect(() => chooseSteps([step('style', true), step('types', true)], ['stile'])).toThrow(
    'There is no step stile. The steps are style, types.',
  );
});

test('each result is one line with its time', () => {
  const line = resultLine({
    name: 'unit',
    tally: { passed: 8, failed: 0, skipped: 1 },
    seconds: 12.34,
    note: '',
  });
  expect(line).toBe('✓ unit         12.3 s  8 passed, 0 failed, 1 skipped');
});
