import type { LengthRange } from '@seamwright/geometry';

/**
 * Pixels of the longer side of a picture that is kept. At 12 in high that is 200 to the inch, more than a screen shows of a
 * block; larger ones are scaled down when they come in.
 */
export const LONGEST_SIDE = 2400;

/**
 * Characters of one picture's data (1.5 MB of it), and of all pictures of a pattern. A photograph of 2400 pixels has half of
 * that. Together they leave a fourth of the largest pattern file to the drawings, so that what is saved opens again.
 */
export const MOST_PICTURE_DATA = 2_000_000;
export const MOST_PICTURES_DATA = 15_000_000;

/** Inches. The block may be a small part of the picture: a door of a street. */
export const PICTURE_WIDTH_RANGE: LengthRange = { least: 1 / 16, most: 1200 };

/** The weakest that a picture shows: less is not seen. */
export const LEAST_STRENGTH = 0.05;
