import { timed } from '../../../scripts/bench/clock.ts';
import { ms, Table } from '../../../scripts/bench/table.ts';
import { isSewable } from '../src/assembly.ts';
import { touching } from '../src/contact.ts';
import { crossingsOf } from '../src/crossings.ts';
import { planSewing } from '../src/index.ts';
import { SEARCH_EFFORT, Search } from '../src/search.ts';
import { NO_WILL } from '../src/will.ts';
import type { Family } from './drawings.ts';
import { ofSizes } from './sizes.ts';

/** The fewest foundations: how far the search is exact, and what it looks at. */
export function measureSectioning(
  families: Readonly<Record<string, Family>>,
  sizes: readonly number[],
): void {
  const table = new Table('Sectioning: the fewest foundations', [
    'drawing',
    'patches',
    'first answer',
    'first ms',
    'regions',
    'search ms',
    'fewest',
    'at least',
    'proven',
    'plan ms',
  ]);
  for (const [name, family] of Object.entries(families)) {
    for (const { arrangement, patches } of ofSizes(family, sizes)) {
      const contacts = touching(arrangement);
      const crossings = crossingsOf(arrangement);
      const all = arrangement.patches.map(({ index }) => index);
      const begun = () => new Search(contacts, crossings, NO_WILL, SEARCH_EFFORT);
      const first = timed(() => begun().anyAssembly(all));
      const searched = timed(() => {
        const search = begun();
        return { ...search.fewest(all, first.result), regions: search.lookedAt };
      });
      const plan = timed(() => planSewing(arrangement));
      const { assembly, atLeast, regions } = searched.result;
      if (!isSewable(first.result) || !isSewable(assembly)) throw new Error(`${name} cannot be sewn`);
      table.row(
        name,
        patches,
        first.result.foundations,
        ms(first.ms),
        regions,
        ms(searched.ms),
        assembly.foundations,
        atLeast,
        assembly.foundations === atLeast ? 'yes' : 'no',
        ms(plan.ms),
      );
    }
  }
}
