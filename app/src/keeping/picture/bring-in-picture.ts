import { sentence } from '@seamwright/geometry';
import { fitPicture, MOST_PICTURES_DATA, newTracing, pictureData } from '@seamwright/pattern';
import { blockBounds } from '../../canvas/bounds.ts';
import { changeBlock } from '../../store/changes.ts';
import { announce, tell, warn } from '../../store/notices.ts';
import { goTo } from '../../store/places.ts';
import { currentBlock, pattern, useWork } from '../../store/work.ts';
import { type ReadPicture, readPicture } from './read-picture.ts';

/**
 * Lays a picture under a block's drawing, to be traced; it takes the place of the one that was there. What cannot be used
 * gives one sentence and changes nothing.
 */
export async function bringInPicture(file: Blob, name: string, blockId: string): Promise<void> {
  const read = await readPicture(file, name);
  if (!read.ok) {
    warn(`“${name}”: ${sentence(read.problem)}`);
    return;
  }
  const work = useWork.getState();
  const block = pattern(work).blocks.find(({ id }) => id === blockId);
  if (block === undefined) {
    warn(
      `“${name}”: The block that it was for is gone. Open the one that is to be traced, and bring it in again.`,
    );
    return;
  }
  const { picture, scaledFrom } = read.value;
  const tracing = newTracing(picture, fitPicture(picture, blockBounds(block.drawing)));
  const blocks = pattern(work).blocks.map((one) => (one === block ? { ...one, tracing } : one));
  if (pictureData({ ...pattern(work), blocks }) > MOST_PICTURES_DATA) {
    warn(
      `“${name}”: The pattern has as many pictures as its file can hold. Take one away that is traced already, and bring this in again.`,
    );
    return;
  }
  const isOpen = block === currentBlock(work);
  if (isOpen) goTo('draft');
  changeBlock(`Bring in “${name}” to trace`, block.id, (before) => ({ ...before, tracing }));
  const replaced =
    block.tracing === undefined ? '' : ` It took the place of “${block.tracing.picture.name}”.`;
  const whose = isOpen ? '' : ` of “${block.name}”`;
  const words = `“${name}” lies under the drawing${whose}.${replaced}${scaledWords(picture, scaledFrom)}`;
  if (!isOpen || replaced !== '' || scaledFrom !== null) tell(words);
  else announce(words);
}

function scaledWords({ width, height }: ReadPicture['picture'], from: ReadPicture['scaledFrom']): string {
  if (from === null) return '';
  return ` It had ${from.width} × ${from.height} pixels and is kept with ${width} × ${height}: enough to trace.`;
}
