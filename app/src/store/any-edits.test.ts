import { startHistory } from '@seamwright/pattern';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { EDITS, script } from '../test/any-edits.ts';
import { change, redo, undo } from './changes.ts';
import { freshPattern } from './fresh.ts';
import { currentBlock, pattern, useWork } from './work.ts';

test('whatever is done to a drawing, undoing everything gives back the first document, and redoing the last', () => {
  const done = new Map<string, number>();
  fc.assert(
    fc.property(script, (steps) => {
      const first = freshPattern();
      const asItWas = structuredClone(first);
      useWork.setState({ history: startHistory(first), blockId: first.blocks[0]!.id, inHand: null });
      for (const step of steps) {
        const result = change(step.kind, (before) => EDITS[step.kind](before, step));
        if (result.ok) done.set(step.kind, (done.get(step.kind) ?? 0) + 1);
      }
      const last = pattern(useWork.getState());
      const count = useWork.getState().history.past.length;
      for (let i = 0; i < count; i++) undo();
      // The very same, and nothing in it was changed in place.
      expect(pattern(useWork.getState())).toBe(first);
      expect(first).toEqual(asItWas);
      expect(currentBlock(useWork.getState()).drawing).toBe(first.blocks[0]!.drawing);
      for (let i = 0; i < count; i++) redo();
      expect(pattern(useWork.getState())).toBe(last);
    }),
    { seed: 105, numRuns: 80 },
  );
  // Every kind of edit was really made, not refused throughout.
  for (const kind of Object.keys(EDITS)) expect(done.get(kind), kind).toBeGreaterThan(10);
});
