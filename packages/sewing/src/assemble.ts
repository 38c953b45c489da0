import type { Arrangement } from '@seamwright/arrangement';
import { type Assembly, isSewable } from './assembly.ts';
import type { Touching } from './contact.ts';
import type { Crossing } from './crossings.ts';
import { Refinement, type Wish } from './refine.ts';
import type { Region } from './region.ts';
import { SEARCH_EFFORT, Search } from './search.ts';
import { NO_WILL, type Will } from './will.ts';

/** The best assembly found, and what is known of better ones. */
export interface AssemblyResult {
  readonly assembly: Assembly;
  /** Whether straight seams suffice, as the maker wants it. */
  readonly sewable: boolean;
  /** No assembly has fewer foundations. */
  readonly atLeast: number;
}

export interface AssembleOptions {
  readonly effort?: number;
  readonly will?: Will;
  readonly wish?: Wish;
}

/** A block as the search sees it. */
export interface Joinery {
  readonly arrangement: Arrangement;
  readonly touching: Touching;
  readonly crossings: readonly Crossing[];
}

/**
 * The assembly of a connected region with the fewest foundations, and of those the best by its other figures; exact as
 * far as the effort reaches, and honest about it.
 */
export function assemble(
  joinery: Joinery,
  region: Region,
  { effort = SEARCH_EFFORT, will = NO_WILL, wish = 'fewest foundations' }: AssembleOptions = {},
): AssemblyResult {
  const search = searchIn(joinery, will, effort);
  const result = fewestIn(search, region, will);
  if (!result.sewable || result.assembly.kind === 'section' || search.spent) return result;
  search.grant(effort);
  const refined = new Refinement(joinery.arrangement, search, wish).refine(region);
  return refined === null ? result : { ...result, assembly: refined };
}

/** Whether any assembly is found at all, as the maker wants it; how good it is is not asked. */
export const canAssemble = (joinery: Joinery, region: Region, will: Will, effort: number): boolean =>
  fewestIn(searchIn(joinery, will, effort), region, will).sewable;

const searchIn = ({ touching, crossings }: Joinery, will: Will, effort: number): Search =>
  new Search(touching, crossings, will, effort);

function fewestIn(search: Search, region: Region, will: Will): AssemblyResult {
  const quick = search.anyAssembly(region);
  // Unless patches are to stay together, any cut is safe, so being stuck once is proof.
  if (!isSewable(quick) && will.together.length === 0) return { assembly: quick, sewable: false, atLeast: 0 };
  const { assembly, atLeast } = search.fewest(region, quick);
  const sewable = isSewable(assembly);
  return { assembly, sewable, atLeast: sewable ? atLeast : 0 };
}
