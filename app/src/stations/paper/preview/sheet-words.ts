import { formatLength, type LengthUnit } from '@seamwright/geometry';
import type { PagePlan } from '@seamwright/pages';
import { listed } from '../../../ui/plural.ts';

/**
 * What stands on a sheet: `foundation A`, `foundations A, B`; `foundations for A and C; B` where one is for several sections;
 * `foundations A at 3 in, A at 6 in` where the block is printed in several sizes.
 */
export function whatIsOn({ sheets, prints }: PagePlan, index: number, unit: LengthUnit): string {
  const { sections, printedFor } = sheets[index]!;
  const several = prints.some(({ size }) => size.width !== prints[0]!.size.width);
  const names = sections.map((key) => {
    const { letters, size, mirrored } = prints.find((print) => print.key === key)!;
    const name = `${listed(letters)}${mirrored ? ' mirrored' : ''}`;
    return several ? `${name} at ${formatLength(size.width, unit)}` : name;
  });
  const noun = names.length === 1 ? 'foundation' : 'foundations';
  return printedFor === undefined ? `${noun} ${names.join(', ')}` : `${noun} for ${names.join('; ')}`;
}
