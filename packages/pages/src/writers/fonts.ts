import type { Weight } from '../marks/model.ts';

/** The bytes of the TrueType files that pages are set in. The caller brings them: Node reads, a browser fetches. */
export type PageFonts = Readonly<Record<Weight, Uint8Array>>;

/** The family's name, as SVG pages ask for it. */
export const FONT_FAMILY = 'Source Sans 3';

/**
 * Where the bytes lie, as module specifiers of the package `source-sans` (SIL Open Font License 1.1): Node
 * resolves them with `import.meta.resolve`, a bundler with `?url`.
 */
export const FONT_FILES: Readonly<Record<Weight, string>> = {
  regular: 'source-sans/TTF/SourceSans3-Regular.ttf',
  semibold: 'source-sans/TTF/SourceSans3-Semibold.ttf',
};
