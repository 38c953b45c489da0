import fc from 'fast-check';
import { expect, it } from 'vitest';
import { LastAssembly, planSewing, replay, sewingReport } from '../src/index.ts';
import { blockOf, l } from './grid-block.ts';

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

it('is recalled at every step of a drag that leaves the patches in their order', () => {
  const last = new Counting();
  for (const above of [2.3, 2.4, 2.5, 2.6]) planSewing(dragged(above, 2), { last });
  expect(last.recalled).toBe(3);
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
