import { expect, it } from 'vitest';
import { planAlternative, planAlternatives, planSewing, Searches } from '../src/index.ts';
import { blockOf, grid, l } from './grid-block.ts';

/** Two stars of four points, one above the other. */
const stars = blockOf(3, 6, [
  ...[1, 2].map((x) => l(x, 0, x, 6)),
  ...[1, 2, 3, 4, 5].map((y) => l(0, y, 3, y)),
  ...[0, 3].flatMap((y) => [
    l(1, y, 2, y + 1),
    l(3, y + 1, 2, y + 2),
    l(2, y + 3, 1, y + 2),
    l(0, y + 2, 1, y + 1),
  ]),
]);

it('plans are the same whether what was found is shared or not', () => {
  const searches = new Searches(stars);
  for (const name of ['fewest foundations', 'most repetition', 'small sections'] as const) {
    const shared = planAlternative(stars, name, { searches }, 4);
    expect(shared).toEqual(planAlternative(stars, name, {}, 4));
  }
  for (const { name, plan } of planAlternatives(stars, {}, 4))
    expect(plan).toEqual(planAlternative(stars, name, {}, 4));
});

it('a search that was given up is begun anew: the answer does not depend on what was asked before', () => {
  const searches = new Searches(stars);
  const few = { effort: 500 };
  const first = planSewing(stars, { ...few, searches });
  expect(planSewing(stars, { ...few, searches })).toEqual(first);
  expect(planSewing(stars, { searches })).toEqual(planSewing(stars));
});

it('searches of one block are refused for another', () => {
  const searches = new Searches(stars);
  expect(() => planSewing(blockOf(2, 2, grid(2)), { searches })).toThrow('another block');
});
