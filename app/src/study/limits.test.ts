import { expect, test } from 'vitest';
import { tooManyPatches } from './limits.ts';

test('5,000 patches are worked on; more are refused in a sentence that says what to do', () => {
  expect(tooManyPatches(5_000)).toBeNull();
  const problem = tooManyPatches(100_000)!;
  expect(problem.what).toContain('100,000 patches');
  expect(problem.remedy).toContain('divide the drawing');
});
