import { type Arrangement, arrange, drawingFromSegments } from '@seamwright/arrangement';
import { describe, expect, it } from 'vitest';
import { planSewing, replay, sewingReport, type Wish } from '../src/index.ts';
import { type Key, keysOf, leastKey, type Wanted } from './all-assemblies.ts';
import { SQUARE, symmetricDrawing } from './symmetric-drawings.ts';

/** Every sixth has no symmetry, the others are alike on two, four or eight sides. */
const SEEDS = 4000;
const [FEWEST_PATCHES, MOST_PATCHES] = [4, 12];

interface Ranking {
  readonly wish: Wish;
  /** The assemblies that are compared. */
  readonly among: Wanted;
  readonly figures: readonly (keyof Key)[];
}

const RANKINGS: readonly Ranking[] = [
  {
    wish: 'fewest foundations',
    among: 'those with the fewest foundations',
    figures: ['foundations', 'matchPoints', 'templates', 'joinLength'],
  },
  {
    wish: 'most repetition',
    among: 'all',
    figures: ['templates', 'foundations', 'matchPoints', 'joinLength'],
  },
];

function smallBlock(seed: number): Arrangement | null {
  const result = arrange(drawingFromSegments(SQUARE, symmetricDrawing(seed)));
  if (!result.ok) return null;
  const { patches, findings } = result.value;
  if (findings.some(({ severity }) => severity === 'error')) return null;
  return patches.length >= FEWEST_PATCHES && patches.length <= MOST_PATCHES ? result.value : null;
}

describe('the choice among assemblies, against all of them', () => {
  for (const { wish, among, figures } of RANKINGS) {
    it(`${wish}: the best by ${figures.join(', then ')}`, async ({ annotate }) => {
      let [compared, decidedByTemplates, tooMuch] = [0, 0, 0];
      for (let seed = 0; seed < SEEDS; seed += 1) {
        const block = smallBlock(seed);
        if (block === null) continue;
        const keys = keysOf(
          among,
          block.patches.map(({ polygon }) => polygon.map(({ x, y }) => [x, y] as const)),
        );
        if (keys === null) tooMuch += 1;
        if (keys === null || keys.length === 0) continue;
        const best = leastKey(keys, figures);
        const plan = planSewing(block, { wish });
        expect(plan.figures, `seed ${seed}`).toEqual({
          ...best,
          joinLength: expect.closeTo(best.joinLength, 4),
        });
        expect(replay(sewingReport(block, plan)), `seed ${seed}`).toEqual([]);
        compared += 1;
        const before = figures.slice(0, figures.indexOf('templates'));
        const equal = keys.filter((key) => before.every((figure) => key[figure] === best[figure]));
        if (new Set(equal.map(({ templates }) => templates)).size > 1) decidedByTemplates += 1;
      }
      await annotate(`${compared} compared, ${decidedByTemplates} decided by templates, ${tooMuch} too much`);
      expect(compared).toBeGreaterThan(700);
      expect(decidedByTemplates).toBeGreaterThan(50);
      expect(tooMuch).toBeLessThan(5);
    });
  }
});
