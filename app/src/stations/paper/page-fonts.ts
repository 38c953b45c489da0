import type { FONT_FILES, PageFonts } from '@seamwright/pages';
import regular from 'source-sans/TTF/SourceSans3-Regular.ttf?url';
import semibold from 'source-sans/TTF/SourceSans3-Semibold.ttf?url';

/** Where the bundler put the files that {@link FONT_FILES} names. */
const ADDRESSES = { regular, semibold } as const satisfies Record<keyof typeof FONT_FILES, string>;

let fonts: Promise<PageFonts> | null = null;

async function bytes(address: string): Promise<Uint8Array> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`The page fonts could not be loaded: ${response.status}`);
  return new Uint8Array(await response.arrayBuffer());
}

/** The bytes of the fonts that pages are set in; fetched from our own files when first asked for. */
export function pageFonts(): Promise<PageFonts> {
  fonts ??= Promise.all([bytes(ADDRESSES.regular), bytes(ADDRESSES.semibold)]).then(
    ([regularBytes, semiboldBytes]) => ({ regular: regularBytes, semibold: semiboldBytes }),
  );
  // A failure is not remembered: the next one who asks tries again.
  fonts.catch(() => {
    fonts = null;
  });
  return fonts;
}
