import type { Arrangement } from '@seamwright/arrangement';
import { touching } from './contact.ts';
import { sewSection } from './order.ts';
import type { Pin, Section } from './types.ts';
import { willOf } from './will.ts';

/**
 * The same section in the order in which dark allowances lie under the fewest lighter patches, and that is best besides;
 * its `costs` tell how many are left, and `optimal` whether it is proved that no order has less.
 *
 * @param lightnessOf a patch's lightness from 0, dark, to 1, light; undefined where it is not known
 * @param pins what the maker wants; those that the section's own order heeds
 */
export const sectionForShades = (
  arrangement: Arrangement,
  { letter, order }: Pick<Section, 'letter' | 'order'>,
  lightnessOf: (patch: number) => number | undefined,
  pins: readonly Pin[] = [],
): Section =>
  sewSection(
    arrangement,
    touching(arrangement),
    [...order].sort((p, q) => p - q),
    letter,
    { shade: lightnessOf, will: willOf(pins) },
  );
