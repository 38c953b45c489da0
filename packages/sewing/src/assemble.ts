import { type Assembly, isSewable } from './assembly.ts';
import type { Touching } from './contact.ts';
import type { Crossing } from './crossings.ts';
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
  /** Not sewable is proved (with patches to be kept together it may only be that none was found). */
  readonly settled: boolean;
}

/**
 * The assembly of a connected region with the fewest foundations; exact as far as the effort reaches, and honest
 * about it.
 */
export function assemble(
  touching: Touching,
  crossings: readonly Crossing[],
  region: Region,
  { effort = SEARCH_EFFORT, will = NO_WILL }: { effort?: number; will?: Will } = {},
): AssemblyResult {
  const search = new Search(touching, crossings, will, effort);
  const quick = search.anyAssembly(region);
  if (!isSewable(quick) && will.together.length === 0) {
    return { assembly: quick, sewable: false, atLeast: 0, settled: true };
  }
  const { assembly, atLeast } = search.fewest(region, quick);
  const sewable = isSewable(assembly);
  return { assembly, sewable, atLeast: sewable ? atLeast : 0, settled: sewable || !search.spent };
}
