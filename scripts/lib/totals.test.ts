import { expect, test } from 'vitest';
import { closingLine, oneCheck, sum, tallyPlaywright, tallyVitest } from './totals.mjs';

test('the closing line says what passed and failed, and what was skipped only when something was', () => {
  expect(closingLine({ passed: 12, failed: 0, skipped: 0 })).toBe('12 passed, 0 failed');
  expect(closingLine({ passed: 1, failed: 2, skipped: 3 })).toBe('1 passed, 2 failed, 3 skipped');
});

test('tallies add up', () => {
  expect(sum([oneCheck(true), oneCheck(false), { passed: 3, failed: 1, skipped: 2 }])).toEqual({
    passed: 4,
    failed: 2,
    skipped: 2,
  });
  expect(sum([])).toEqual({ passed: 0, failed: 0, skipped: 0 });
});

// The shapes below are those that Vitest 4.1 and Playwright 1.65 were seen to write.
const vitestReport = (counts: object, testResults: object[] = []) => ({
  numPassedTests: 0,
  numFailedTests: 0,
  numPendingTests: 0,
  numTodoTests: 0,
  ...counts,
  testResults,
});

test('Vitest: tests are counted, skipped ones and those still to be written as skipped', () => {
  const report = vitestReport({ numPassedTests: 5, numPendingTests: 1, numTodoTests: 1 });
  expect(tallyVitest(report, 0)).toEqual({ passed: 5, failed: 0, skipped: 2 });
});

test('Vitest: a file that cannot be loaded is one failure', () => {
  const report = vitestReport({ numPassedTests: 5, numFailedTests: 1 }, [
    { status: 'failed', assertionResults: [{ status: 'failed' }, { status: 'passed' }] },
    { status: 'failed', assertionResults: [] },
  ]);
  expect(tallyVitest(report, 1)).toEqual({ passed: 5, failed: 2, skipped: 0 });
});

test('Playwright: a test that passed only when tried again has failed', () => {
  const report = { stats: { expected: 4, unexpected: 1, flaky: 1, skipped: 2 } };
  expect(tallyPlaywright(report, 1)).toEqual({ passed: 4, failed: 2, skipped: 2 });
});

test.each([
  ['nothing was written', null, 1],
  ['nothing was written and the exit status says all is well', null, 0],
  ['no test ran', vitestReport({}), 0],
  ['every test was skipped', vitestReport({ numPendingTests: 3 }), 0],
])('Vitest: a failure is counted when %s', (_, report, exitStatus) => {
  expect(tallyVitest(report, exitStatus).failed).toBe(1);
});

test.each([
  ['nothing was written', null, 1],
  ['no test ran', { stats: { expected: 0, unexpected: 0, flaky: 0, skipped: 0 } }, 0],
  ['the run broke without a failed test', { stats: { expected: 9, unexpected: 0, flaky: 0, skipped: 0 } }, 1],
])('Playwright: a failure is counted when %s', (_, report, exitStatus) => {
  expect(tallyPlaywright(report, exitStatus).failed).toBe(1);
});

test('an error outside the tests fails a run whose tests all passed', () => {
  expect(tallyVitest(vitestReport({ numPassedTests: 5 }), 1)).toEqual({ passed: 5, failed: 1, skipped: 0 });
});
