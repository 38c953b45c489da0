import { plainWords } from '@seamwright/arrangement';
import { sentence } from '@seamwright/geometry';
import { readSvgDrawing } from '@seamwright/pattern';
import { addDrawing } from '../store/blocks.ts';
import { undo } from '../store/changes.ts';
import { dismiss, tell, warn } from '../store/notices.ts';
import { currentBlock, useWork } from '../store/work.ts';
import { bringInPicture } from './picture/bring-in-picture.ts';

/**
 * Reads an SVG drawing and makes it a block of the open pattern, and offers to lay it under the drawing as a picture
 * instead; a drawing that cannot be read changes nothing.
 */
export function bringIn(fileTitle: string, text: string): void {
  const asPicture = () => {
    const { id } = currentBlock(useWork.getState());
    return bringInPicture(new Blob([text], { type: 'image/svg+xml' }), fileTitle, id);
  };
  const read = readSvgDrawing(text);
  if (!read.ok) {
    const run = () => {
      dismiss();
      void asPicture();
    };
    const words = `“${fileTitle}”: ${sentence(read.problem)}`;
    if (isDrawing(text)) warn(words, { label: 'Trace it as a picture', run });
    else warn(words);
    return;
  }
  const { drawing, name, findings } = read.value;
  const title = name ?? fileTitle.replace(/\.svg$/i, '');
  addDrawing(`Bring in “${title}”`, title, drawing);
  const step = useWork.getState().history.past.at(-1);
  const notes = findings.map((finding) => plainWords(finding.message));
  tell([`Brought in “${fileTitle}”.`, ...notes].join(' '), {
    label: 'Trace it as a picture instead',
    run: () => {
      // Another pattern may have been opened meanwhile, whose last step is another.
      if (useWork.getState().history.past.at(-1) === step) undo();
      dismiss();
      void asPicture();
    },
  });
}

/** Whether a browser can show as a picture what was refused as lines; entities are never expanded. */
function isDrawing(text: string): boolean {
  const root = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
  return root.localName === 'svg' && !/<!ENTITY/i.test(text) && root.querySelector('parsererror') === null;
}
