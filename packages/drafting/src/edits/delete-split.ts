import type { Drawing, LineId } from '@seamwright/arrangement';
import { fail, ok, type Result } from '@seamwright/geometry';
import { keepSoundFacts } from '../facts.ts';
import { withoutOrphans } from '../tidy.ts';

/**
 * Deletes a split and the ends that no other line needs. Points that were placed on it keep their place and lose
 * the fact.
 */
export function deleteSplit(drawing: Drawing, id: LineId): Result<Drawing> {
  const splits = drawing.splits.filter((split) => split.id !== id);
  if (splits.length === drawing.splits.length)
    return fail('That line is not in the drawing', `line ${id}`, 'Choose another line');
  return ok(keepSoundFacts(withoutOrphans({ ...drawing, splits })));
}
