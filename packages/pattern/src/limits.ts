import type { LengthRange, Problem } from '@seamwright/geometry';

/**
 * Characters of the largest file that is opened (20 MB where each is one byte).
 *
 * A pattern with a hundred blocks has well under one million. Larger would let a wrong file fill the memory before it is
 * known to be one.
 */
export const LARGEST_FILE = 20_000_000;

/**
 * Tags and attributes of an SVG drawing, counted before it is parsed. A drawing of a block has some thousand; each
 * takes up to 2 kB while it is read, and tags nested in one another take time that grows with their square.
 */
export const MOST_TAGS = 60_000;
export const MOST_ATTRIBUTES = 300_000;

/** Levels of groups in groups of an SVG drawing. Drawing programs nest a few; each costs work for every shape inside. */
export const DEEPEST_NESTING = 200;

/** Why a file of that many characters (or bytes) is not opened; null when it may be. */
export const tooLarge = (characters: number): Problem | null =>
  characters <= LARGEST_FILE
    ? null
    : {
        what: `The file is larger than ${LARGEST_FILE / 1e6} MB`,
        where: '',
        remedy: 'Check that this is the right file; take pictures out of it and save it again',
      };

/** Corners of the outline of an SVG drawing. A maker draws some dozen; thousands are a curve in disguise. */
export const MOST_CORNERS = 1000;

/**
 * Splits of an SVG drawing. The richest picture block has a few hundred; the work of finding patches grows with the square
 * of their number, and 2,000 lines that all cross make a million patches.
 */
export const MOST_SPLITS = 2000;

/**
 * Inches of a fabric from selvedge to selvedge. Ribbon and strips are no fabric to cut patches from; the widest backings
 * are 118 in (common practice).
 */
export const FABRIC_WIDTH_RANGE: LengthRange = { least: 4, most: 130 };

/** Inches of fabric that a photo of it shows across. */
export const SWATCH_WIDTH_RANGE: LengthRange = { least: 1 / 4, most: 130 };

/** Columns and rows of a grid that divides the block. More would stand closer than the lines of a ruler. */
export const GRID_PARTS = { least: 2, most: 64 } as const;
