import { arrange } from '@seamwright/arrangement';
import { type Parameter, type StartingPoint, startingPoints } from '@seamwright/drafting';
import { area } from '@seamwright/geometry';
import { planSewing, replay, sewingReport } from '@seamwright/sewing';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

type Values = Readonly<Record<string, number>>;

/** How many patches each one has: counted on the shape, in terms of its parameters. */
const PATCHES: Readonly<Record<string, (values: Values) => number>> = {
  'log-cabin': (v) => 4 * v.rounds! + 1,
  'courthouse-steps': (v) => 4 * v.rounds! + 1,
  'half-log-cabin': (v) => 2 * v.rounds! + 1,
  pineapple: (v) => 8 * v.rounds! + 1,
  'square-in-square': (v) => 4 * v.squares! + 1,
  economy: () => 9,
  strips: (v) => v.strips!,
  strings: (v) => v.strings!,
  'string-diamond': (v) => v.strings!,
  'roman-stripe': (v) => v.strips! + 1,
  'rail-fence': (v) => v.squares! ** 2 * v.strips!,
  bricks: (v) => v.rows! * v.bricks! + Math.floor(v.rows! / 2),
  'attic-window': (v) => 3 * v.panes! ** 2,
  'flying-geese': (v) => 3 * v.geese!,
  'four-patch': () => 4,
  'double-four-patch': () => 2 + 2 * 4,
  checkerboard: (v) => v.squares! ** 2,
  hourglass: () => 4,
  pinwheel: () => 8,
  'broken-dishes': (v) => 8 * v.dishes! ** 2,
  'dutchmans-puzzle': () => 8 * 3,
  'flock-of-geese': () => 2 * 2 + 2 * 8,
  kaleidoscope: () => 12,
  'sawtooth-star': () => 17,
  // Each of four paws: the large square, claws in twos, the corner; then four strips and the middle.
  'bears-paw': (v) => 4 * (2 + 4 * v.claws!) + 5,
  // The corner, triangles in twos, the halved square, two sides with their feet, the last corner.
  basket: (v) => 1 + 4 * v.triangles! + 2 + 2 * 3 + 1,
  'birds-in-the-air': (v) => v.birds! ** 2 + 1,
  'nine-patch': () => 9,
  'double-nine-patch': () => 5 * 9 + 4,
  'shoo-fly': () => 13,
  'friendship-star': () => 13,
  'ohio-star': () => 21,
  'churn-dash': () => 17,
  'card-trick': () => 24,
  'maple-leaf': () => 4 * 2 + 4 + 3,
  'jacobs-ladder': () => 5 * 4 + 4 * 2,
  fan: (v) => 2 * v.blades! + 1,
  'spider-web': (v) => 6 * (v.rings! + 1),
  'spider-web-octagon': (v) => 8 * (v.rings! + 1),
};

/**
 * The fewest foundations of blocks as they are usually drawn. Names and shapes: Marie D. Webster, Quilts: Their Story and
 * How to Make Them, 1915 (public domain; names from memory); foundations counted by brute force.
 */
const FEWEST: readonly (readonly [id: string, values: Values, fewest: number])[] = [
  ['log-cabin', { rounds: 1 }, 1],
  ['log-cabin', { rounds: 8 }, 1],
  ['courthouse-steps', { rounds: 1 }, 1],
  ['courthouse-steps', { rounds: 6 }, 1],
  ['square-in-square', {}, 1],
  ['square-in-square', { squares: 2 }, 1],
  ['economy', {}, 1],
  ['flying-geese', { geese: 1 }, 1],
  ['flying-geese', { geese: 7 }, 1],
  ['four-patch', {}, 2],
  ['hourglass', {}, 2],
  ['nine-patch', {}, 3],
  ['pinwheel', {}, 2],
  ['kaleidoscope', {}, 2],
  ['friendship-star', {}, 3],
  ['churn-dash', {}, 3],
  ['sawtooth-star', {}, 4],
  ['card-trick', {}, 4],
  ['ohio-star', {}, 5],
];

const usual = (start: StartingPoint): Values =>
  Object.fromEntries(start.parameters.map(({ id, usual: value }) => [id, value]));

function anyValue({ kind, least, most }: Parameter): fc.Arbitrary<number> {
  if (kind === 'count') return fc.integer({ min: least, max: most });
  return fc.integer({ min: 0, max: 1000 }).map((n) => least + ((most - least) * n) / 1000);
}

/** Every choice of the least and the greatest values. */
const extremes = ({ parameters }: StartingPoint): readonly Values[] =>
  parameters.reduce<Values[]>(
    (all, { id, least, most }) => all.flatMap((v) => [least, most].map((value) => ({ ...v, [id]: value }))),
    [{}],
  );

const anyValues = (start: StartingPoint): fc.Arbitrary<Values> =>
  fc.record(Object.fromEntries(start.parameters.map((p) => [p.id, anyValue(p)])));

function arranged(start: StartingPoint, values: Values) {
  const built = start.build(values);
  if (!built.ok) throw new Error(`${start.id}: ${built.problem.what}`);
  const result = arrange(built.value);
  if (!result.ok) throw new Error(`${start.id}: ${result.problem.what}`);
  return result.value;
}

/** Sewability needs no search, so no effort is spent on the fewest foundations. */
function checkSewn(start: StartingPoint, values: Values): void {
  const arrangement = arranged(start, values);
  const what = `${start.id} ${JSON.stringify(values)}`;
  expect(arrangement.findings, what).toEqual([]);
  expect(arrangement.patches.length, what).toBe(PATCHES[start.id]!({ ...usual(start), ...values }));
  const sum = arrangement.patches.reduce((total, patch) => total + patch.area, 0);
  expect(sum, what).toBeCloseTo(area(arrangement.outline), 6);
  const plan = planSewing(arrangement, { effort: 0 });
  expect(['one foundation', 'several foundations'], what).toContain(plan.verdict);
  expect(replay(sewingReport(arrangement, plan)), what).toEqual([]);
}

describe('the shelf of starting points', () => {
  it('has two dozen and more, each with a name of its own', () => {
    expect(startingPoints.length).toBeGreaterThanOrEqual(24);
    expect(new Set(startingPoints.map(({ id }) => id)).size).toBe(startingPoints.length);
    expect(new Set(startingPoints.map(({ name }) => name)).size).toBe(startingPoints.length);
    expect(startingPoints.map(({ id }) => id).sort()).toEqual(Object.keys(PATCHES).sort());
  });

  describe.each(startingPoints.map((start) => [start.name, start] as const))('%s', (_, start) => {
    it('is sewn with straight seams as usual, at its limits and between them', () => {
      checkSewn(start, {});
      for (const values of extremes(start)) checkSewn(start, values);
      fc.assert(
        fc.property(anyValues(start), (values) => checkSewn(start, values)),
        { seed: 401, numRuns: 8 },
      );
    });
  });

  it.each(FEWEST)('%s %o: no more foundations than the fewest', (id, values, fewest) => {
    const start = startingPoints.find((each) => each.id === id)!;
    const plan = planSewing(arranged(start, values));
    expect(plan.sections).toHaveLength(fewest);
    expect(plan.provenLeast).toBe(true);
  });
});
