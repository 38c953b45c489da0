import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { FONT_FILES, type PageFonts } from '../src/index.ts';

const { resolve } = createRequire(import.meta.url);

const bytesOf = (specifier: string): Uint8Array => new Uint8Array(readFileSync(resolve(specifier)));

/** The fonts as Node reads them. */
export const pageFonts: PageFonts = {
  regular: bytesOf(FONT_FILES.regular),
  semibold: bytesOf(FONT_FILES.semibold),
};
