import type { Arrangement } from '@seamwright/arrangement';
import type { Touching } from './contact.ts';
import type { Crossing } from './crossings.ts';
import { Search } from './search.ts';
import type { Will } from './will.ts';

/** What a search is made in. */
export interface Searched {
  readonly arrangement: Arrangement;
  readonly touching: Touching;
  readonly crossings: readonly Crossing[];
}

/**
 * Searches of one block that are kept from one plan to the next: where the maker's will is the same, what was found about
 * regions for one plan serves another.
 */
export class Searches {
  private readonly kept = new Map<string, Search>();

  constructor(private readonly arrangement: Arrangement) {}

  /** The search for a will, begun or begun anew, with an effort of its own. */
  begun({ arrangement, touching, crossings }: Searched, will: Will, effort: number): Search {
    if (arrangement !== this.arrangement) throw new Error('Searches: these are of another block');
    const key = keyOf(will);
    const kept = this.kept.get(key);
    // One that came to no end is not gone on with: the answer would depend on what was asked before.
    if (kept !== undefined && !kept.spent) {
      kept.grant(effort);
      return kept;
    }
    const search = new Search(touching, crossings, will, effort);
    this.kept.set(key, search);
    return search;
  }
}

const keyOf = ({ largestSection, firsts, before, together, apart }: Will): string =>
  JSON.stringify([`${largestSection}`, [...firsts], [...before], together, apart]);
