import { type Assembly, isSewable } from './assembly.ts';
import { Refinement, type Wish } from './refine.ts';
import type { Region } from './region.ts';
import { SEARCH_EFFORT, Search } from './search.ts';
import type { Searched, Searches } from './searches.ts';
import { NO_WILL, type Will } from './will.ts';

/**
 * What may be looked at to find the best assembly with the fewest foundations, as a share of the effort for finding how few
 * these are: where it is not enough, all of it would seldom be.
 */
const REFINING = 0.4;

/** The best assembly found, and what is known of better ones. */
export interface AssemblyResult {
  readonly assembly: Assembly;
  /** Whether straight seams suffice, as the maker wants it. */
  readonly sewable: boolean;
  /** Where no assembly was found, whether the effort was spent before it was proved that there is none. */
  readonly undecided: boolean;
  /** No assembly has fewer foundations. */
  readonly atLeast: number;
}

export interface AssembleOptions {
  readonly effort?: number;
  readonly will?: Will;
  readonly wish?: Wish;
}

/** A block as the search sees it. */
export interface Joinery extends Searched {
  /** What was found for other plans of the same block. */
  readonly searches?: Searches;
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
  const found = anyIn(search, region, will);
  if (!found.sewable) return found;
  const { assembly, atLeast } = search.fewest(region, found.assembly);
  const result = { ...found, assembly, atLeast };
  if (assembly.kind === 'section' || search.spent) return result;
  search.grant(effort * REFINING);
  const refined = new Refinement(joinery.arrangement, search, wish).refine(region);
  return refined === null ? result : { ...result, assembly: refined };
}

/**
 * Whether there is any assembly at all, as the maker wants it; how good it is is not asked. Undefined when the effort is
 * spent before that is known.
 */
export function canAssemble(
  joinery: Joinery,
  region: Region,
  will: Will,
  effort: number,
): boolean | undefined {
  const { touching, crossings } = joinery;
  const { sewable, undecided } = anyIn(new Search(touching, crossings, will, effort), region, will);
  return undecided ? undefined : sewable;
}

function searchIn(joinery: Joinery, will: Will, effort: number): Search {
  const { touching, crossings, searches } = joinery;
  return searches?.begun(joinery, will, effort) ?? new Search(touching, crossings, will, effort);
}

function anyIn(search: Search, region: Region, will: Will): AssemblyResult {
  const quick = search.anyAssembly(region);
  if (isSewable(quick)) return { assembly: quick, sewable: true, undecided: false, atLeast: 1 };
  const none = { assembly: quick, sewable: false, undecided: false, atLeast: 0 };
  // Unless patches are to stay together, any cut is safe, so being stuck once is proof.
  if (will.together.length === 0) return none;
  const found = search.assemblyAfterAll(region);
  if (found === undefined) return { ...none, undecided: true };
  return found === null ? none : { assembly: found, sewable: true, undecided: false, atLeast: 1 };
}
