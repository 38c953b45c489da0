import { type Arrangement, arrange, drawingFromSegments } from '@seamwright/arrangement';
import { describe, expect, it } from 'vitest';
import { planSewing } from '../src/index.ts';
import { familyDrawing, KINDS } from './brute-force-drawings.ts';
import { fewestWithOpenSeams } from './brute-force-partial.ts';
import { arrangedIn, blockOf, grid, l, rectangle } from './grid-block.ts';
import { grownSeams } from './grown-seams.ts';
import { knownDrawings } from './read-drawings.ts';
import { cellsOf, randomFrom, windmill } from './windmills.ts';

/** Trying everything takes a tenth of a second for a drawing of so many patches, and ten times that for one more. */
const MOST_PATCHES = 7;

const SIZE = 12;
const WHOLE = { left: 0, top: 0, right: SIZE, bottom: SIZE };

/** Small drawings that straight seams do not suffice for. */
function interlocked(): { name: string; arrangement: Arrangement }[] {
  const seeds = Array.from({ length: 240 }, (_, seed) => seed);
  const family = KINDS.flatMap((kind) =>
    seeds.map((seed) => ({ name: `${kind} ${seed}`, ...familyDrawing(kind, seed) })),
  );
  const grown = seeds.map((seed) => {
    const random = randomFrom(seed + 1);
    const segments = grownSeams(4 + Math.floor(random() * 3), WHOLE, random);
    return { name: `grown ${seed}`, outline: rectangle(SIZE, SIZE), segments };
  });
  return [...family, ...grown].flatMap(({ name, outline, segments }) => {
    const made = arrange(drawingFromSegments(outline, segments));
    if (!made.ok) return [];
    const { patches, findings } = made.value;
    const whole = !findings.some(({ severity }) => severity === 'error');
    const small = patches.length <= MOST_PATCHES && patches.every(({ holes }) => holes.length === 0);
    const stuck = whole && small && planSewing(made.value, { effort: 0 }).verdict === 'not sewable';
    return stuck ? [{ name, arrangement: made.value }] : [];
  });
}

describe('the bound of a plan with partial seams', () => {
  it('is never above what trying everything finds', { timeout: 120_000 }, () => {
    const seen = { sewn: 0, not: 0, exact: 0, aboveThree: 0 };
    for (const { name, arrangement } of interlocked()) {
      const plan = planSewing(arrangement, { partialSeams: true });
      const fewest = fewestWithOpenSeams(arrangement);
      expect(plan.verdict === 'partial seams', name).toBe(Number.isFinite(fewest));
      seen[plan.verdict === 'partial seams' ? 'sewn' : 'not'] += 1;
      if (plan.verdict !== 'partial seams') continue;
      expect(plan.atLeast, name).toBeLessThanOrEqual(fewest);
      expect(plan.sections.length, name).toBeGreaterThanOrEqual(fewest);
      expect(plan.provenLeast, name).toBe(plan.atLeast === plan.sections.length);
      if (plan.atLeast === fewest) seen.exact += 1;
      if (plan.atLeast > 3) seen.aboveThree += 1;
    }
    expect(Math.min(seen.sewn, seen.not)).toBeGreaterThan(100);
    // What a bound that says little would not reach.
    expect(seen.aboveThree).toBeGreaterThan(0.9 * seen.sewn);
    expect(seen.exact).toBeGreaterThan(0.7 * seen.sewn);
  });

  it('is one more than the seams of a windmill, in whatever block it stands', () => {
    for (let seed = 1; seed <= 100; seed += 1) {
      const random = randomFrom(seed);
      const k = 3 + Math.floor(random() * 4);
      const { cells, lines } = cellsOf(1 + Math.floor(random() * 3), 1 + Math.floor(random() * 3), SIZE);
      const cell = cells[Math.floor(random() * cells.length)]!;
      const segments = [...lines, ...windmill(k, cell, random).seams];
      const plan = planSewing(arrangedIn(rectangle(SIZE, SIZE), segments), { partialSeams: true });
      expect(plan.atLeast, `seed ${seed}`).toBeGreaterThanOrEqual(k + 1);
      expect(plan.sections.length, `seed ${seed}`).toBeGreaterThanOrEqual(plan.atLeast);
    }
  });

  it('proves that four oblongs round a square take five foundations', () => {
    const { outline, segments } = knownDrawings().find(({ name }) => name === 'cycle-of-five')!;
    const plan = planSewing(arrangedIn(outline, segments), { partialSeams: true });
    expect(plan).toMatchObject({ verdict: 'partial seams', atLeast: 5, provenLeast: true });
  });

  it('adds the crossings that share no line with the ring', () => {
    const ring = [l(1, 0, 1, 2), l(0, 2, 2, 2), l(2, 1, 2, 3), l(1, 1, 3, 1)];
    // Beside the ring four squares by four, whose nine crossings need a join on three lines at least.
    const beside = grid(4).map(({ a, b }) =>
      l(3 + (a.x * 3) / 4, (a.y * 3) / 4, 3 + (b.x * 3) / 4, (b.y * 3) / 4),
    );
    const plan = planSewing(blockOf(6, 3, [...ring, l(3, 0, 3, 3), ...beside]), { partialSeams: true });
    expect(plan).toMatchObject({ verdict: 'partial seams', atLeast: 8 });
  });

  it('counts the patches that a foundation may hold', () => {
    const ring = [l(1, 0, 1, 2), l(0, 2, 2, 2), l(2, 1, 2, 3), l(1, 1, 3, 1)];
    const strips = Array.from({ length: 9 }, (_, i) => l(3 + (i * 3) / 9, 0, 3 + (i * 3) / 9, 3));
    const block = blockOf(6, 3, [...ring, ...strips]);
    expect(planSewing(block, { partialSeams: true, largestSection: 2 }).atLeast).toBe(7);
  });
});
