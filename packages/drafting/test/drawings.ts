import type { Drawing } from '@seamwright/arrangement';
import type { Point, Result } from '@seamwright/geometry';
import fc from 'fast-check';
import {
  addCorner,
  addSplit,
  deletePoint,
  deleteSplit,
  diamond,
  drawingFromOutline,
  equilateralTriangle,
  followersOf,
  movePoint,
  rectangle,
  regularHexagon,
  replaceOutline,
  resizeDrawing,
  rightTriangle,
  snap,
  snapScene,
  square,
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
  | { readonly kind: 'outline'; readonly sides: number };

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
  }
}

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
