import type { Drawing } from '@seamwright/arrangement';
import {
  distance,
  fail,
  lineCrossing,
  ok,
  type Point,
  type Result,
  SNAP_DISTANCE,
  type Transform,
  transformPoint,
} from '@seamwright/geometry';
import { centreOf } from '../centre.ts';
import { addLines } from '../edits/add-lines.ts';
import { addSplit, type Ends, runOut } from '../edits/add-split.ts';
import { areParallel } from '../facts-by-place.ts';
import { drawnLines } from '../lines.ts';
import type { Placement } from '../placement.ts';
import { fixedBy, fixing } from './fixed.ts';
import { imagesUnder } from './images.ts';
import { type Symmetry, transformsOf } from './symmetry.ts';

/**
 * Draws a split and all its images. What of them lies outside the block is cut off; images that coincide or overlap are
 * one line. An end within {@link SNAP_DISTANCE} of an axis or of the centre is put there, so that images meet. In
 * a drawing that has the symmetry it then still has it.
 *
 * Refused: what {@link addLines} and `transformsOf` refuse.
 */
export function addSymmetric(
  drawing: Drawing,
  start: Placement,
  end: Placement,
  symmetry: Symmetry,
  ends: Ends = 'held',
): Result<Drawing> {
  const transforms = transformsOf(symmetry, centreOf(drawing));
  if (!transforms.ok) return transforms;
  if (transforms.value.length === 1) return addSplit(drawing, start, end, ends);
  const run = ends === 'run' ? runOut(drawing, start, end) : ok([start, end] as const);
  if (!run.ok) return run;
  const [a, b] = run.value.map((placement) => onAxes(drawing, placement, transforms.value));
  if (distance(a!, b!) <= SNAP_DISTANCE)
    return fail('Both ends of the line are in one place', '', 'Put the second end farther away');
  return addLines(drawing, imagesUnder(drawing, transforms.value, { a: a!, b: b! }, ends));
}

/** The place of an end, on the axis or in the centre when it is next to it; on a line, it stays on that line. */
function onAxes(drawing: Drawing, placement: Placement, transforms: readonly Transform[]): Point {
  const { at, point, on } = placement;
  if (point !== undefined) return at;
  const group = fixing(transforms, at);
  const line = on?.length === 1 ? drawnLines(drawing).get(on[0]!) : undefined;
  for (const transform of line === undefined ? [] : group) {
    const [from, to] = [line!.from, line!.to].map((p) => transformPoint(transform, p));
    if (areParallel(line!, { from: from!, to: to! })) continue;
    // A line and its mirror image meet on the axis.
    const meeting = lineCrossing(line!.from, line!.to, from!, to!);
    if (meeting !== null && distance(meeting, at) <= SNAP_DISTANCE) return fixedBy(group, meeting);
  }
  return fixedBy(group, at);
}
