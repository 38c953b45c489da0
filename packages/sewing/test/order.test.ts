import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { touching } from '../src/contact.ts';
import { replay } from '../src/index.ts';
import { chooseOrder, orderCosts } from '../src/order/choose.ts';
import { DEFAULT_WEIGHTS, weigh } from '../src/order/costs.ts';
import { sewSection } from '../src/order.ts';
import type { OrderCosts, OrderWeights, Pin } from '../src/types.ts';
import { willOf } from '../src/will.ts';
import {
  courthouseSteps,
  cutCorners,
  geese,
  logCabin,
  oneFoundation,
  type SomePatches,
  somePatches,
  squareInSquare,
  strips,
} from './order-sections.ts';
import { OrdersByDefinition, type Shade, type Wanted } from './orders-by-definition.ts';

const NOTHING: Wanted = { firsts: [], befores: [] };

const willFor = ({ firsts, befores }: Wanted) =>
  willOf([
    ...firsts.map((patch): Pin => ({ kind: 'first', patch })),
    ...befores.map(([patch, than]): Pin => ({ kind: 'before', patch, than })),
  ]);

const weights: fc.Arbitrary<OrderWeights> = fc.oneof(
  fc.constant(DEFAULT_WEIGHTS),
  fc.record({ showThrough: fc.nat(5), uncleanFolds: fc.nat(5), jumps: fc.nat(5) }),
);

/** A few shades, so that neighbours are often alike; some are not known. */
const shades: fc.Arbitrary<Shade> = fc
  .array(fc.option(fc.nat(4), { nil: undefined, freq: 4 }), { minLength: 80, maxLength: 80 })
  .map((known) => (patch) => {
    const shade = known[patch % 80];
    return shade === undefined ? undefined : shade / 4;
  });

/** Pins, some of them on patches that are not in the section. */
const pins = fc.record({
  firsts: fc.array(fc.nat(), { maxLength: 2 }),
  befores: fc.array(fc.tuple(fc.nat(), fc.nat()), { maxLength: 3 }),
});
const onPatches = ({ firsts, befores }: Wanted, { arrangement: { patches } }: SomePatches): Wanted => ({
  firsts: firsts.map((p) => p % patches.length),
  befores: befores.map(([p, q]) => [p % patches.length, q % patches.length]),
});

/** Decimals of an inch. Vertices lie on their lines within 1e-6, so adding up lengths along them is no more exact. */
const LENGTH_DIGITS = 5;

interface Case {
  readonly some: SomePatches;
  readonly wanted?: Wanted;
  readonly shade?: Shade;
  readonly weights?: OrderWeights;
}

const unknown: Shade = () => undefined;

/** Chooses an order, checks it by definition and by the checker, and that its costs are what it is said to cost. */
function choose({ some, wanted = NOTHING, shade = unknown, weights = DEFAULT_WEIGHTS }: Case) {
  const { arrangement, region } = some;
  const options = { weights, shade, will: willFor(wanted) };
  const chosen = chooseOrder(arrangement, touching(arrangement), region, options);
  if (chosen === null) return null;
  const byDefinition = new OrdersByDefinition(arrangement, region, wanted);
  expect(byDefinition.isGood(chosen.order)).toBe(true);
  expect(chosen.costs).toEqual(byDefinition.costs(chosen.order, shade));
  expect(orderCosts(arrangement, touching(arrangement), chosen.order, shade)).toEqual(chosen.costs);

  const section = sewSection(arrangement, touching(arrangement), region, 'A', options);
  expect(section).toMatchObject(chosen);
  expect(replay(byDefinition.report(section.order, section.outline))).toEqual([]);
  return { ...chosen, cost: weigh(chosen.costs, weights) };
}

/** Compares the order chosen with every other; returns what they all cost, nothing when there is none. */
function compareWithAll(compared: Case): readonly OrderCosts[] {
  const { some, wanted = NOTHING, shade = unknown, weights = DEFAULT_WEIGHTS } = compared;
  const byDefinition = new OrdersByDefinition(some.arrangement, some.region, wanted);
  const all: OrderCosts[] = [];
  let bridged = 0;
  byDefinition.visitAll((order) => {
    all.push(byDefinition.costs(order, shade));
    bridged = Math.max(bridged, byDefinition.bridged(order));
    return true;
  });
  // Why what is sewn is no cost of an order: in none of them a sew line is longer than the seams on it.
  expect(bridged).toBeCloseTo(0, LENGTH_DIGITS);
  const chosen = choose(compared);
  expect(chosen === null).toBe(all.length === 0);
  if (chosen === null) return [];
  const least = all.reduce((best, costs) => Math.min(best, weigh(costs, weights)), Number.POSITIVE_INFINITY);
  expect(chosen.cost).toBeCloseTo(least, LENGTH_DIGITS);
  expect(chosen.optimal).toBe(true);
  return all;
}

describe('good orders, counted by writing them all down', () => {
  const count = ({ arrangement, region }: SomePatches) => new OrdersByDefinition(arrangement, region).count();

  it('k parallel strips: 2^(k − 1) (the strips that are sewn are always a run)', () => {
    for (let k = 1; k <= 9; k += 1) expect(count(strips(k))).toBe(2 ** (k - 1));
  });

  it('square in a square: 48; a goose: 4 (counted by brute force elsewhere)', () => {
    expect(count(squareInSquare(2))).toBe(48);
    expect(count(geese(1))).toBe(4);
  });

  it('courthouse steps of r rounds: 2·4^r; log cabin: 2 (counted by brute force elsewhere)', () => {
    for (const r of [1, 2, 3]) expect(count(courthouseSteps(r))).toBe(2 * 4 ** r);
    for (const r of [1, 2, 3]) expect(count(logCabin(r))).toBe(2);
  });
});

describe('the order chosen, compared with every other', () => {
  it('seeded sections of up to 9 patches: none costs less', () => {
    const differing = { showThrough: 0, uncleanFolds: 0, jumps: 0 };
    let stuck = 0;
    fc.assert(
      fc.property(somePatches(9), shades, weights, (some, shade, weights) => {
        const all = compareWithAll({ some, shade, weights });
        if (all.length === 0) stuck += 1;
        for (const name of ['showThrough', 'uncleanFolds', 'jumps'] as const) {
          if (new Set(all.map((costs) => costs[name])).size > 1) differing[name] += 1;
        }
      }),
      { seed: 31, numRuns: 400, endOnFailure: true },
    );
    // Sections in which each cost makes orders differ, and such as have no order, or the above would say little.
    expect(Math.min(...Object.values(differing), stuck)).toBeGreaterThan(30);
  });

  it('under pins: none that heeds them costs less; and none is found exactly where there is none', () => {
    let heeded = 0;
    let impossible = 0;
    fc.assert(
      fc.property(somePatches(8), pins, shades, weights, (some, wanted, shade, weights) => {
        const pinned = onPatches(wanted, some);
        const all = compareWithAll({ some, wanted: pinned, shade, weights });
        const freely = new OrdersByDefinition(some.arrangement, some.region).count();
        if (all.length > 0 && all.length < freely) heeded += 1;
        if (all.length === 0 && freely > 0) impossible += 1;
      }),
      { seed: 32, numRuns: 600, endOnFailure: true },
    );
    expect(Math.min(heeded, impossible)).toBeGreaterThan(30);
  });

  const blocks: Record<string, SomePatches> = {
    '12 strips': strips(12),
    'square in a square in a square': squareInSquare(3),
    'hexagon with its corners cut': cutCorners(6, 6),
    'courthouse steps, 3 rounds': courthouseSteps(3),
    'courthouse steps, 4 rounds': courthouseSteps(4),
    'log cabin, 3 rounds': logCabin(3),
    'six geese': geese(6),
  };
  for (const [name, some] of Object.entries(blocks)) {
    it(`${name}: none costs less, whatever the shades and the first patch`, () => {
      compareWithAll({ some });
      fc.assert(
        fc.property(shades, fc.nat(), (shade, first) => {
          const wanted = { firsts: [some.region[first % some.region.length]!], befores: [] };
          compareWithAll({ some, shade });
          compareWithAll({ some, shade, wanted });
        }),
        { seed: 33, numRuns: 3, endOnFailure: true },
      );
    });
  }

  it('seeded blocks of 10 to 20 patches with up to 500 orders: none costs less', () => {
    const compared: number[] = [];
    fc.assert(
      fc.property(oneFoundation(10, 20), shades, (some, shade) => {
        let orders = 0;
        new OrdersByDefinition(some.arrangement, some.region).visitAll(() => {
          orders += 1;
          return orders <= 500;
        });
        if (orders > 500) return;
        const all = compareWithAll({ some, shade });
        // The block is convex, and so is all that is left of it whenever a patch has come off.
        expect(all.every(({ uncleanFolds }) => uncleanFolds === 0)).toBe(true);
        compared.push(some.region.length);
      }),
      { seed: 34, numRuns: 150, endOnFailure: true },
    );
    expect(compared.length).toBeGreaterThan(30);
    expect(Math.max(...compared)).toBeGreaterThanOrEqual(16);
  });

  it('seeded blocks of 10 to 20 patches with any number of orders: none costs less', () => {
    fc.assert(
      fc.property(oneFoundation(10, 20), shades, weights, pins, (some, shade, weights, wanted) => {
        const pinned = onPatches(wanted, some);
        const byDefinition = new OrdersByDefinition(some.arrangement, some.region, pinned);
        const least = byDefinition.leastCost(weights, shade);
        const chosen = choose({ some, wanted: pinned, shade, weights });
        expect(chosen?.cost ?? Number.POSITIVE_INFINITY).toBeCloseTo(least, LENGTH_DIGITS);
        expect(chosen?.optimal ?? true).toBe(true);
      }),
      { seed: 35, numRuns: 60, endOnFailure: true },
    );
  });
});
