import { add, type Point, rotation, type Segment, transformPoint } from '@seamwright/geometry';
import { longWay, type PatchToLabel, spotsAlong } from '../labels/patch-labels.ts';
import { liesIn, meets, type Plate, platesMeet } from '../labels/plate.ts';
import { STROKES } from '../marks/marks.ts';
import type { PathMark } from '../marks/model.ts';

/** Lengths that are tried, points, and from the shaft to a barb's end. */
const LENGTHS: readonly number[] = [18, 13, 9];
export const BARB = 2.6;

/** Points kept free round an arrow. */
const CLEAR = 2;

/**
 * An arrow in the patch towards the fabric's up, clear of labels and lines; null where none fits.
 *
 * @param up where the block's top is, degrees clockwise from the sheet's top
 * @param label the patch's own, beside which the arrow stands if it can
 * @param plates all labels
 */
export function grainArrow(
  section: string,
  patch: PatchToLabel,
  up: number,
  label: Plate,
  plates: readonly Plate[],
  lines: readonly Segment<'page'>[],
): PathMark | null {
  const along = spotsAlong(patch, longWay(patch.polygon));
  for (const length of LENGTHS) {
    const arrow: Plate = { centre: patch.heart, halfWidth: BARB, halfHeight: length / 2, angle: up };
    for (const centre of [...besideLabel(label, length), ...along]) {
      const plate = { ...arrow, centre };
      if (!liesIn(plate, patch.polygon, CLEAR) || meets(plate, lines, CLEAR)) continue;
      if (plates.some((other) => platesMeet(plate, other, CLEAR))) continue;
      return arrowMark(section, plate);
    }
  }
  return null;
}

/** Right of the label, left of it, below and above. */
function besideLabel({ centre, halfWidth, halfHeight }: Plate, length: number): readonly Point<'page'>[] {
  const [across, down] = [halfWidth + length / 2 + CLEAR, halfHeight + length / 2 + 2 * CLEAR];
  const near = halfWidth + BARB + 2 * CLEAR;
  return [
    { x: near, y: 0 },
    { x: -near, y: 0 },
    { x: across, y: 0 },
    { x: -across, y: 0 },
    { x: 0, y: down },
    { x: 0, y: -down },
  ].map((by) => add(centre, by));
}

/** One path: shaft, then the barbs. */
export function arrowMark(section: string, { centre, halfWidth, halfHeight, angle }: Plate): PathMark {
  const turn = rotation<'page'>(angle, centre);
  const tip = { x: 0, y: -halfHeight };
  const barb = -halfHeight + 1.3 * halfWidth;
  const points = [
    { x: 0, y: halfHeight },
    tip,
    { x: -halfWidth, y: barb },
    tip,
    { x: halfWidth, y: barb },
  ].map((p) => transformPoint(turn, add<'page'>(centre, p)));
  return { kind: 'path', role: 'label', section, points, closed: false, stroke: STROKES.grain };
}
