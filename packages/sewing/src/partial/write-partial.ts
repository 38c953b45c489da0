import type { Joinery } from '../assemble.ts';
import type { Will } from '../will.ts';
import { type WrittenPlan, writePlan } from '../write-plan.ts';
import type { PartialAssembly } from './assemble-partial.ts';
import { openJoins } from './open-joins.ts';
import { pairsBeside, slitTouching } from './slit.ts';

/** An assembly with partial seams as the maker works by it: letters, orders, and joins that tell what they leave open. */
export function writePartialPlan(
  joinery: Joinery,
  { assembly, slits }: PartialAssembly,
  will: Will,
  letters: ReadonlyMap<number, string>,
): WrittenPlan {
  const { arrangement, touching } = joinery;
  const apart = slits.flatMap((slit) => pairsBeside(joinery, slit));
  const written = writePlan(
    arrangement,
    slitTouching(touching, slits),
    assembly,
    { ...will, apart: [...will.apart, ...apart] },
    letters,
  );
  return { ...written, joins: openJoins(arrangement, written.sections, written.joins, slits) };
}
