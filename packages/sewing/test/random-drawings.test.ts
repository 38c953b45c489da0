import { arrange, drawingFromSegments } from '@seamwright/arrangement';
import type { Segment } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assemble } from '../src/assemble.ts';
import { touching } from '../src/contact.ts';
import { crossingsOf } from '../src/crossings.ts';
import { planSewing, replay, sewingReport } from '../src/index.ts';

const SIZE = 12;
// Not fc.double, which draws mostly from next to 0.
const share = fc.nat(999_983).map((n) => n / 999_984);

/** A point on the border of the square at a share of its length. */
function border(s: number): { x: number; y: number } {
  const at = (s * 4) % 1;
  const sides = [
    { x: at, y: 0 },
    { x: 1, y: at },
    { x: 1 - at, y: 1 },
    { x: 0, y: 1 - at },
  ];
  const { x, y } = sides[Math.floor(s * 4)]!;
  return { x: x * SIZE, y: y * SIZE };
}

/** Chords, and stubs that end on an earlier line: T-junctions are the normal case. Any of these sews somehow. */
const chords = fc
  .array(fc.tuple(share, share, fc.nat(), fc.boolean()), { minLength: 1, maxLength: 11 })
  .map((drawn) => {
    const lines: Segment[] = [];
    for (const [s, t, pick, stub] of drawn) {
      const target = lines[pick % Math.max(1, lines.length)];
      const end =
        stub && target !== undefined
          ? { x: target.a.x + (target.b.x - target.a.x) * t, y: target.a.y + (target.b.y - target.a.y) * t }
          : border(t);
      lines.push({ a: border(s), b: end });
    }
    return lines;
  });

/** A lattice of lines right across, which needs a foundation for each row. */
const lattice = fc
  .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 }))
  .map(([columns, rows]) => {
    const across = (k: number, n: number) => ((k + 1) * SIZE) / (n + 1);
    return [
      ...Array.from({ length: columns }, (_, k) => ({
        a: { x: across(k, columns), y: 0 },
        b: { x: across(k, columns), y: SIZE },
      })),
      ...Array.from({ length: rows }, (_, k) => ({
        a: { x: 0, y: across(k, rows) },
        b: { x: SIZE, y: across(k, rows) },
      })),
    ];
  });

/** A ring of k seams, each of which ends on the next, the other end on the border. */
const windmill = fc
  .tuple(fc.integer({ min: 3, max: 6 }), share, fc.double({ min: 0.6, max: 2, noNaN: true }))
  .map(([k, turn, radius]) => {
    const at = (i: number, along: number) => {
      const angle = 2 * Math.PI * (turn + i / k);
      return {
        x: SIZE / 2 + radius * Math.cos(angle) - along * Math.sin(angle),
        y: SIZE / 2 + radius * Math.sin(angle) + along * Math.cos(angle),
      };
    };
    // Neighbouring tangents of a circle meet at radius × tan(half the angle between them).
    const reach = radius * Math.tan(Math.PI / k);
    return Array.from({ length: k }, (_, i) => ({ a: at(i, -reach), b: at(i, 2 * SIZE) }));
  });

const crossing = fc
  .array(fc.tuple(share, share), { maxLength: 2 })
  .map((ends) => ends.map(([s, t]): Segment => ({ a: border(s), b: border(t) })));

const splits = fc.oneof(
  { weight: 3, arbitrary: chords },
  { weight: 1, arbitrary: fc.tuple(lattice, chords).map(([grid, more]) => [...grid, ...more.slice(0, 2)]) },
  { weight: 2, arbitrary: fc.tuple(windmill, crossing).map(([ring, more]) => [...ring, ...more]) },
);

const SQUARE = [
  { x: 0, y: 0 },
  { x: SIZE, y: 0 },
  { x: SIZE, y: SIZE },
  { x: 0, y: SIZE },
];

function arranged(segments: readonly Segment[]) {
  const result = arrange(drawingFromSegments(SQUARE, segments));
  if (!result.ok) throw new Error(result.problem.what);
  return result.value;
}

describe('random drawings', () => {
  it('every answer is re-played by the independent checker', () => {
    const seen = { one: 0, several: 0, not: 0 };
    fc.assert(
      fc.property(splits, (segments) => {
        const arrangement = arranged(segments);
        const plan = planSewing(arrangement);
        if (plan.verdict === 'not sewable') {
          seen.not += 1;
          expect(plan.unheld.length).toBeGreaterThan(0);
          return;
        }
        seen[plan.sections.length === 1 ? 'one' : 'several'] += 1;
        expect(plan.atLeast).toBeLessThanOrEqual(plan.sections.length);
        expect(plan.provenLeast).toBe(plan.atLeast === plan.sections.length);
        expect(replay(sewingReport(arrangement, plan))).toEqual([]);
      }),
      { seed: 21, numRuns: 600 },
    );
    // The family holds every kind of answer, or the checks above would say little.
    expect(Math.min(seen.one, seen.several, seen.not)).toBeGreaterThan(10);
  });

  it('without effort the answer is still right, and its bound holds', () => {
    fc.assert(
      fc.property(splits, (segments) => {
        const arrangement = arranged(segments);
        const contacts = touching(arrangement);
        const joinery = { arrangement, touching: contacts, crossings: crossingsOf(arrangement) };
        const region = arrangement.patches.map(({ index }) => index);
        const quick = assemble(joinery, region, { effort: 0 });
        const full = assemble(joinery, region);
        expect(quick.sewable).toBe(full.sewable);
        if (!full.sewable) return;
        expect(full.atLeast).toBe(full.assembly.foundations);
        expect(quick.atLeast).toBeLessThanOrEqual(full.assembly.foundations);
        expect(quick.assembly.foundations).toBeGreaterThanOrEqual(full.assembly.foundations);
      }),
      { seed: 22, numRuns: 200 },
    );
  });
});
