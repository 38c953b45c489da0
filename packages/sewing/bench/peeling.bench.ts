import { timedInTurn } from '../../../scripts/bench/clock.ts';
import { Growths } from '../../../scripts/bench/growth.ts';
import { factor, ms, Table } from '../../../scripts/bench/table.ts';
import { touching } from '../src/contact.ts';
import { peel } from '../src/peel.ts';
import { geese, logCabin, strips } from './drawings.ts';
import { ofSizes } from './sizes.ts';

/**
 * Who touches whom, and taking a block apart that one foundation holds, as blocks grow. A part of `npm run bench -- sewing`; alone:
 * `npm run bench -- peeling`. Blocks of all sizes are measured in turn, and each figure is the least of all rounds.
 */
const FAMILIES = { strips, 'log cabins': logCabin, geese };
const [ROUNDS_OF_CONTACTS, ROUNDS_OF_PEELING] = [20, 100];

/** A block whose contacts are found and measured. */
interface Block {
  readonly name: string;
  readonly patches: number;
  readonly contactsMs: number;
  readonly peel: () => unknown;
}

/** Of one family at a time: the arrangements of all would not leave the rest of the memory alone. */
const blocks = Object.entries(FAMILIES).flatMap(([name, family]): Block[] => {
  const drawings = [...ofSizes(family)];
  const contactsMs = timedInTurn(
    drawings.map(
      ({ arrangement }) =>
        () =>
          touching(arrangement),
    ),
    ROUNDS_OF_CONTACTS,
  );
  return drawings.map(({ arrangement, patches }, i) => {
    const contacts = touching(arrangement);
    const all = arrangement.patches.map(({ index }) => index);
    if (peel(contacts, all).length !== 1) throw new Error(`${name} do not peel`);
    return { name, patches, contactsMs: contactsMs[i]!, peel: () => peel(contacts, all) };
  });
});
const peelMs = timedInTurn(
  blocks.map((block) => block.peel),
  ROUNDS_OF_PEELING,
);

const growths = new Growths();
const table = new Table('Peeling: is it good on one foundation?', [
  'drawing',
  'patches',
  'contacts ms',
  'growth',
  'peel ms',
  'growth',
]);
for (const name of Object.keys(FAMILIES)) {
  const finding = growths.begin('contacts', name);
  const peeling = growths.begin('peeling', name);
  blocks.forEach((block, i) => {
    if (block.name !== name) return;
    const { patches, contactsMs } = block;
    table.row(
      name,
      patches,
      ms(contactsMs),
      factor(finding.add(patches, contactsMs)),
      ms(peelMs[i]!),
      factor(peeling.add(patches, peelMs[i]!)),
    );
  });
}
growths.print();
