import type { Drawing, LineId, PointId } from '@seamwright/arrangement';
import {
  add,
  distance,
  fail,
  midpoint,
  ok,
  type Point,
  type Problem,
  type Result,
  SAME_COORDINATE,
  subtract,
  translation,
} from '@seamwright/geometry';
import { moveLine, movePoint, type Parts, transformParts } from '../edits/index.ts';
import { followersOf } from '../facts.ts';
import { drawnLines } from '../lines.ts';
import { nearest } from '../nearest.ts';
import { type Snap, snap } from '../snapping/snap.ts';
import { type SnapScene, snapScene } from '../snapping/snap-scene.ts';
import { rightOf } from '../stretches.ts';
import {
  moveLineSymmetric,
  movePointsSymmetric,
  NO_SYMMETRY,
  transformPartsSymmetric,
} from '../symmetry/index.ts';
import { catching, type Pointing, type ToolContext } from './tool.ts';

/** What is held: a point, a line that stays parallel to itself, or several parts that stay as they are to each other. */
export type Grip =
  | { readonly kind: 'point'; readonly id: PointId }
  | { readonly kind: 'line'; readonly id: LineId }
  | { readonly kind: 'parts'; readonly parts: Parts };

/** Something in hand: where it would be put down, and what the drawing would then be. */
export interface InHand {
  readonly grip: Grip;
  /** Where it was taken. */
  readonly from: Point;
  /** The drawing that it was taken from. */
  readonly base: Drawing;
  /** What it can be caught by: all that does not follow it. */
  readonly scene: SnapScene;
  /** The last place where it could be put; none before the first move. */
  readonly to?: { readonly snap: Snap; readonly drawing: Drawing };
}

/** Takes something in hand; `from` is where, its own middle when left out. */
export function taken(grip: Grip, base: Drawing, from?: Point): InHand {
  const points = pointsOf(grip, base);
  return {
    grip,
    base,
    from: from ?? middleOf(points.map((id) => base.points[id]!)),
    scene: snapScene(base, followersOf(base, ...points)),
  };
}

function pointsOf(grip: Grip, drawing: Drawing): readonly PointId[] {
  if (grip.kind === 'point') return [grip.id];
  const lines = grip.kind === 'line' ? [grip.id] : grip.parts.lines;
  const points = grip.kind === 'line' ? [] : grip.parts.points;
  const drawn = drawnLines(drawing);
  const ends = lines.flatMap((id) => {
    const line = drawn.get(id);
    return line === undefined ? [] : [line.from.id, line.to.id];
  });
  return [...new Set([...points.filter((id) => drawing.points[id] !== undefined), ...ends])];
}

const middleOf = (points: readonly Point[]): Point => {
  const [first, last] = [points[0], points.at(-1)];
  return first === undefined || last === undefined ? { x: 0, y: 0 } : midpoint(first, last);
};

/** The thing moved to where the pointer is; refused, it stays where it could last be. */
export function movedTo(
  hand: InHand,
  event: Pointing,
  context: ToolContext,
): { readonly hand: InHand; readonly problem: Problem | undefined } {
  const { snap: target, result } = attempt(hand, event, context);
  return result.ok
    ? { hand: { ...hand, to: { snap: target, drawing: result.value } }, problem: undefined }
    : { hand, problem: result.problem };
}

function attempt(
  hand: InHand,
  event: Pointing,
  context: ToolContext,
): { readonly snap: Snap; readonly result: Result<Drawing> } {
  const { grip, base, scene } = hand;
  const { symmetry = NO_SYMMETRY } = context;
  const catchIt = (at: Point) => snap(at, scene, catching({ ...event, at }, context));
  switch (grip.kind) {
    case 'point': {
      const target = catchIt(event.at);
      const result = isPlain(context)
        ? movePoint(base, grip.id, target)
        : movePointsSymmetric(base, new Map([[grip.id, target]]), symmetry);
      return { snap: target, result };
    }
    case 'line': {
      const target = catchIt(event.at);
      const { from, to } = drawnLines(base).get(grip.id)!;
      const off = (at: Point) => rightOf({ a: from, b: to }, at);
      // Caught, the line runs through what caught it; else it moves as far as the hand does.
      const by = target.kind === 'free' ? off(event.at) - off(hand.from) : off(target.at);
      return { snap: target, result: by === 0 ? ok(base) : moved(base, grip.id, by, context) };
    }
    case 'parts': {
      // Of the points that move, the one nearest to the hand is the one that is caught.
      const points = pointsOf(grip, base).map((id) => base.points[id]!);
      const anchor = nearest(points, Infinity, (point) => distance(point, hand.from)) ?? hand.from;
      const way = subtract(event.at, hand.from);
      const target = catchIt({ x: anchor.x + way.x, y: anchor.y + way.y });
      const by = subtract(target.at, anchor);
      if (by.x === 0 && by.y === 0) return { snap: target, result: ok(base) };
      return { snap: target, result: transformed(base, grip.parts, translation(by.x, by.y), context) };
    }
  }
}

const isPlain = ({ symmetry = NO_SYMMETRY }: ToolContext): boolean =>
  symmetry.turns === 1 && symmetry.mirrors.length === 0;

/** A line moved parallel to itself by so much to its right, with its images where things are repeated. */
const moved = (drawing: Drawing, line: LineId, by: number, context: ToolContext): Result<Drawing> =>
  isPlain(context) ? moveLine(drawing, line, by) : moveLineSymmetric(drawing, line, by, context.symmetry!);

const ALONG = fail('The line would only slide along itself', '', 'Move it the other way, or move its ends');

/** What is chosen, moved by so much, inches; a line by itself stays parallel to itself, as it does when it is dragged. */
export function nudged(drawing: Drawing, chosen: Parts, by: Point, context: ToolContext): Result<Drawing> {
  const { points, lines } = chosen;
  const line = points.length === 0 && lines.length === 1 ? drawnLines(drawing).get(lines[0]!) : undefined;
  if (line === undefined) return transformed(drawing, chosen, translation(by.x, by.y), context);
  const { from: a, to: b } = line;
  const aside = rightOf({ a, b }, add(a, by));
  return Math.abs(aside) <= SAME_COORDINATE ? ALONG : moved(drawing, line.id, aside, context);
}

/** Several parts moved together, with their images where things are repeated. */
const transformed = (
  drawing: Drawing,
  parts: Parts,
  by: Parameters<typeof transformParts>[2],
  context: ToolContext,
): Result<Drawing> =>
  isPlain(context)
    ? transformParts(drawing, parts, by)
    : transformPartsSymmetric(drawing, parts, by, context.symmetry!);
