import type { Arrangement } from '@seamwright/arrangement';
import { type PlanOptions, planSewing } from './plan.ts';
import type { SewingPlan } from './types.ts';

/** One way to sew the block among several, for the maker to compare. */
export interface Alternative {
  readonly name: 'fewest foundations' | 'most repetition' | 'small sections';
  readonly plan: SewingPlan;
}

/**
 * The plans that a maker may want to compare: fewest foundations, most repetition, and no section above a number of
 * patches. A plan that comes out like one before it is left out.
 *
 * @param mostPatches the limit for `small sections`; without it that plan is not made
 */
export function planAlternatives(
  arrangement: Arrangement,
  options: Omit<PlanOptions, 'wish' | 'largestSection'> = {},
  mostPatches?: number,
): Alternative[] {
  const wanted: Alternative[] = [
    { name: 'fewest foundations', plan: planSewing(arrangement, options) },
    { name: 'most repetition', plan: planSewing(arrangement, { ...options, wish: 'most repetition' }) },
  ];
  if (mostPatches !== undefined) {
    wanted.push({
      name: 'small sections',
      plan: planSewing(arrangement, { ...options, largestSection: mostPatches }),
    });
  }
  const seen = new Set<string>();
  return wanted.filter(({ plan }) => {
    const key = divisionOf(plan);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** The plan's sections as sets of patches, whatever their letters. */
const divisionOf = ({ sections }: SewingPlan): string =>
  sections
    .map(({ order }) => [...order].sort((p, q) => p - q).join(' '))
    .sort()
    .join('; ');
