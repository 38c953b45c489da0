import { sentence } from '@seamwright/geometry';
import type { Picture } from '@seamwright/pattern';
import { wordsForColours } from '../../colour/colour-words.ts';
import { paletteOfPixels } from '../../colour/palette-of-pixels.ts';
import type { Palette } from '../../colour/palettes.ts';
import { chooseAnyPicture } from '../../keeping/choose-file.ts';
import { readPicture } from '../../keeping/picture/read-picture.ts';
import { smallPixels } from '../../keeping/picture/small-pixels.ts';

/** As many as a block is easily made from. */
const COLOURS = 6;

/** Lets the maker choose a picture and draws a palette from it; a sentence where the file cannot be used. */
export const choosePalette = (use: (found: Palette | string) => void): void =>
  chooseAnyPicture(async (file) => {
    const read = await readPicture(file, file.name);
    use(read.ok ? await paletteFrom(read.value.picture) : `“${file.name}”: ${sentence(read.problem)}`);
  });

async function paletteFrom(picture: Picture): Promise<Palette | string> {
  const colours = paletteOfPixels(await smallPixels(picture), COLOURS);
  if (colours.length === 0)
    return `“${picture.name}” shows nothing: all of it is see-through. Choose another one.`;
  const words = wordsForColours(colours);
  return {
    name: picture.name.replace(/\.\w+$/, ''),
    colours: colours.map((colour, i) => ({ colour, name: words[i]! })),
  };
}
