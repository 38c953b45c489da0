import type { Drawing } from '@seamwright/arrangement';
import { type Result, sentence } from '@seamwright/geometry';
import { stretchPicture } from '@seamwright/pattern';
import { blockBounds } from '../../../canvas/bounds.ts';
import { changeBlock } from '../../../store/changes.ts';
import { announce } from '../../../store/notices.ts';
import { currentBlock, useWork } from '../../../store/work.ts';

const LABEL = 'Change the size';

/**
 * Gives the open block another size, as one step: the picture under the drawing goes with it, so that lines stay on what they
 * were traced from. A refusal comes back as a sentence, for beside the field.
 */
export function resizeBlock(edit: (drawing: Drawing) => Result<Drawing>): string | undefined {
  const { id, drawing } = currentBlock(useWork.getState());
  const result = edit(drawing);
  if (!result.ok) return sentence(result.problem);
  const [from, to] = [blockBounds(drawing), blockBounds(result.value)];
  changeBlock(LABEL, id, ({ tracing, ...block }) => ({
    ...block,
    drawing: result.value,
    ...(tracing === undefined ? {} : { tracing: stretchPicture(tracing, from, to) }),
  }));
  announce(LABEL);
  return undefined;
}
