/**
 * Whether a file is to be read as an SVG drawing rather than as a pattern file, by its first sign: the content
 * decides, names of files lie.
 */
export const looksLikeSvg = (text: string): boolean => /^\uFEFF?\s*</.test(text);
