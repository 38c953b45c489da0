import type { Problem } from '@seamwright/geometry';
import type { StudyAnswer } from './study.ts';

/**
 * Patches that are worked on at once. The richest picture block has a few hundred; above this the screens could not
 * follow, though the drawing itself is kept like any other.
 */
const MOST_PATCHES = 5_000;

/** Why a drawing with that many patches is not worked on; null when it is. */
export const tooManyPatches = (count: number): Problem | null =>
  count <= MOST_PATCHES
    ? null
    : {
        what: `The lines make ${count.toLocaleString('en')} patches, and no more than ${MOST_PATCHES.toLocaleString('en')} are worked on at once`,
        where: '',
        remedy: 'Take lines away, or divide the drawing into several blocks',
      };

/** Milliseconds after which a drawing is given up that cannot be taken apart in any reasonable time. */
export const LONGEST_STUDY = 30_000;

/** Why nothing is said of a drawing that took too long. */
export const tooLong = (splits: number): Problem => ({
  what: `The drawing has ${splits.toLocaleString('en')} lines that cross too often: it was not taken apart in ${LONGEST_STUDY / 1000} seconds`,
  where: '',
  remedy: 'Take lines away, or divide the drawing into several blocks',
});

/** The answer where a drawing cannot be taken apart. */
export const nothing = (problem: Problem, records: StudyAnswer['records']): StudyAnswer => ({
  arrangement: null,
  problem,
  plan: null,
  shapes: [],
  records,
});
