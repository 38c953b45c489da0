import {
  distance,
  edgesOf,
  lerp,
  midpoint,
  nearestOnSegment,
  type Point,
  type Polygon,
} from '@seamwright/geometry';
import { arrowMark, BARB, grainArrow } from '../foundation/grain-arrows.ts';
import { linesOn, plateOf } from '../labels/label-lines.ts';
import { labelInPatch, type PatchToLabel } from '../labels/patch-labels.ts';
import { liesIn, meets, type Plate, platesMeet } from '../labels/plate.ts';
import type { Mark } from '../marks/model.ts';

/** A template on the sheet, points. */
interface TemplateShape {
  readonly name: string;
  readonly outline: Polygon<'page'>;
  readonly cuttingLine: Polygon<'page'>;
  readonly heart: Point<'page'>;
  readonly depth: number;
  /** Where the block's top is, degrees clockwise from the sheet's top. */
  readonly up: number;
}

/** The name and the arrow, in the patch as far as they fit. */
export function insideMarks({ name, outline, heart, depth, up }: TemplateShape): readonly Mark[] {
  const patch: PatchToLabel = { name, polygon: outline, heart, depth, fabric: null, note: null };
  const lines = edgesOf(outline);
  const label = labelInPatch(patch, lines);
  const nowhere: Plate = { centre: heart, halfWidth: 0, halfHeight: 0, angle: 0 };
  const plates = label === null ? [] : [label.plate];
  const arrow = grainArrow(name, patch, up, label?.plate ?? nowhere, plates, lines);
  return [
    ...(label === null ? [] : linesOn(name, label.lines, label.plate)),
    ...(arrow === null ? [] : [arrow]),
  ];
}

/** Lengths of arrows on a frame, points; the sizes of its name. */
const ARROWS: readonly number[] = [13, 9, 7];
const NAMES: readonly number[] = [8, 6, 5.5];
const CLEAR = 1.5;

/** Where along an edge places on the frame are tried. */
const SHARES: readonly number[] = [0.5, 0.35, 0.65, 0.2, 0.8];

/** The name and the arrow on the frame, for what is inside it is cut out. */
export function frameMarks({ name, outline, cuttingLine, up }: TemplateShape): readonly Mark[] {
  const lines = [...edgesOf(outline), ...edgesOf(cuttingLine)];
  const spots = spotsOnFrame(outline, cuttingLine);
  const free = (plate: Plate) => liesIn(plate, cuttingLine, CLEAR) && !meets(plate, lines, CLEAR);
  const marks: Mark[] = [];
  let taken: Plate | null = null;
  const arrows = ARROWS.flatMap((length) =>
    spots.map((centre): Plate => ({ centre, halfWidth: BARB, halfHeight: length / 2, angle: up })),
  );
  const arrow = arrows.find(free);
  if (arrow !== undefined) {
    marks.push(arrowMark(name, arrow));
    taken = arrow;
  }
  for (const size of NAMES) {
    const line = [{ content: name, size, weight: 'semibold' as const, ink: 1 }];
    const plate = spots
      .map((spot) => plateOf(line, spot, 0))
      .find((one) => free(one) && (taken === null || !platesMeet(one, taken, CLEAR)));
    if (plate === undefined) continue;
    marks.push(...linesOn(name, line, plate));
    break;
  }
  return marks;
}

/** The middle of the frame along its edges: the longest edges first, of each its middle first. */
function spotsOnFrame(outline: Polygon<'page'>, cuttingLine: Polygon<'page'>): readonly Point<'page'>[] {
  const edges = [...edgesOf(outline)].sort((p, q) => distance(q.a, q.b) - distance(p.a, p.b));
  return edges.flatMap(({ a, b }) => {
    return SHARES.map((share) => midwayTo(lerp(a, b, share), cuttingLine));
  });
}

/** Half way from the point to the nearest point of the polygon's edges. */
function midwayTo(point: Point<'page'>, polygon: Polygon<'page'>): Point<'page'> {
  const nearest = edgesOf(polygon)
    .map(({ a, b }) => nearestOnSegment(point, a, b))
    .reduce((best, near) => (distance(near, point) < distance(best, point) ? near : best));
  return midpoint(point, nearest);
}
