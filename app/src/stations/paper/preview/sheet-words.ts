import type { Sheet } from '@seamwright/pages';
import { listed } from '../../../ui/plural.ts';

/** `foundation A`, `foundations A, B`; `foundations for A and C; B` where one is for several sections. */
export function whatIsOn({ sections, printedFor }: Sheet): string {
  const noun = sections.length === 1 ? 'foundation' : 'foundations';
  return printedFor === undefined
    ? `${noun} ${sections.join(', ')}`
    : `${noun} for ${printedFor.map(listed).join('; ')}`;
}
