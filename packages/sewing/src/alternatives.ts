import type { Arrangement } from '@seamwright/arrangement';
import { type PlanOptions, planSewing } from './plan.ts';
import { Searches } from './searches.ts';
import type { SewingPlan } from './types.ts';

/** The ways to sew a block that a maker may want to compare. */
export type AlternativeName = 'fewest foundations' | 'most repetition' | 'small sections';

/** One way to sew the block among several, for the maker to compare. */
export interface Alternative {
  readonly name: AlternativeName;
  readonly plan: SewingPlan;
}

/** What all alternatives of one block have in common. */
export type CommonOptions = Omit<PlanOptions, 'wish' | 'largestSection'>;

/**
 * The plan that goes by one of the names.
 *
 * @param mostPatches the limit for `small sections`: no section has more patches
 */
export function planAlternative(
  arrangement: Arrangement,
  name: AlternativeName,
  options: CommonOptions,
  mostPatches: number,
): SewingPlan {
  switch (name) {
    case 'fewest foundations':
      return planSewing(arrangement, options);
    case 'most repetition':
      return planSewing(arrangement, { ...options, wish: 'most repetition' });
    case 'small sections':
      return planSewing(arrangement, { ...options, largestSection: mostPatches });
  }
}

/**
 * The plans that a maker may want to compare: fewest foundations, most repetition, and no section above a number of
 * patches. A plan that comes out like one before it is left out.
 *
 * @param mostPatches the limit for `small sections`; without it that plan is not made
 */
export function planAlternatives(
  arrangement: Arrangement,
  options: CommonOptions = {},
  mostPatches?: number,
): Alternative[] {
  const names: AlternativeName[] = ['fewest foundations', 'most repetition'];
  if (mostPatches !== undefined) names.push('small sections');
  const common = { searches: new Searches(arrangement), ...options };
  const all = names.map((name) => ({
    name,
    plan: planAlternative(arrangement, name, common, mostPatches ?? Number.POSITIVE_INFINITY),
  }));
  return all.filter(({ plan }, i) => all.slice(0, i).every((before) => !sameDivision(before.plan, plan)));
}

/** Whether two plans of one block have the same sections, whatever their letters. */
export function sameDivision(a: SewingPlan, b: SewingPlan): boolean {
  return divisionOf(a) === divisionOf(b);
}

/** The plan's sections as sets of patches. */
const divisionOf = ({ sections }: SewingPlan): string =>
  sections
    .map(({ order }) => [...order].sort((p, q) => p - q).join(' '))
    .sort()
    .join('; ');
