import { compose, identity, inverse } from '@seamwright/geometry';
import type { Section } from '@seamwright/sewing';
import { listed } from '../../ui/plural.ts';

/** What the sections of a plan are to each other; `alike` is as `alikeSections` of the pages says it. */
export interface Likeness {
  readonly sections: readonly Section[];
  /** The letters of sections that are sewn on prints of one foundation, set by set. */
  readonly alike: readonly (readonly string[])[];
}

/**
 * `The same as A, turned.`, where both are sewn on prints of one foundation; of what is like an earlier section but has
 * a print of its own, why: `The mirror image of A, with a print of its own.`; null where the section is no copy.
 */
export function copiedFrom(section: Section, { sections, alike }: Likeness): string | null {
  const { letter, copyOf } = section;
  if (copyOf === undefined) return null;
  const [first] = printedTogether(letter, alike);
  if (first !== letter)
    return `The same as ${first}, ${how(sections.find((one) => one.letter === first)!, section)}.`;
  return copyOf.mirrored
    ? `The mirror image of ${copyOf.letter}, with a print of its own.`
    : `Like ${copyOf.letter}, with a print of its own for the partial seam.`;
}

/** `Make 3: B and D are the same.`; null where no other section is sewn on prints of this one's foundation, or it is not the first. */
export function copies({ letter }: Section, { alike }: Likeness): string | null {
  const [first, ...others] = printedTogether(letter, alike);
  if (first !== letter || others.length === 0) return null;
  return `Make ${others.length + 1}: ${listed(others)} ${others.length === 1 ? 'is' : 'are'} the same.`;
}

const printedTogether = (letter: string, alike: Likeness['alike']): readonly string[] =>
  alike.find((letters) => letters.includes(letter)) ?? [letter];

/** Two mirror images of one section are turned copies of each other. */
function how(first: Section, second: Section): string {
  const { a } = compose(inverse(placeOf(first)), placeOf(second));
  // A turn of less than half a degree is none: drawings are not exact.
  return a > 0.9999 ? 'moved' : 'turned';
}

const placeOf = ({ copyOf }: Section) => copyOf?.transform ?? identity<'block'>();
