import { compose, identity, inverse, type Transform } from '@seamwright/geometry';
import type { Section, SewingPlan } from '@seamwright/sewing';
import { besideOpenSeams } from './open-stretches.ts';

/** What one foundation is printed for: a section, and the sections that are turned copies of it. */
export interface Template {
  /** The section that is laid out; the copies are sewn on further prints of it. */
  readonly section: Section;
  /** In the plan's order. */
  readonly copies: readonly TurnedCopy[];
  /** The letter of the template of which this one is the mirrored copy; null where it is none. */
  readonly mirroredOf: string | null;
}

/** A section that is sewn on another one's foundation. */
export interface TurnedCopy {
  readonly section: Section;
  /** Carries it on to the section that is laid out, inches on the block as drawn. Turns and moves, never mirrors. */
  readonly toTemplate: Transform;
}

/** A section that is laid out for itself alone. */
export const alone = (section: Section): Template => ({ section, copies: [], mirroredOf: null });

/** The letters of all sections that are sewn on prints of the template, the one that is laid out first. */
export const lettersOf = ({ section, copies }: Template): readonly string[] => [
  section.letter,
  ...copies.map((copy) => copy.section.letter),
];

/**
 * What is to be laid out so that sections which are copies of one another share a foundation, in the plan's order.
 *
 * A mirrored copy cannot be sewn on the same print, the fabric would lie on the wrong side. The first of them is laid
 * out, too, and the others share with it: two mirrored copies of one section are turned copies of each other.
 *
 * Sections that partial seams are sewn to have marks and words of their own, and share with none.
 *
 * Throws a RangeError when a section is said to be a copy of one that does not come before it.
 */
export function sharedTemplates(plan: Pick<SewingPlan, 'sections' | 'joins'>): readonly Template[] {
  const { sections } = plan;
  const unlike = besideOpenSeams(plan);
  const places = new Map<string, Place>();
  const templates = new Map<string, Laid>();
  for (const section of sections) {
    const place = placeOf(section, places);
    places.set(section.letter, place);
    const key = unlike.has(section.letter) ? section.letter : `${place.root} ${place.mirrored}`;
    const laid = templates.get(key);
    if (laid === undefined)
      templates.set(key, { section, place, copies: [], mirroredOf: place.mirrored ? place.root : null });
    else
      laid.copies.push({
        section,
        toTemplate: compose(inverse(place.fromRoot), laid.place.fromRoot),
      });
  }
  return [...templates.values()].map(({ section, copies, mirroredOf }) => ({ section, copies, mirroredOf }));
}

/** The letters of sections that can be sewn on prints of one foundation, set by set; sections with no like are left out. */
export const alikeSections = (plan: SewingPlan): readonly (readonly string[])[] =>
  sharedTemplates(plan)
    .map(lettersOf)
    .filter(({ length }) => length > 1);

/** A template while its copies are being found. */
interface Laid extends Template {
  readonly place: Place;
  readonly copies: TurnedCopy[];
}

/** How a section comes from the one that it, or what it is a copy of, is a copy of. */
interface Place {
  readonly root: string;
  readonly mirrored: boolean;
  readonly fromRoot: Transform;
}

function placeOf({ letter, copyOf }: Section, places: ReadonlyMap<string, Place>): Place {
  if (copyOf === undefined) return { root: letter, mirrored: false, fromRoot: identity() };
  const earlier = places.get(copyOf.letter);
  if (earlier === undefined)
    throw new RangeError(`Section ${letter} is a copy of ${copyOf.letter}, which does not come before it`);
  return {
    root: earlier.root,
    mirrored: earlier.mirrored !== copyOf.mirrored,
    fromRoot: compose(earlier.fromRoot, copyOf.transform),
  };
}
