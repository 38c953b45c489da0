import type { SewingPlan } from '@seamwright/sewing';
import { expect, it } from 'vitest';
import { verdictText } from './report-text.ts';

const plan = (
  verdict: SewingPlan['verdict'],
  sections: number,
  least: Partial<SewingPlan> = {},
): SewingPlan => ({
  verdict,
  provenLeast: true,
  atLeast: sections,
  sections: Array.from({ length: sections }, () => ({
    letter: 'A',
    order: [],
    sewLines: [],
    outline: [],
    ring: [],
  })),
  joins: [],
  unheld: [],
  figures: { foundations: sections, matchPoints: 0, templates: sections, joinLength: 0 },
  conflict: [],
  undecided: [],
  findings: [],
  ...least,
});

it.each([
  [plan('one foundation', 1), 'sews on one foundation'],
  [plan('several foundations', 3), 'sews on 3 foundations, and no fewer will do'],
  [
    plan('several foundations', 9, { provenLeast: false, atLeast: 4 }),
    'sews on 9 foundations, but fewer may do, from 4 up',
  ],
  [
    plan('partial seams', 5, { provenLeast: false, atLeast: 3 }),
    'sews with partial seams only, on 5 foundations, but fewer may do, from 3 up',
  ],
  [plan('not sewable', 0), 'cannot be sewn with straight seams'],
])('a verdict in words: %#', (given, words) => {
  expect(verdictText(given)).toBe(words);
});
