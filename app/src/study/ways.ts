import type { SewingWishes } from '@seamwright/pattern';
import type { AlternativeName } from '@seamwright/sewing';
import type { Study, Ways } from './study.ts';

/** The ways that are compared, in the order in which they are shown. */
export const WAYS: readonly AlternativeName[] = ['fewest foundations', 'most repetition', 'small sections'];

/** Of plans made for some wishes, those that are right for others, too. */
export function waysThatStand(ways: Ways, before: SewingWishes, after: SewingWishes): Ways {
  if (before.pins !== after.pins || before.partialSeams !== after.partialSeams) return {};
  if (before.mostPatches === after.mostPatches) return ways;
  const { 'small sections': _, ...rest } = ways;
  return rest;
}

/** The ways that are not worked out yet, the chosen one first. Where nothing can be sewn, there is nothing to compare. */
export function stillToPlan({ ways, wishes, plan }: Study): readonly AlternativeName[] {
  const names = plan?.verdict === 'not sewable' ? [wishes.choice] : WAYS;
  const missing = names.filter((name) => ways[name] === undefined);
  return missing.sort((a, b) => Number(b === wishes.choice) - Number(a === wishes.choice));
}
