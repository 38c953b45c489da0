import { startHistory } from '@seamwright/pattern';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { allEditScripts, bareDrawings, carryOut } from '../../../packages/drafting/test/drawings.ts';
import { frozen } from '../../../packages/drafting/test/sound.ts';
import { change, redo, undo } from './changes.ts';
import { freshPattern } from './fresh.ts';
import { currentBlock, pattern, useWork } from './work.ts';

const open = () => currentBlock(useWork.getState());
const steps = () => useWork.getState().history.past.length;

test('whatever is done to a drawing, undoing everything gives back the first document, and redoing the last', () => {
  let undone = 0;
  fc.assert(
    fc.property(bareDrawings, allEditScripts, (drawing, script) => {
      const fresh = freshPattern();
      const first = frozen({ ...fresh, blocks: [{ ...fresh.blocks[0]!, drawing }] });
      useWork.setState({ history: startHistory(first), blockId: first.blocks[0]!.id, inHand: null });
      for (const edit of script) change(edit.kind, (before) => carryOut(before, edit));
      const last = pattern(useWork.getState());
      const count = steps();
      undone += count;
      for (let i = 0; i < count; i++) undo();
      expect(steps()).toBe(0);
      // The very same, not only an equal one.
      expect(pattern(useWork.getState())).toBe(first);
      expect(open().drawing).toBe(drawing);
      for (let i = 0; i < count; i++) redo();
      expect(pattern(useWork.getState())).toBe(last);
    }),
    { seed: 105, numRuns: 60 },
  );
  // The edits were really made, not refused throughout.
  expect(undone).toBeGreaterThan(300);
});
