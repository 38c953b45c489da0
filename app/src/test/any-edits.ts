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
import fc from 'fast-check';

/** Something that is done to a drawing. */
export interface Step {
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
export const EDITS = {
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
/** Edits one after the other, some of which are refused. */
export const script: fc.Arbitrary<readonly Step[]> = fc.array(
  fc.record({
    kind: fc.constantFrom(...(Object.keys(EDITS) as Step['kind'][])),
    at: place,
    to: place,
    index: fc.nat({ max: 1000 }),
  }),
  { minLength: 1, maxLength: 25, size: 'max' },
);
