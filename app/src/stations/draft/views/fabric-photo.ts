import { sentence } from '@seamwright/geometry';
import { type Fabric, MOST_PICTURES_DATA, pictureData } from '@seamwright/pattern';
import { paletteOfPixels } from '../../../colour/palette-of-pixels.ts';
import { chooseAnyPicture } from '../../../keeping/choose-file.ts';
import { readPicture } from '../../../keeping/picture/read-picture.ts';
import { smallPixels } from '../../../keeping/picture/small-pixels.ts';
import { describeFabric } from '../../../store/fabric-details.ts';
import { fabricsOf } from '../../../store/fabrics.ts';
import { pattern, useWork } from '../../../store/work.ts';

/** Inches that a photo is taken to show until the maker says: about what a hand held over a table sees. */
const FIRST_WIDTH = 6;

/**
 * Lets the maker choose a photo of a fabric. The fabric's colour becomes the photo's mean, for where a colour stands for it.
 *
 * @param say gets a sentence where the photo cannot be used, and null where it can
 */
export const addPhoto = (fabric: Fabric, say: (problem: string | null) => void): void =>
  chooseAnyPicture(async (file) => {
    const read = await readPicture(file, file.name);
    if (!read.ok) return say(`“${file.name}”: ${sentence(read.problem)}`);
    const { picture } = read.value;
    const swatch = { picture, width: fabric.swatch?.width ?? FIRST_WIDTH };
    const work = useWork.getState();
    const fabrics = fabricsOf(work).map((one) => (one.id === fabric.id ? { ...one, swatch } : one));
    if (pictureData({ ...pattern(work), fabrics }) > MOST_PICTURES_DATA)
      return say(
        `“${file.name}”: The pattern has as many pictures as its file can hold. Take one away, and choose this again.`,
      );
    const [colour = fabric.colour] = paletteOfPixels(await smallPixels(picture), 1);
    describeFabric(`Photo of ${fabric.name}`, fabric.id, { swatch, colour });
    say(null);
  });
