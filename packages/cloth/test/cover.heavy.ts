import { expect, test } from 'vitest';
import { knownBlocks } from './blocks.ts';
import { cutsOf, failuresOf, KINDS_OF_RULES } from './cover-check.ts';
import { randomNumbers } from './slips.ts';

test('a million places within the slack: every piece covers', () => {
  const random = randomNumbers(62);
  const cases = KINDS_OF_RULES.flatMap((rules) =>
    knownBlocks().map((block) => ({ rules, name: block.name, cuts: cutsOf(block, rules) })),
  );
  const pieces = cases.reduce((sum, { cuts }) => sum + cuts.length, 0);
  const times = Math.ceil(1_000_000 / pieces);
  for (const { rules, name, cuts } of cases) expect(failuresOf(cuts, rules, times, random), name).toEqual([]);
});
