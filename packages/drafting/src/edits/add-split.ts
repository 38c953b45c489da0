import type { Drawing } from '@seamwright/arrangement';
import {
  contains,
  distance,
  fail,
  normalize,
  ok,
  type Result,
  SNAP_DISTANCE,
  subtract,
} from '@seamwright/geometry';
import { outlineOf } from '../checks.ts';
import { freshIds } from '../ids.ts';
import { linesThrough } from '../lines.ts';
import { placedAt } from '../place-at.ts';
import type { Placement } from '../placement.ts';
import { runFrom } from '../reach.ts';
import { inside } from '../stretches.ts';
import { checkPlace } from './check-place.ts';
import { putDown } from './put-down.ts';

/**
 * What becomes of the ends of a new split that were put on nothing: `held` where they were put, or `run` on to the
 * nearest line or the edge; one outside the block runs back to its edge.
 */
export type Ends = 'held' | 'run';

/**
 * Draws a split from one placement to the other. Points that were caught are shared, new ones remember the
 * lines they were put on. The new split is the last of `splits`.
 *
 * Refused: ends in one place; a split both of whose ends are on one line, which would divide nothing.
 */
export function addSplit(
  drawing: Drawing,
  start: Placement,
  end: Placement,
  ends: Ends = 'held',
): Result<Drawing> {
  for (const { at } of [start, end]) {
    const place = checkPlace(at);
    if (!place.ok) return place;
  }
  if (distance(start.at, end.at) <= SNAP_DISTANCE) return noLength();
  if (ends === 'held') return join(drawing, start, end);
  const run = runOut(drawing, start, end);
  return run.ok ? join(drawing, ...run.value) : run;
}

const noLength = () => fail('Both ends of the line are in one place', '', 'Put the second end farther away');

function join(drawing: Drawing, start: Placement, end: Placement): Result<Drawing> {
  const ids = freshIds(drawing);
  const from = putDown(drawing, start, ids);
  const to = putDown(from.drawing, end, ids);
  const { points, splits } = to.drawing;
  if (from.id === to.id || distance(points[from.id]!, points[to.id]!) <= SNAP_DISTANCE) return noLength();

  const through = linesThrough(to.drawing, to.id);
  if ([...linesThrough(to.drawing, from.id)].some((line) => through.has(line)))
    return fail(
      'Both ends are on the same line, so nothing would be divided',
      '',
      'Put one end on another line',
    );

  return ok({ ...to.drawing, splits: [...splits, { id: ids.split(), from: from.id, to: to.id }] });
}

/** The ends of a line after those that are on nothing have run to where it should end. */
export function runOut(
  drawing: Drawing,
  start: Placement,
  end: Placement,
): Result<readonly [from: Placement, to: Placement]> {
  const outline = outlineOf(drawing);
  const within = inside(outline, { a: start.at, b: end.at });
  const [first, last] = [within[0], within.at(-1)];
  if (first === undefined || last === undefined)
    return fail('This line lies outside the block', '', 'Draw it across the block');
  const ahead = normalize(subtract(end.at, start.at));
  const back = normalize(subtract(start.at, end.at));
  const isHeld = ({ point, on }: Placement) => point !== undefined || on !== undefined;
  const run = (place: Placement, trimmed: Placement, direction: typeof ahead): Placement => {
    if (isHeld(place)) return place;
    if (contains(outline, place.at) !== 'inside') return trimmed;
    return runFrom(drawing, place.at, direction) ?? place;
  };
  return ok([run(start, placedAt(drawing, first.a), back), run(end, placedAt(drawing, last.b), ahead)]);
}
