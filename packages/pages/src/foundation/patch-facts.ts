import type { Cloth, CutRules, PieceNote } from '@seamwright/cloth';
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

/**
 * What foundations say of the pattern's fabrics.
 *
 * @param chosen by patch, the id of its fabric; nothing where the maker chose none
 */
export function patchFabrics(
  fabrics: readonly { readonly id: string; readonly name: string; readonly grain?: string }[],
  chosen: readonly (string | null | undefined)[],
): readonly (PatchFabric | undefined)[] {
  const said = new Map(
    fabrics.map(({ id, name, grain }, at) => [
      id,
      { letter: fabricLetter(at), name, ...(grain === 'one way' && { upright: true }) },
    ]),
  );
  return chosen.map((id) => said.get(id ?? ''));
}

/** `a` … `z`, `aa`, `ab` …: small, as sections have capitals. */
const fabricLetter = (index: number): string =>
  (index < 26 ? '' : fabricLetter(Math.floor(index / 26) - 1)) + String.fromCharCode(97 + (index % 26));

/** What a job may say about each patch, by the patch's index in the arrangement. */
export interface PatchWords {
  /** What each patch is cut from; nothing is said of it where left out. */
  readonly fabrics?: readonly (PatchFabric | undefined)[];
  /** By what is said what to cut for each patch; not said where left out. */
  readonly cutting?: CutNotes;
}

/** How the pieces are cut that foundations tell of. */
export interface CutNotes {
  /** Without the allowance, which is that of the foundations. */
  readonly rules: Omit<CutRules, 'allowance'>;
  /** Null where the maker chose no fabric. */
  readonly cloths: readonly (Cloth | null)[];
}

/** What is cut for a patch, by its index, in the block as drawn or in its mirror image; null where nothing is said of it. */
export type NoteOf = (patch: number, isMirrored: boolean) => PieceNote | null;

/** What is written about one patch of a foundation. */
export interface PatchFacts {
  readonly fabric: { readonly letter: string; readonly name: string } | null;
  /** What is cut for it. */
  readonly note: PieceNote | null;
  readonly upright: boolean;
  /** Where the foundation is for several sections whose patches here are of different fabrics, all are told of it once. */
  readonly differs: boolean;
}

/**
 * What is written about the patch at place `k` of the piecing order. On a foundation for several sections only what holds for all
 * of them: their prints are the same paper. An arrow holds for one section alone, as the others are turned.
 */
export function patchFacts(
  { fabrics }: PatchWords,
  noteOf: NoteOf,
  template: Template,
  k: number,
): PatchFacts {
  const uses = [template, ...template.copies];
  const patches = uses.map(({ section }) => section.order[k]!);
  const first = fabrics?.[patches[0]!];
  const alike = patches.every(
    (patch) => fabrics?.[patch]?.letter === first?.letter && fabrics?.[patch]?.name === first?.name,
  );
  const notes = uses.map(({ mirroredBlock }, i) => noteOf(patches[i]!, mirroredBlock));
  const note = notes[0]!;
  const noted = notes.every((other) => other?.words === note?.words);
  const fabric = alike && first !== undefined ? { letter: first.letter, name: first.name } : null;
  return {
    fabric,
    note: noted ? note : null,
    upright: patches.length === 1 && first?.upright === true,
    differs: !alike || (patches.length > 1 && patches.some((patch) => fabrics?.[patch]?.upright === true)),
  };
}
