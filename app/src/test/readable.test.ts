import { arrange, carryPatches, type Drawing } from '@seamwright/arrangement';
import { addSplit, resizeDrawing } from '@seamwright/drafting';
import { type Result, SNAP_DISTANCE } from '@seamwright/geometry';
import { type Block, namedPatches, parsePattern, writePattern } from '@seamwright/pattern';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { freshBlock, freshPattern } from '../store/fresh.ts';
import { EDITS, type Step, script } from './any-edits.ts';

/** Sizes from the smallest to the largest that a block may have, and lines that run far out of it. */
const FURTHER = {
  ...EDITS,
  'any size': (d: Drawing, { at, to }: Omit<Step, 'kind'>) =>
    resizeDrawing(d, { width: 2 ** (at.x * 2 - 5), ...(to.y > 3 && { height: 2 ** (to.x * 2 - 5) }) }),
  'far line': (d: Drawing, { at, to }: Omit<Step, 'kind'>) =>
    addSplit(d, { at }, { at: { x: to.x * 40, y: to.y * 40 } }),
} satisfies Record<string, (drawing: Drawing, step: Omit<Step, 'kind'>) => Result<Drawing>>;

type Kind = keyof typeof FURTHER;
const kinds = fc.array(fc.constantFrom<Kind>('any size', 'far line'), { maxLength: 4 });

/** The pattern as it is read again, or why it is not. */
function readAgain(block: Block): Block | string {
  const read = parsePattern(writePattern({ ...freshPattern(), blocks: [block] }));
  return read.ok ? read.value.pattern.blocks[0]! : `${read.problem.what}, ${read.problem.where}`;
}

/** Points beside the lines that they are said to be on, by as much as a file may have them. */
const besideLines = ({ points, ...rest }: Drawing, by: readonly number[]): Drawing => ({
  ...rest,
  points: Object.fromEntries(
    Object.values(points).map((point, i) => {
      const off = point.on === undefined ? 0 : (by[i % by.length]! * SNAP_DISTANCE) / 2;
      return [point.id, { ...point, x: point.x + off, y: point.y - off }];
    }),
  ),
});

test('whatever an edit makes, the writer writes and the reader reads', () => {
  const done = new Map<Kind, number>();
  const beside = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 1, maxLength: 5 });
  fc.assert(
    fc.property(script, kinds, beside, (steps, further, by) => {
      let block: Block = freshBlock('Harbour');
      const edit = (kind: Kind, step: Omit<Step, 'kind'>) => {
        const edited = FURTHER[kind](block.drawing, step);
        if (!edited.ok) return;
        done.set(kind, (done.get(kind) ?? 0) + 1);
        const drawing = edited.value;
        const arranged = arrange(drawing);
        const patches = arranged.ok
          ? carryPatches(block.patches, arranged.value, namedPatches(block))
          : block.patches;
        block = { ...block, drawing, patches };
        expect(readAgain(block)).toEqual(block);
      };
      const half = Math.ceil(steps.length / 2);
      for (const step of steps.slice(0, half)) edit(step.kind, step);
      const opened = readAgain({ ...block, drawing: besideLines(block.drawing, by) });
      if (typeof opened !== 'string') block = opened;
      for (const [i, step] of steps.slice(half).entries()) {
        edit(step.kind, step);
        const kind = further[i];
        if (kind !== undefined) edit(kind, step);
      }
    }),
    { seed: 107, numRuns: 80 },
  );
  for (const kind of Object.keys(FURTHER) as Kind[]) expect(done.get(kind), kind).toBeGreaterThan(10);
}, 60_000);
