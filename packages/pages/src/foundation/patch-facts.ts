import type { Template } from './templates.ts';

/** The fabric of a patch in the chosen colourway. */
export interface PatchFabric {
  /** What stands for it beside the patch's number: a letter, or two or three. */
  readonly letter: string;
  /** May be empty. */
  readonly name: string;
  /** Whether the print has an up, which is to lie towards the block's top: the patch gets an arrow. */
  readonly upright?: boolean;
}

/** What a job may say about each patch, by the patch's index in the arrangement. */
export interface PatchWords {
  /** What each patch is cut from; nothing is said of it where left out. */
  readonly fabrics?: readonly (PatchFabric | undefined)[];
  /** A few words about a patch, such as `half-rectangle`. */
  readonly notes?: readonly (string | undefined)[];
}

/** What is written about one patch of a foundation. */
export interface PatchFacts {
  readonly fabric: { readonly letter: string; readonly name: string } | null;
  readonly note: string | null;
  readonly upright: boolean;
  /** Where the foundation is for several sections whose patches here are of different fabrics, all are told of it once. */
  readonly differs: boolean;
}

/**
 * What is written about the patch at place `k` of the piecing order. On a foundation for several sections only what holds for all
 * of them: their prints are the same paper. An arrow holds for one section alone, as the others are turned.
 */
export function patchFacts({ fabrics, notes }: PatchWords, template: Template, k: number): PatchFacts {
  const patches = [template.section, ...template.copies.map(({ section }) => section)].map(
    ({ order }) => order[k]!,
  );
  const first = fabrics?.[patches[0]!];
  const alike = patches.every(
    (patch) => fabrics?.[patch]?.letter === first?.letter && fabrics?.[patch]?.name === first?.name,
  );
  const note = notes?.[patches[0]!] ?? '';
  const noted = note !== '' && patches.every((patch) => notes?.[patch] === note);
  const fabric = alike && first !== undefined ? { letter: first.letter, name: first.name } : null;
  return {
    fabric,
    note: noted ? note : null,
    upright: patches.length === 1 && first?.upright === true,
    differs: !alike || (patches.length > 1 && patches.some((patch) => fabrics?.[patch]?.upright === true)),
  };
}
