import {
  type Box,
  contains,
  edgesOf,
  type Point,
  type Polygon,
  rotation,
  type Segment,
  transformPoint,
  transformSegment,
} from '@seamwright/geometry';
import { clippedSegments } from '../marks/clip.ts';

/** The rectangle that a label covers, turned about its middle. Points. */
export interface Plate {
  readonly centre: Point<'page'>;
  readonly halfWidth: number;
  readonly halfHeight: number;
  /** Degrees clockwise as seen on the sheet. */
  readonly angle: number;
}

export function cornersOf({ centre, halfWidth, halfHeight, angle }: Plate): Polygon<'page'> {
  const corners = [
    { x: centre.x - halfWidth, y: centre.y - halfHeight },
    { x: centre.x + halfWidth, y: centre.y - halfHeight },
    { x: centre.x + halfWidth, y: centre.y + halfHeight },
    { x: centre.x - halfWidth, y: centre.y + halfHeight },
  ];
  if (angle === 0) return corners;
  const turn = rotation<'page'>(angle, centre);
  return corners.map((corner) => transformPoint(turn, corner));
}

/** Whether any of the segments comes nearer to the plate than `gap` (measured square to its sides). */
export function meets(plate: Plate, segments: readonly Segment<'page'>[], gap = 0): boolean {
  const { centre, angle } = plate;
  const box = boxRound(plate, gap);
  if (angle === 0) return segments.some((segment) => crossesBox(segment, box));
  const back = rotation<'page'>(-angle, centre);
  return segments.some((segment) => crossesBox(transformSegment(back, segment), box));
}

/** Most segments lie wholly to one side: those need no clipping. */
function crossesBox(segment: Segment<'page'>, { minX, minY, maxX, maxY }: Box<'page'>): boolean {
  const { a, b } = segment;
  if ((a.x < minX && b.x < minX) || (a.x > maxX && b.x > maxX)) return false;
  if ((a.y < minY && b.y < minY) || (a.y > maxY && b.y > maxY)) return false;
  return clippedSegments([segment], { minX, minY, maxX, maxY }).length > 0;
}

/** The plate as it would lie upright, wider by `gap` all round. */
const boxRound = ({ centre, halfWidth, halfHeight }: Plate, gap: number): Box<'page'> => ({
  minX: centre.x - halfWidth - gap,
  minY: centre.y - halfHeight - gap,
  maxX: centre.x + halfWidth + gap,
  maxY: centre.y + halfHeight + gap,
});

/** Whether two plates come nearer to each other than `gap`. */
export const platesMeet = (p: Plate, q: Plate, gap = 0): boolean =>
  Math.hypot(p.centre.x - q.centre.x, p.centre.y - q.centre.y) <=
    Math.hypot(p.halfWidth, p.halfHeight) + Math.hypot(q.halfWidth, q.halfHeight) + gap &&
  (meets(p, edgesOf(cornersOf(q)), gap) || meets(q, edgesOf(cornersOf(p)), gap));

/** Whether the plate lies in the polygon, `gap` from its edges. */
export const liesIn = (plate: Plate, polygon: Polygon<'page'>, gap = 0): boolean =>
  contains(polygon, plate.centre) === 'inside' && !meets(plate, edgesOf(polygon), gap);
