import type { LengthUnit } from '@seamwright/geometry';
import { type PagePlan, printsOn } from '@seamwright/pages';
import { listed } from '../../../ui/plural.ts';
import { roughLength } from '../../../ui/rough-length.ts';

/**
 * What stands on a sheet: `foundation A`, `foundations A, B`; `foundations for A and C; B` where one is for several sections;
 * `foundations A at 3 in, A at 6 in` where the block is printed in several sizes; `foundations A × 6` where sheets are filled.
 */
export function whatIsOn(plan: PagePlan, index: number, unit: LengthUnit): string {
  const { sheets, prints } = plan;
  const { sections, printedFor } = sheets[index]!;
  const several = prints.some(({ size }) => size.width !== prints[0]!.size.width);
  const names = printsOn(plan, index).map(({ print: { letters, size, mirrored }, number }) => {
    const name = `${listed(letters)}${mirrored ? ' mirrored' : ''}`;
    const sized = several ? `${name} at ${roughLength(size.width, unit)}` : name;
    return number === 1 ? sized : `${sized} × ${number}`;
  });
  const noun = sections.length === 1 ? 'foundation' : 'foundations';
  return printedFor === undefined ? `${noun} ${names.join(', ')}` : `${noun} for ${names.join('; ')}`;
}
