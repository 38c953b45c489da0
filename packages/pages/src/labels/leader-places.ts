import {
  type Box,
  contains,
  distance,
  edgesOf,
  nearestOnSegment,
  type Point,
  type Polygon,
  type Segment,
  segmentCrossing,
} from '@seamwright/geometry';
import type { PatchToLabel } from './patch-labels.ts';
import { cornersOf, meets, type Plate, platesMeet } from './plate.ts';

/** What stands round labels that are led out. Points on the sheet. */
export interface AroundLeaders {
  readonly outline: Polygon<'page'>;
  readonly cuttingLine: Polygon<'page'>;
  /** All lines of the foundation: no label stands on any. */
  readonly lines: readonly Segment<'page'>[];
  /** Those of them where the foundation is cut into sheets: a leader across one would have its halves on two. */
  readonly barriers: readonly Segment<'page'>[];
  /** All patches, those that are labelled inside too. */
  readonly patches: readonly PatchToLabel[];
  /** The labels that stand in their patches. */
  readonly labels: readonly Plate[];
  /** Where labels stand if they can. */
  readonly room: Box<'page'>;
  /** How far beyond it, all round, they may; points. */
  readonly spare: number;
}

/** Points kept free between a label that is led out and the lines, and between it and other labels. */
const CLEAR_OF_LINES = 1.5;
const CLEAR_OF_LABELS = 2.5;

/** Points kept free between a leader and what it does not belong to. */
const CLEAR_OF_LEADER = 1;

/** What makes a place worse than one in the allowance as near: points of way. */
const COST = {
  outside: 6,
  inNeighbour: 30,
  lineCrossed: 4,
  /** More than any way within reach of a label: only where there is no other place. */
  sheetLeft: 10_000,
  outsideRoom: 6,
  pointOutsideRoom: 0.5,
};

/** A neighbour takes another patch's label only where so much of it is free all round: points. */
const LARGE_NEIGHBOUR = 20;

/** Points of way that the place is worth; null where the label cannot stand there, or not for less than `most`. */
export function costOf(
  plate: Plate,
  dot: Point<'page'>,
  way: number,
  most: number,
  around: AroundLeaders,
  { labels, leaders }: { readonly labels: readonly Plate[]; readonly leaders: readonly Segment<'page'>[] },
): number | null {
  const beyond = beyondRoom(plate, around.room);
  if (beyond > around.spare) return null;
  const soFar = way + (beyond > 0 ? COST.outsideRoom + COST.pointOutsideRoom * beyond : 0);
  if (soFar >= most || meets(plate, around.lines, CLEAR_OF_LINES)) return null;
  if (labels.some((other) => platesMeet(plate, other, CLEAR_OF_LABELS))) return null;
  if (meets(plate, leaders, CLEAR_OF_LEADER)) return null;
  const where = zoneOf(plate, dot, around);
  if (where === null || soFar + where >= most) return null;
  const leader = { a: edgeTowards(plate, dot), b: dot };
  if (labels.some((other) => meets(other, [leader], CLEAR_OF_LEADER))) return null;
  if (leaders.some((other) => nearOrCrossing(leader, other))) return null;
  const crossed = (lines: readonly Segment<'page'>[]) =>
    lines.filter(({ a, b }) => segmentCrossing(leader.a, leader.b, a, b) !== null).length;
  const cost =
    soFar + where + COST.lineCrossed * crossed(around.lines) + COST.sheetLeft * crossed(around.barriers);
  return cost < most ? cost : null;
}

/** How far an upright plate sticks out of the room; points, 0 where it does not. */
const beyondRoom = ({ centre, halfWidth, halfHeight }: Plate, { minX, minY, maxX, maxY }: Box<'page'>) =>
  Math.max(
    0,
    minX - (centre.x - halfWidth),
    centre.x + halfWidth - maxX,
    minY - (centre.y - halfHeight),
    centre.y + halfHeight - maxY,
  );

export const grown = ({ minX, minY, maxX, maxY }: Box<'page'>, by: number): Box<'page'> => ({
  minX: minX - by,
  minY: minY - by,
  maxX: maxX + by,
  maxY: maxY + by,
});

/** What the place is worth by where it lies; null in a patch that takes no other's label. */
function zoneOf({ centre }: Plate, dot: Point<'page'>, around: AroundLeaders): number | null {
  if (contains(around.cuttingLine, centre) !== 'inside') return COST.outside;
  if (contains(around.outline, centre) !== 'inside') return 0;
  const host = around.patches.find(({ polygon }) => contains(polygon, centre) === 'inside');
  if (host === undefined || host.depth < LARGE_NEIGHBOUR) return null;
  return contains(host.polygon, dot) === 'inside' ? null : COST.inNeighbour;
}

/** Leaders that touch would be taken for one. */
const nearOrCrossing = (p: Segment<'page'>, q: Segment<'page'>): boolean =>
  segmentCrossing(p.a, p.b, q.a, q.b) !== null ||
  [p.a, p.b].some((end) => nearTo(end, q)) ||
  [q.a, q.b].some((end) => nearTo(end, p));

const nearTo = (end: Point<'page'>, { a, b }: Segment<'page'>): boolean =>
  distance(end, nearestOnSegment(end, a, b)) < CLEAR_OF_LEADER;

/** The point of the plate's rim, a little outside it, that is nearest to where the leader goes. */
export function edgeTowards(plate: Plate, to: Point<'page'>): Point<'page'> {
  const { halfWidth, halfHeight } = plate;
  const rim = edgesOf(
    cornersOf({ ...plate, halfWidth: halfWidth + CLEAR_OF_LEADER, halfHeight: halfHeight + CLEAR_OF_LEADER }),
  );
  const feet = rim.map(({ a, b }) => nearestOnSegment(to, a, b));
  return feet.reduce((nearest, foot) => (distance(foot, to) < distance(nearest, to) ? foot : nearest));
}
