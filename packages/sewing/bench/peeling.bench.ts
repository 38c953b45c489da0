import { timed } from '../../../scripts/bench/clock.ts';
import { Growths } from '../../../scripts/bench/growth.ts';
import { factor, ms, Table } from '../../../scripts/bench/table.ts';
import { touching } from '../src/contact.ts';
import { peel } from '../src/peel.ts';
import { type Family, geese, logCabin, strips } from './drawings.ts';
import { ofSizes } from './sizes.ts';

/**
 * Who touches whom, and taking a block apart that one foundation holds, as blocks grow. A part of `npm run bench -- sewing`; alone:
 * `npm run bench -- peeling`. Each figure is the least of many runs.
 */
const growths = new Growths();
measurePeeling({ strips, 'log cabins': logCabin, geese });
growths.print();

function measurePeeling(families: Readonly<Record<string, Family>>): void {
  const table = new Table('Peeling: is it good on one foundation?', [
    'drawing',
    'patches',
    'contacts ms',
    'growth',
    'peel ms',
    'growth',
  ]);
  for (const [name, family] of Object.entries(families)) {
    const finding = growths.begin('contacts', name);
    const peeling = growths.begin('peeling', name);
    for (const { arrangement, patches } of ofSizes(family)) {
      const all = arrangement.patches.map(({ index }) => index);
      const contacts = timed(() => touching(arrangement));
      const peeled = timed(() => peel(contacts.result, all));
      if (peeled.result.length !== 1) throw new Error(`${name} do not peel`);
      table.row(
        name,
        patches,
        ms(contacts.ms),
        factor(finding.add(patches, contacts.ms)),
        ms(peeled.ms),
        factor(peeling.add(patches, peeled.ms)),
      );
    }
  }
}
