import { compose, identity, inverse, type Transform } from '@seamwright/geometry';
import type { Section, SewingPlan } from '@seamwright/sewing';
import { besideOpenSeams } from './open-stretches.ts';

/** A section of the block as drawn, or of the mirrored block. */
interface Use {
  readonly section: Section;
  /** Whether it is sewn for blocks that are the mirror image of the drawing. */
  readonly mirroredBlock: boolean;
}

/** What one foundation is printed for: a section, and the sections that are turned copies of it. */
export interface Template extends Use {
  /** Sewn on further prints of it; in the plan's order, those of the block as drawn first. */
  readonly copies: readonly TurnedCopy[];
  /** The letter of the template of which this one is the mirrored copy in the same block; null where it is none. */
  readonly mirroredOf: string | null;
}

/** A section that is sewn on another one's foundation. */
export interface TurnedCopy extends Use {
  /**
   * Carries it on to the section that is laid out, inches on the block as drawn. Turns and moves; mirrors where one of
   * the two is of the mirrored block.
   */
  readonly toTemplate: Transform;
}

/** How a plan's foundations are made. */
export interface Sharing {
  readonly plan: Pick<SewingPlan, 'sections' | 'joins'>;
  /** Whether sections that are copies of one another share a foundation; else each has one of its own. */
  readonly shareTemplates: boolean;
  /** The motion that turns a section over on to itself; null where it is not its own mirror image. */
  readonly mirrorOf: (section: Section) => Transform | null;
}

/** Which blocks are sewn: as drawn, mirrored, or both. */
export type Faces = 'as drawn' | 'mirrored' | 'both';

/** The letters of all sections that are sewn on prints of the template, the one that is laid out first. */
export const lettersOf = (template: Template): readonly string[] =>
  usesOf(template).map(({ section, mirroredBlock }) =>
    mirroredBlock === template.mirroredBlock ? section.letter : `${section.letter} (mirrored)`,
  );

/** How many prints of the template it takes for so many blocks as drawn and so many mirrored ones. */
export const printsFor = (template: Template, copies: number, mirrored: number): number =>
  usesOf(template).reduce((sum, { mirroredBlock }) => sum + (mirroredBlock ? mirrored : copies), 0);

const usesOf = (template: Template): readonly Use[] => [template, ...template.copies];

/**
 * What is to be laid out, in the plan's order, what only the mirrored block needs last.
 *
 * A mirrored copy cannot be sewn on the same print, the fabric would lie on the wrong side. Where sections share, the first of
 * them is laid out, too, and the others share with it: two mirrored copies of one section are turned copies of each other.
 * So the mirrored block's copy of a section shares with what is mirrored in the block as drawn, or with the section
 * itself where that is its own mirror image.
 *
 * Sections that partial seams are sewn to have marks and words of their own, and share with none.
 *
 * Throws a RangeError when a section is said to be a copy of one that does not come before it.
 */
export function templatesFor(sharing: Sharing, faces: Faces): readonly Template[] {
  const { sections } = sharing.plan;
  const unlike = sharing.shareTemplates ? besideOpenSeams(sharing.plan) : new Set(letters(sections));
  const places = placesOf(sections);
  const templates = new Map<string, Laid>();
  for (const use of usesIn(sections, faces)) {
    const { section, mirroredBlock } = use;
    const place = places.get(section.letter)!;
    if (unlike.has(section.letter)) {
      const mirroredOf = sharing.shareTemplates && !mirroredBlock && place.mirrored ? place.root : null;
      templates.set(`${section.letter} ${mirroredBlock}`, { ...use, place, copies: [], mirroredOf });
      continue;
    }
    const printed = mirroredBlock ? turnedOver(place) : place;
    const root = sections.find(({ letter }) => letter === printed.root)!;
    // Of the block as drawn what is its own mirror image is a plain copy.
    const mirror = mirroredBlock && printed.mirrored ? sharing.mirrorOf(root) : null;
    const onRoot = mirror === null ? printed : turnedOver(printed, mirror);
    const key = `${onRoot.root} ${onRoot.mirrored} shared`;
    const laid = templates.get(key);
    if (laid === undefined) {
      const mirroredOf = !mirroredBlock && place.mirrored ? place.root : null;
      templates.set(key, { ...use, place: onRoot, copies: [], mirroredOf });
    } else laid.copies.push({ ...use, toTemplate: compose(inverse(onRoot.fromRoot), laid.place.fromRoot) });
  }
  return [...templates.values()].map(({ place, ...template }) => template);
}

/** The letters of sections that can be sewn on prints of one foundation, set by set; sections with no like are left out. */
export const alikeSections = (plan: SewingPlan): readonly (readonly string[])[] =>
  templatesFor({ plan, shareTemplates: true, mirrorOf: () => null }, 'as drawn')
    .map(lettersOf)
    .filter(({ length }) => length > 1);

const letters = (sections: readonly Section[]): readonly string[] => sections.map(({ letter }) => letter);

const usesIn = (sections: readonly Section[], faces: Faces): readonly Use[] => [
  ...(faces === 'mirrored' ? [] : sections.map((section) => ({ section, mirroredBlock: false }))),
  ...(faces === 'as drawn' ? [] : sections.map((section) => ({ section, mirroredBlock: true }))),
];

/** A template while its copies are being found. */
interface Laid extends Template {
  readonly place: Place;
  readonly copies: TurnedCopy[];
}

/** How a section comes from the one that it, or what it is a copy of, is a copy of. */
interface Place {
  readonly root: string;
  /** Whether it is sewn on the mirror image of the root's foundation. */
  readonly mirrored: boolean;
  readonly fromRoot: Transform;
}

/** The same on the other face: of the mirrored block, or taken for the mirror image of a root that is its own. */
const turnedOver = ({ root, mirrored, fromRoot }: Place, mirror: Transform = identity()): Place => ({
  root,
  mirrored: !mirrored,
  fromRoot: compose(mirror, fromRoot),
});

function placesOf(sections: readonly Section[]): ReadonlyMap<string, Place> {
  const places = new Map<string, Place>();
  for (const { letter, copyOf } of sections) {
    if (copyOf === undefined) {
      places.set(letter, { root: letter, mirrored: false, fromRoot: identity() });
      continue;
    }
    const earlier = places.get(copyOf.letter);
    if (earlier === undefined)
      throw new RangeError(`Section ${letter} is a copy of ${copyOf.letter}, which does not come before it`);
    places.set(letter, {
      root: earlier.root,
      mirrored: earlier.mirrored !== copyOf.mirrored,
      fromRoot: compose(earlier.fromRoot, copyOf.transform),
    });
  }
  return places;
}
