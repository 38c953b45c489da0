import { arrange, type Drawing } from '@seamwright/arrangement';
import {
  lerp,
  midpoint,
  ok,
  type Point,
  type Polygon,
  type Result,
  rotation,
  type Transform,
  translation,
} from '@seamwright/geometry';
import fc from 'fast-check';
import {
  addCorner,
  addSplit,
  copyLines,
  cutSplit,
  deleteParts,
  deletePoint,
  deleteSplit,
  diamond,
  divideInBands,
  divideInFan,
  drawingFromOutline,
  drawnLines,
  equilateralTriangle,
  eraseAlong,
  extendSplit,
  followersOf,
  joinSplits,
  mirrorAcross,
  moveLine,
  movePoint,
  type Parts,
  parallelCopy,
  putLineEnd,
  rectangle,
  regularHexagon,
  replaceOutline,
  resizeDrawing,
  rightTriangle,
  snap,
  snapScene,
  splitByMeasure,
  splitSquareTo,
  splitThrough,
  square,
  transformParts,
  trimSplit,
} from '../src/index.ts';
import { frozen } from './sound.ts';

export function must<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`${result.problem.what} (${result.problem.where})`);
  return result.value;
}

/** A stub of an edit: indices are taken modulo what the drawing has. */
export type EditScript =
  | {
      readonly kind: 'split';
      readonly from: Point;
      readonly to: Point;
      readonly radius: number;
      readonly grid: number;
    }
  | {
      readonly kind: 'move';
      readonly index: number;
      readonly to: Point;
      readonly radius: number;
      readonly grid: number;
    }
  | { readonly kind: 'delete split' | 'delete point'; readonly index: number }
  | { readonly kind: 'add corner'; readonly index: number; readonly at: Point }
  | { readonly kind: 'resize'; readonly width: number; readonly height: number }
  | { readonly kind: 'outline'; readonly sides: number }
  | { readonly kind: 'run'; readonly from: Point; readonly to: Point; readonly radius: number }
  | {
      readonly kind: 'through' | 'measure';
      readonly at: Point;
      readonly angle: number;
      readonly length: number;
    }
  | { readonly kind: 'square to'; readonly at: Point; readonly index: number }
  | { readonly kind: 'parallel' | 'move line'; readonly index: number; readonly by: number }
  | {
      readonly kind: 'bands' | 'fan';
      readonly index: number;
      readonly side: number;
      readonly count: number;
      readonly inside: boolean;
    }
  | { readonly kind: 'trim' | 'cut' | 'extend' | 'join'; readonly index: number; readonly at: Point }
  | { readonly kind: 'put end'; readonly index: number; readonly at: Point }
  | { readonly kind: 'erase'; readonly index: number; readonly shares: readonly [number, number] }
  | {
      readonly kind: 'transform' | 'copy' | 'delete parts';
      readonly indices: readonly number[];
      readonly how: Transform;
    };

// Thousandths, spread evenly: fc.double spreads over the representable numbers, most of which are next to 0.
const coordinate = fc.integer({ min: -1000, max: 9000 }).map((n) => n / 1000);
export const anywhere: fc.Arbitrary<Point> = fc.record({ x: coordinate, y: coordinate });
const radius = fc.constantFrom(1 / 64, 0.2, 0.6);
const grid = fc.constantFrom(0, 0.25, 1);
const index = fc.nat({ max: 1000 });

const edits: fc.Arbitrary<EditScript> = fc.oneof(
  {
    weight: 8,
    arbitrary: fc.record({ kind: fc.constant('split' as const), from: anywhere, to: anywhere, radius, grid }),
  },
  {
    weight: 6,
    arbitrary: fc.record({ kind: fc.constant('move' as const), index, to: anywhere, radius, grid }),
  },
  {
    weight: 2,
    arbitrary: fc.record({ kind: fc.constantFrom('delete split' as const, 'delete point' as const), index }),
  },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('add corner' as const), index, at: anywhere }) },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constant('resize' as const),
      width: fc.integer({ min: 1000, max: 12000 }).map((n) => n / 1000),
      height: fc.integer({ min: 1000, max: 12000 }).map((n) => n / 1000),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ kind: fc.constant('outline' as const), sides: fc.integer({ min: 3, max: 8 }) }),
  },
);

const angle = fc.oneof(fc.constantFrom(0, 30, 45, 90, 135, 180, 270), fc.integer({ min: -720, max: 720 }));
const by = fc.integer({ min: -3000, max: 3000 }).map((n) => n / 1000);
const how: fc.Arbitrary<Transform> = fc.oneof(
  fc.tuple(by, by).map(([dx, dy]) => translation(dx, dy)),
  angle.map((degrees) => rotation(degrees, { x: 4, y: 4 })),
  fc.constantFrom(0, 45, 90, 135).map((axis) => mirrorAcross(axis, { x: 4, y: 4 })),
);

/** Edits of lines, patches and several parts at once. */
const furtherEdits: fc.Arbitrary<EditScript> = fc.oneof(
  fc.record({ kind: fc.constant('run' as const), from: anywhere, to: anywhere, radius }),
  fc.record({
    kind: fc.constantFrom('through' as const, 'measure' as const),
    at: anywhere,
    angle,
    length: fc.integer({ min: 0, max: 8000 }).map((n) => n / 1000),
  }),
  fc.record({ kind: fc.constant('square to' as const), at: anywhere, index }),
  fc.record({ kind: fc.constantFrom('parallel' as const, 'move line' as const), index, by }),
  fc.record({
    kind: fc.constantFrom('bands' as const, 'fan' as const),
    index,
    side: index,
    count: fc.integer({ min: 1, max: 4 }),
    inside: fc.boolean(),
  }),
  {
    weight: 2,
    arbitrary: fc.record({
      kind: fc.constantFrom('trim' as const, 'cut' as const, 'extend' as const, 'join' as const),
      index,
      at: anywhere,
    }),
  },
  fc.record({ kind: fc.constant('put end' as const), index, at: anywhere }),
  fc.record({
    kind: fc.constant('erase' as const),
    index,
    shares: fc.constantFrom([0, 1] as const, [0, 0.5] as const, [0.25, 0.5] as const, [0.6, 1] as const),
  }),
  fc.record({
    kind: fc.constantFrom('transform' as const, 'copy' as const, 'delete parts' as const),
    indices: fc.array(index, { minLength: 1, maxLength: 4 }),
    how,
  }),
);

/** Scripts of all edits. */
export const allEditScripts = fc.array(
  fc.oneof({ weight: 2, arbitrary: edits }, { weight: 3, arbitrary: furtherEdits }),
  { minLength: 1, maxLength: 25, size: 'max' },
);

export const editScripts = fc.array(edits, { minLength: 1, maxLength: 40, size: 'max' });

const outlines: readonly (() => Result<Drawing>)[] = [
  () => square(8),
  () => rectangle(8, 5),
  () => regularHexagon(4),
  () => equilateralTriangle(8),
  () => rightTriangle(8, 6),
  () => diamond(6, 60),
  () => diamond(6, 45),
  // A house, and an outline that is not convex.
  () =>
    drawingFromOutline([
      { x: 0, y: 4 },
      { x: 4, y: 0 },
      { x: 8, y: 4 },
      { x: 8, y: 8 },
      { x: 0, y: 8 },
    ]),
  () =>
    drawingFromOutline([
      { x: 0, y: 0 },
      { x: 8, y: 0 },
      { x: 8, y: 3 },
      { x: 3, y: 3 },
      { x: 3, y: 8 },
      { x: 0, y: 8 },
    ]),
];

/** Outlines without splits, one of each kind that is offered, and free ones. */
export const bareDrawings: fc.Arbitrary<Drawing> = fc
  .constantFrom(...outlines)
  .map((make) => frozen(must(make())));

/** Carries out one edit of a script; a target that is snapped leaves out what follows the moved point. */
export function carryOut(drawing: Drawing, edit: EditScript): Result<Drawing> {
  switch (edit.kind) {
    case 'split': {
      const [from, to] = [edit.from, edit.to].map((at) => snap(at, snapScene(drawing), edit));
      return addSplit(drawing, from!, to!);
    }
    case 'move': {
      const id = pick(Object.keys(drawing.points), edit.index)!;
      return movePoint(drawing, id, snap(edit.to, snapScene(drawing, followersOf(drawing, id)), edit));
    }
    case 'delete split':
      return deleteSplit(drawing, pick(drawing.splits, edit.index)?.id ?? 'none');
    case 'delete point':
      return deletePoint(drawing, pick(Object.keys(drawing.points), edit.index)!);
    case 'add corner':
      return addCorner(drawing, `edge:${pick(drawing.outline, edit.index)}`, edit.at);
    case 'resize':
      return resizeDrawing(drawing, edit);
    case 'outline':
      return replaceOutline(drawing, regular(edit.sides));
    case 'run': {
      const options = { radius: edit.radius, grid: 0 };
      const [from, to] = [edit.from, edit.to].map((at) => snap(at, snapScene(drawing), options));
      return addSplit(drawing, from!, to!, 'run');
    }
    case 'through':
      return splitThrough(
        drawing,
        placedBy(drawing, edit.at),
        edit.angle,
        edit.length > 4 ? 'edge' : 'line',
        edit.length % 2 > 1 ? 'ahead' : 'both',
      );
    case 'measure':
      return splitByMeasure(drawing, placedBy(drawing, edit.at), edit.length, edit.angle, 'run');
    case 'square to':
      return splitSquareTo(drawing, placedBy(drawing, edit.at), lineBy(drawing, edit.index));
    case 'parallel':
      return parallelCopy(
        drawing,
        lineBy(drawing, edit.index),
        edit.by,
        edit.index % 3 === 0 ? 'held' : 'run',
      );
    case 'move line':
      return moveLine(drawing, lineBy(drawing, edit.index), edit.by);
    case 'bands': {
      const patch = patchBy(drawing, edit.index);
      return patch.ok
        ? divideInBands(drawing, patch.value, edit.count, edit.side % patch.value.length)
        : patch;
    }
    case 'fan': {
      const patch = patchBy(drawing, edit.index);
      if (!patch.ok) return patch;
      const hub = patch.value[edit.side % patch.value.length]!;
      const next = patch.value[(edit.side + 1) % patch.value.length]!;
      return divideInFan(drawing, patch.value, edit.inside ? midpoint(hub, next) : hub, edit.count);
    }
    case 'trim':
      return trimSplit(drawing, splitBy(drawing, edit.index), edit.at);
    case 'cut':
      return cutSplit(drawing, splitBy(drawing, edit.index), edit.at);
    case 'extend':
      return extendSplit(
        drawing,
        splitBy(drawing, edit.index),
        edit.at.x > 4 ? 'from' : 'to',
        edit.at.y > 4 ? 'line' : 'edge',
      );
    case 'join': {
      // Splits that touch are seldom straight: half of the time two are made first.
      const one = splitBy(drawing, edit.index);
      const cut = cutSplit(drawing, one, edit.at);
      if (cut.ok)
        return joinSplits(cut.value, one, cut.value.splits.find(({ id }) => isNew(drawing, id))!.id);
      return joinSplits(drawing, one, splitBy(drawing, edit.index + 1));
    }
    case 'put end':
      return putLineEnd(drawing, lineBy(drawing, edit.index), edit.at.x > 4 ? 'from' : 'to', edit.at);
    case 'erase': {
      const line = drawnLines(drawing).get(lineBy(drawing, edit.index))!;
      const [a, b] = edit.shares.map((share) => lerp(line.from, line.to, share));
      return eraseAlong(drawing, [{ a: a!, b: b! }]);
    }
    case 'transform':
      return transformParts(drawing, partsBy(drawing, edit.indices), edit.how);
    case 'copy':
      return copyLines(drawing, partsBy(drawing, edit.indices).lines, edit.how);
    case 'delete parts':
      return deleteParts(drawing, partsBy(drawing, edit.indices));
  }
}

const placedBy = (drawing: Drawing, at: Point) => snap(at, snapScene(drawing), { radius: 0.4, grid: 0.5 });

const isNew = (drawing: Drawing, split: string) => !drawing.splits.some(({ id }) => id === split);

const splitBy = (drawing: Drawing, index: number) => pick(drawing.splits, index)?.id ?? 'none';

const lineBy = (drawing: Drawing, index: number) => pick([...drawnLines(drawing).keys()], index)!;

function patchBy(drawing: Drawing, index: number): Result<Polygon> {
  const arrangement = arrange(drawing);
  if (!arrangement.ok) return arrangement;
  return ok(pick(arrangement.value.patches, index)!.polygon);
}

/** Points for even indices, lines for odd ones. */
const partsBy = (drawing: Drawing, indices: readonly number[]): Parts => ({
  points: indices.filter((i) => i % 2 === 0).map((i) => pick(Object.keys(drawing.points), i)!),
  lines: indices.filter((i) => i % 2 === 1).map((i) => lineBy(drawing, i)),
});

const pick = <T>(items: readonly T[], index: number): T | undefined => items[index % items.length];

const regular = (sides: number): Point[] =>
  Array.from({ length: sides }, (_, i) => ({
    x: 4 + 4 * Math.cos((2 * Math.PI * i) / sides),
    y: 4 + 4 * Math.sin((2 * Math.PI * i) / sides),
  }));

/** Drawings as makers make them: an outline and some edits, those that were refused left out. */
export const drawings: fc.Arbitrary<Drawing> = fc.tuple(bareDrawings, editScripts).map(([bare, script]) => {
  let drawing = bare;
  for (const edit of script) {
    const result = carryOut(drawing, edit);
    if (result.ok) drawing = frozen(result.value);
  }
  return drawing;
});
