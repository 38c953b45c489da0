import {
  type Arrangement,
  arrange,
  carryPatches,
  type Drawing,
  type PatchRecord,
} from '@seamwright/arrangement';
import { resolvePins, type SewingWishes } from '@seamwright/pattern';
import { type AlternativeName, type PlanOptions, planAlternative, type SewingPlan } from '@seamwright/sewing';
import { tooManyPatches } from './limits.ts';

/** One way to sew a drawing, as the maker wants it. */
export function planned(
  { records, wishes }: { readonly records: readonly PatchRecord[]; readonly wishes: SewingWishes },
  arrangement: Arrangement,
  name: AlternativeName,
  how: Pick<PlanOptions, 'effort' | 'searches' | 'last'> = {},
): SewingPlan {
  const { pins } = resolvePins(wishes.pins, records);
  const options = { ...how, pins, partialSeams: wishes.partialSeams };
  return planAlternative(arrangement, name, options, wishes.mostPatches);
}

/** A block that is not open. */
export interface BlockToPlan {
  readonly drawing: Drawing;
  readonly records: readonly PatchRecord[];
  /** Ids of patches that no other patch is given: see {@link namedPatches}. */
  readonly named: readonly string[];
  readonly wishes: SewingWishes;
}

/** How such a block is sewn. */
export interface PlannedBlock {
  readonly arrangement: Arrangement;
  readonly plan: SewingPlan;
  /** In the order of the arrangement's patches. */
  readonly records: readonly PatchRecord[];
}

/** The plan that the block has when it is open; null where it cannot be sewn. */
export function planBlock({ drawing, records, named, wishes }: BlockToPlan): PlannedBlock | null {
  const arranged = arrange(drawing);
  if (!arranged.ok) return null;
  const arrangement = arranged.value;
  if (tooManyPatches(arrangement.patches.length) !== null) return null;
  const carried = carryPatches(records, arrangement, named);
  const plan = planned({ records: carried, wishes }, arrangement, wishes.choice);
  return plan.verdict === 'not sewable' ? null : { arrangement, plan, records: carried };
}
