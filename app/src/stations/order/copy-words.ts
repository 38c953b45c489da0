import type { Section } from '@seamwright/sewing';
import { listed } from '../../ui/plural.ts';

/** `The same as A, turned: one template serves both.`; null where the section is no copy. */
export function copiedFrom({ copyOf }: Section): string | null {
  if (copyOf === undefined) return null;
  return `The same as ${copyOf.letter}, ${how(copyOf)}.`;
}

/** `Make 3: B and D are the same.`; null where nothing is a copy of the section. */
export function copies(section: Section, sections: readonly Section[]): string | null {
  const letters = sections.flatMap(({ copyOf, letter }) =>
    copyOf?.letter === section.letter ? [letter] : [],
  );
  if (letters.length === 0) return null;
  return `Make ${letters.length + 1}: ${listed(letters)} ${letters.length === 1 ? 'is' : 'are'} the same.`;
}

function how({ mirrored, transform }: NonNullable<Section['copyOf']>): string {
  if (mirrored) return 'mirrored';
  // A turn of less than half a degree is none: drawings are not exact.
  return transform.a > 0.9999 ? 'moved' : 'turned';
}
