import type { Arrangement } from '@seamwright/arrangement';
import { rotation, transformPolygon, transformSegment } from '@seamwright/geometry';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { LastAssembly, type Pin, planSewing, replay, sewingReport } from '../src/index.ts';
import { familyDrawing, KINDS } from './brute-force-drawings.ts';
import { arrangedIn, blockOf, l, patchAt, rectangle } from './grid-block.ts';

/** A block of 4 × 4 in, of which one line is dragged along the upper and the lower edge. */
const dragged = (above: number, below: number) =>
  blockOf(4, 4, [
    l(1, 0, 1, 4),
    l(above, 0, below, 4),
    ...[1, 2, 3].map((y) => l(0, y, 4, y)),
    l(0, 0, 1, 1),
    l(0, 4, 1, 3),
  ]);

class Counting extends LastAssembly {
  recalled = 0;

  override recall(...asked: Parameters<LastAssembly['recall']>) {
    const result = super.recall(...asked);
    if (result !== null) this.recalled += 1;
    return result;
  }
}

it('while only places change, the last assembly serves, and every plan still holds', () => {
  const place = fc.double({ min: 1.2, max: 3.8, noNaN: true });
  fc.assert(
    fc.property(fc.array(fc.tuple(place, place), { minLength: 2, maxLength: 8 }), (drag) => {
      const last = new LastAssembly();
      for (const [above, below] of drag) {
        const block = dragged(above, below);
        const plan = planSewing(block, { last });
        const fresh = planSewing(block);
        expect(replay(sewingReport(block, plan))).toEqual([]);
        expect([plan.verdict, plan.sections.length, plan.atLeast, plan.provenLeast]).toEqual([
          fresh.verdict,
          fresh.sections.length,
          fresh.atLeast,
          fresh.provenLeast,
        ]);
      }
    }),
    { seed: 20_261_125, numRuns: 60 },
  );
});

/** The patches in the order of their numbers, each by the lines round it. */
const numbers = ({ patches }: Arrangement) => patches.map(({ signature }) => signature).join('; ');

it('is recalled at every step of a drag, also where patches and lines change places in their lists', () => {
  const last = new Counting();
  const orders = new Set<string>();
  // Upright, the line is as long as the one beside it; otherwise it is the longest.
  for (const above of [1.7, 1.9, 2, 2.1, 2.3, 2.6]) {
    const block = dragged(above, 2);
    orders.add(numbers(block));
    const plan = planSewing(block, { last });
    expect(replay(sewingReport(block, plan))).toEqual([]);
    expect(plan.figures.foundations).toBe(planSewing(block).figures.foundations);
  }
  expect(orders.size).toBeGreaterThan(1);
  expect(last.recalled).toBe(5);
});

it('is recalled for a turned block, and the plan is as good as one of its own', () => {
  let renumbered = 0;
  const kind = fc.constantFrom(...KINDS);
  fc.assert(
    fc.property(kind, fc.nat(400), fc.integer({ min: 1, max: 359 }), (of, seed, degrees) => {
      const { outline, segments } = familyDrawing(of, seed);
      const turn = rotation(degrees, { x: 7, y: 5 });
      const block = arrangedIn(outline, segments);
      const turned = arrangedIn(
        transformPolygon(turn, outline),
        segments.map((segment) => transformSegment(turn, segment)),
      );
      const last = new Counting();
      const before = planSewing(block, { last });
      const plan = planSewing(turned, { last });
      // What could not be sewn is looked at afresh.
      expect(last.recalled).toBe(before.verdict === 'not sewable' ? 0 : 1);
      const fresh = planSewing(turned);
      if (before.verdict === 'not sewable') {
        expect(plan).toEqual(fresh);
        return;
      }
      expect(replay(sewingReport(turned, plan))).toEqual([]);
      if (plan.sections.length > 1 && numbers(block) !== numbers(turned)) renumbered += 1;
      const { joinLength, templates, ...counted } = plan.figures;
      expect([plan.verdict, plan.atLeast, plan.provenLeast]).toEqual([
        fresh.verdict,
        fresh.atLeast,
        fresh.provenLeast,
      ]);
      expect(fresh.figures).toMatchObject(counted);
      expect(joinLength).toBeCloseTo(fresh.figures.joinLength, 9);
      // Which sections repeat is not looked for in a plan that is recalled.
      expect(templates).toBe(plan.sections.length);
      // Letters go from the top left, whatever came before.
      expect(plan.sections.map(({ letter }) => letter)).toEqual(fresh.sections.map(({ letter }) => letter));
    }),
    { seed: 20_261_125, numRuns: 150 },
  );
  // The others sew on one foundation, or cannot be sewn, or keep their numbers.
  expect(renumbered).toBeGreaterThan(40);
});

it('knows pins again by the patches that they are on', () => {
  const half = rotation(180, { x: 2, y: 2 });
  const lines = [l(1, 0, 1, 4), l(2.5, 0, 2.5, 4), l(0, 1, 4, 1), l(0, 3, 4, 3)];
  const block = blockOf(4, 4, lines);
  const turned = arrangedIn(
    transformPolygon(half, rectangle(4, 4)),
    lines.map((line) => transformSegment(half, line)),
  );
  const onTurned = ({ x, y }: { x: number; y: number }) => patchAt(turned, 4 - x, 4 - y);
  const places = [
    { x: 0.5, y: 0.5 },
    { x: 0.5, y: 2 },
  ] as const;
  const pinned = places.map(({ x, y }) => patchAt(block, x, y)) as [number, number];
  const same = places.map(onTurned) as [number, number];
  expect(same).not.toEqual(pinned);
  const recalledFor = (pins: readonly Pin[]) => {
    const last = new Counting();
    planSewing(block, { last, pins: [{ kind: 'apart', patches: pinned }] });
    expect(planSewing(turned, { last, pins }).conflict).toEqual([]);
    return last.recalled;
  };
  expect(recalledFor([{ kind: 'apart', patches: same }])).toBe(1);
  expect(recalledFor([{ kind: 'apart', patches: pinned }])).toBe(0);
  expect(recalledFor([{ kind: 'together', patches: same }])).toBe(0);
});

it('is not recalled for another structure, nor for other wishes', () => {
  const last = new LastAssembly();
  planSewing(dragged(2, 2), { last });
  // Dragged across the line beside it: other patches touch.
  const crossed = dragged(0.5, 2);
  expect(planSewing(crossed, { last })).toEqual(planSewing(crossed));
  const pins = [{ kind: 'together', patches: [0, 1] }] as const;
  expect(planSewing(crossed, { last, pins })).toEqual(planSewing(crossed, { pins }));
  expect(planSewing(crossed, { last, largestSection: 2 })).toEqual(
    planSewing(crossed, { largestSection: 2 }),
  );
});
