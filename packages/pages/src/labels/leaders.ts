import {
  add,
  type Box,
  contains,
  distance,
  edgesOf,
  nearestOnSegment,
  type Point,
  type Polygon,
  type Segment,
  scale,
  segmentCrossing,
} from '@seamwright/geometry';
import { STROKES } from '../marks/marks.ts';
import type { PathMark } from '../marks/model.ts';
import { linesOn, plateOf } from './label-lines.ts';
import {
  longWay,
  numberLine,
  type PatchToLabel,
  type PlacedLabel,
  SMALLEST_NUMBER,
  spotsAlong,
} from './patch-labels.ts';
import { cornersOf, meets, type Plate, platesMeet } from './plate.ts';

/** A label that stands outside its patch, and the line that leads from it into the patch. */
export interface LedLabel extends PlacedLabel {
  readonly leader: PathMark;
  /** The leader from the label to the dot. */
  readonly line: Segment<'page'>;
}

/** What stands round labels that are led out. Points on the sheet. */
export interface AroundLeaders {
  readonly outline: Polygon<'page'>;
  readonly cuttingLine: Polygon<'page'>;
  /** All lines of the foundation: no label stands on any. */
  readonly lines: readonly Segment<'page'>[];
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

/** Places are tried on circles round the dot, so far apart, in so many directions. */
const CIRCLES_APART = 3;
const DIRECTIONS = 24;

/** What makes a place worse than one in the allowance as near: points of way. */
const COST = {
  outside: 6,
  inNeighbour: 30,
  lineCrossed: 4,
  outsideRoom: 6,
  pointOutsideRoom: 0.5,
  awayFromHeart: 0.5,
};

/** A neighbour takes another patch's label only where so much of it is free all round: points. */
const LARGE_NEIGHBOUR = 20;

/** The dot at the leader's end, points: half its width, and less in a patch that it would hide. */
const DOT = 1.3;
const LEAST_DOT = 0.8;

/**
 * Labels for the patches that are too small for their own: in the allowance, outside the cutting line or in a large
 * neighbour, where it is nearest; null for those for which there is no free place. No leader crosses another or a label.
 */
export function ledLabels(
  section: string,
  patches: readonly PatchToLabel[],
  around: AroundLeaders,
): readonly (LedLabel | null)[] {
  let order = patches;
  let found = new Map<PatchToLabel, LedLabel>();
  for (let round = 0; round < ROUNDS; round++) {
    found = inOrder(section, order, around);
    const shut = order.filter((patch) => !found.has(patch));
    if (shut.length === 0) break;
    order = [...shut, ...order.filter((patch) => found.has(patch))];
  }
  return patches.map((patch) => found.get(patch) ?? null);
}

/** Those that were shut in by others' leaders come first the next time, so often. */
const ROUNDS = 3;

function inOrder(
  section: string,
  patches: readonly PatchToLabel[],
  around: AroundLeaders,
): Map<PatchToLabel, LedLabel> {
  const found = new Map<PatchToLabel, LedLabel>();
  for (const patch of patches) {
    const label = placeFor(section, patch, around, [...found.values()]);
    if (label) found.set(patch, label);
  }
  return found;
}

/** Points between the places in a patch at which a leader may end, and how many are tried. */
const DOTS_APART = 6;
const DOTS = 5;

/** A place that is worth so little way needs no comparing. */
const GOOD = 24;

function placeFor(
  section: string,
  patch: PatchToLabel,
  around: AroundLeaders,
  placed: readonly LedLabel[],
): LedLabel | null {
  const number = [numberLine(patch, SMALLEST_NUMBER)];
  let best: Place | null = null;
  for (const dot of dotsIn(patch)) {
    if (best !== null && best.cost < GOOD) break;
    const detour = COST.awayFromHeart * distance(dot, patch.heart);
    best = cheapest(plateOf(number, dot, 0), dot, detour, best, around, placed);
  }
  if (best === null) return null;
  const { plate, dot } = best;
  const line = { a: edgeTowards(plate, dot), b: dot };
  return {
    texts: linesOn(section, number, plate),
    plate,
    noted: patch.note === null,
    line,
    leader: leaderMark(section, line, patch.depth),
  };
}

/** The patch's heart, then places along it. */
function dotsIn(patch: PatchToLabel): readonly Point<'page'>[] {
  const dots: Point<'page'>[] = [];
  for (const spot of spotsAlong(patch, longWay(patch.polygon))) {
    if (dots.length === DOTS) break;
    if (dots.every((dot) => distance(dot, spot) >= DOTS_APART)) dots.push(spot);
  }
  return dots;
}

interface Place {
  readonly plate: Plate;
  readonly dot: Point<'page'>;
  readonly cost: number;
}

/** Outwards circle by circle round the dot, until a farther place cannot be better than the best. */
function cheapest(
  plate: Plate,
  dot: Point<'page'>,
  detour: number,
  known: Place | null,
  around: AroundLeaders,
  placed: readonly LedLabel[],
): Place | null {
  const { minX, minY, maxX, maxY } = grown(around.room, around.spare);
  const reach = Math.hypot(Math.max(dot.x - minX, maxX - dot.x), Math.max(dot.y - minY, maxY - dot.y));
  const taken = {
    labels: [...around.labels, ...placed.map((label) => label.plate)],
    leaders: placed.map(({ line }) => line),
  };
  let best = known;
  const most = () => (best?.cost ?? Infinity) - detour;
  for (let r = CIRCLES_APART * 2; r < reach && r < most(); r += CIRCLES_APART)
    for (let k = 0; k < DIRECTIONS; k++) {
      const angle = (k * 2 * Math.PI) / DIRECTIONS;
      const at = { ...plate, centre: add(dot, scale({ x: Math.cos(angle), y: Math.sin(angle) }, r)) };
      const cost = costOf(at, dot, r, most(), around, taken);
      if (cost !== null) best = { plate: at, dot, cost: cost + detour };
    }
  return best;
}

/** Points of way that the place is worth; null where the label cannot stand there, or not for less than `most`. */
function costOf(
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
  const crossed = around.lines.filter(
    ({ a, b }) => segmentCrossing(leader.a, leader.b, a, b) !== null,
  ).length;
  const cost = soFar + where + COST.lineCrossed * crossed;
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

const grown = ({ minX, minY, maxX, maxY }: Box<'page'>, by: number): Box<'page'> => ({
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
function edgeTowards(plate: Plate, to: Point<'page'>): Point<'page'> {
  const { halfWidth, halfHeight } = plate;
  const rim = edgesOf(
    cornersOf({ ...plate, halfWidth: halfWidth + CLEAR_OF_LEADER, halfHeight: halfHeight + CLEAR_OF_LEADER }),
  );
  const feet = rim.map(({ a, b }) => nearestOnSegment(to, a, b));
  return feet.reduce((nearest, foot) => (distance(foot, to) < distance(nearest, to) ? foot : nearest));
}

/** One path, so that who looks for sew lines (two points) does not take it for one: to the dot, and round it. */
function leaderMark(section: string, { a, b }: Segment<'page'>, depth: number): PathMark {
  const radius = Math.min(DOT, Math.max(LEAST_DOT, depth / 2));
  const rim = Array.from({ length: 9 }, (_, i): Point<'page'> => {
    const angle = (i * Math.PI) / 4;
    return add(b, { x: radius * Math.cos(angle), y: radius * Math.sin(angle) });
  });
  const stroke = STROKES.leader;
  return {
    kind: 'path',
    role: 'label',
    section,
    points: [a, b, ...rim],
    closed: false,
    stroke,
    fill: stroke.ink,
  };
}
