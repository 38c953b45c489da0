import { arrange, type Drawing } from '@seamwright/arrangement';
import {
  addRepeated,
  addSplit,
  cutSplit,
  deleteParts,
  divideInBands,
  drawnLines,
  eraseSymmetric,
  extendSplit,
  mirrorAcross,
  movePoint,
  NO_SYMMETRY,
  parallelCopy,
  putLineEnd,
  resizeDrawing,
  transformParts,
  trimSplit,
} from '@seamwright/drafting';
import { midpoint, type Point, type Result } from '@seamwright/geometry';
import { startHistory } from '@seamwright/pattern';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { change, redo, undo } from './changes.ts';
import { freshPattern } from './fresh.ts';
import { currentBlock, pattern, useWork } from './work.ts';

interface Step {
  readonly kind: keyof typeof EDITS;
  readonly at: Point;
  readonly to: Point;
  readonly index: number;
}

const pick = (ids: readonly string[], index: number): string => ids[index % ids.length] ?? 'none';
const lineBy = (drawing: Drawing, index: number) => pick([...drawnLines(drawing).keys()], index);
const splitBy = ({ splits }: Drawing, index: number) =>
  pick(
    splits.map(({ id }) => id),
    index,
  );

/** What the screens of the Draft station do to a drawing, each with whatever comes. */
const EDITS = {
  line: (d, { at, to }) => addSplit(d, { at }, { at: to }, 'run'),
  repeated: (d, { at, to }) =>
    addRepeated(d, (before) => addSplit(before, { at }, { at: to }), { turns: 4, mirrors: [] }),
  point: (d, { to, index }) => movePoint(d, pick(Object.keys(d.points), index), { at: to }),
  end: (d, { to, index }) => putLineEnd(d, lineBy(d, index), 'to', to),
  parallel: (d, { at, index }) => parallelCopy(d, lineBy(d, index), at.x - 3),
  trim: (d, { at, index }) => trimSplit(d, splitBy(d, index), at),
  cut: (d, { at, index }) => cutSplit(d, splitBy(d, index), at),
  extend: (d, { index }) => extendSplit(d, splitBy(d, index), 'from'),
  mirror: (d, { at, index }) =>
    transformParts(d, { points: [], lines: [splitBy(d, index)] }, mirrorAcross(90, at)),
  remove: (d, { index }) => deleteParts(d, { points: [], lines: [splitBy(d, index)] }),
  size: (d, { at }) => resizeDrawing(d, { width: 4 + at.x }),
  bands: (d, { index }) => {
    const found = arrange(d);
    return found.ok
      ? divideInBands(d, found.value.patches[index % found.value.patches.length]!.polygon, 3, 0)
      : found;
  },
  erase: (d, { index }) => {
    const line = drawnLines(d).get(lineBy(d, index))!;
    return eraseSymmetric(d, [{ a: line.from, b: midpoint(line.from, line.to) }], NO_SYMMETRY);
  },
} satisfies Record<string, (drawing: Drawing, step: Omit<Step, 'kind'>) => Result<Drawing>>;

const place = fc.record({
  x: fc.integer({ min: 0, max: 48 }).map((n) => n / 8),
  y: fc.integer({ min: 0, max: 48 }).map((n) => n / 8),
});
const script: fc.Arbitrary<readonly Step[]> = fc.array(
  fc.record({
    kind: fc.constantFrom(...(Object.keys(EDITS) as Step['kind'][])),
    at: place,
    to: place,
    index: fc.nat({ max: 1000 }),
  }),
  { minLength: 1, maxLength: 25, size: 'max' },
);

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
