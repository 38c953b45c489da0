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
import { linesOn, plateOf } from './label-lines.ts';
import { STROKES } from './marks.ts';
import type { PathMark } from './model.ts';
import {
  LEAST_NUMBER,
  numberLine,
  type PatchToLabel,
  type PlacedLabel,
  SMALLEST_NUMBER,
} from './patch-labels.ts';
import { cornersOf, inBox, meets, type Plate, platesMeet } from './plate.ts';

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
  /** Where labels may stand. */
  readonly room: Box<'page'>;
}

/** Points kept free between a label that is led out and the lines, and between it and other labels. */
const CLEAR_OF_LINES = 1.5;
const CLEAR_OF_LABELS = 2.5;

/** Points kept free between a leader and what it does not belong to. */
const CLEAR_OF_LEADER = 1;

/** Places are tried on circles round the patch's heart, so far apart, in so many directions. */
const CIRCLES_APART = 2.5;
const DIRECTIONS = 36;

/** What makes a place worse than one in the allowance as near: points of way. */
const COST = { outside: 8, inNeighbour: 30, lineCrossed: 4 };

/** A neighbour takes another patch's label only where so much of it is free all round: points. */
const LARGE_NEIGHBOUR = 20;

/** The dot at the leader's end, points: half its width, and less in a patch that it would hide. */
const DOT = 1.3;
const LEAST_DOT = 0.8;

/**
 * Labels for the patches that are too small for their own: in the allowance, outside the cutting line or in a large
 * neighbour, where it is nearest; null for those for which there is no free place in the room. No leader crosses another or a label.
 */
export function ledLabels(
  section: string,
  patches: readonly PatchToLabel[],
  around: AroundLeaders,
): readonly (LedLabel | null)[] {
  const placed: LedLabel[] = [];
  return patches.map((patch) => {
    const best = placeFor(section, patch, around, placed);
    if (best) placed.push(best);
    return best;
  });
}

function placeFor(
  section: string,
  patch: PatchToLabel,
  around: AroundLeaders,
  placed: readonly LedLabel[],
): LedLabel | null {
  for (const size of [SMALLEST_NUMBER, LEAST_NUMBER]) {
    const number = [numberLine(patch, size)];
    const plate = cheapest(plateOf(number, patch.heart, 0), patch, around, placed);
    if (plate === null) continue;
    const line = { a: edgeTowards(plate, patch.heart), b: patch.heart };
    return {
      texts: linesOn(section, number, plate),
      plate,
      noted: patch.note === null,
      line,
      leader: leaderMark(section, line, patch.depth),
    };
  }
  return null;
}

/** Outwards circle by circle, until a farther place cannot be better than the best. */
function cheapest(
  plate: Plate,
  { heart }: PatchToLabel,
  around: AroundLeaders,
  placed: readonly LedLabel[],
): Plate | null {
  const { minX, minY, maxX, maxY } = around.room;
  const reach = Math.hypot(
    Math.max(heart.x - minX, maxX - heart.x),
    Math.max(heart.y - minY, maxY - heart.y),
  );
  let best: { plate: Plate; cost: number } | null = null;
  for (let r = CIRCLES_APART * 2; r < reach && r < (best?.cost ?? Infinity); r += CIRCLES_APART)
    for (let k = 0; k < DIRECTIONS; k++) {
      const angle = (k * 2 * Math.PI) / DIRECTIONS;
      const at = { ...plate, centre: add(heart, scale({ x: Math.cos(angle), y: Math.sin(angle) }, r)) };
      const cost = costOf(at, heart, r, best?.cost ?? Infinity, around, placed);
      if (cost !== null) best = { plate: at, cost };
    }
  return best?.plate ?? null;
}

/** Points of way that the place is worth; null where the label cannot stand there, or not for less than `most`. */
function costOf(
  plate: Plate,
  heart: Point<'page'>,
  way: number,
  most: number,
  around: AroundLeaders,
  placed: readonly LedLabel[],
): number | null {
  if (!inBox(plate, around.room)) return null;
  const where = zoneOf(plate, heart, around);
  if (where === null || way + where >= most) return null;
  if (meets(plate, around.lines, CLEAR_OF_LINES)) return null;
  const labels = [...around.labels, ...placed.map((label) => label.plate)];
  if (labels.some((other) => platesMeet(plate, other, CLEAR_OF_LABELS))) return null;
  const leaders = placed.map(({ line }) => line);
  if (meets(plate, leaders, CLEAR_OF_LEADER)) return null;
  const leader = { a: edgeTowards(plate, heart), b: heart };
  if (labels.some((other) => meets(other, [leader], CLEAR_OF_LEADER))) return null;
  if (leaders.some((other) => nearOrCrossing(leader, other))) return null;
  const crossed = around.lines.filter(
    ({ a, b }) => segmentCrossing(leader.a, leader.b, a, b) !== null,
  ).length;
  const cost = way + where + COST.lineCrossed * crossed;
  return cost < most ? cost : null;
}

/** What the place is worth by where it lies; null in a patch that takes no other's label. */
function zoneOf({ centre }: Plate, heart: Point<'page'>, around: AroundLeaders): number | null {
  if (contains(around.cuttingLine, centre) !== 'inside') return COST.outside;
  if (contains(around.outline, centre) !== 'inside') return 0;
  const host = around.patches.find(({ polygon }) => contains(polygon, centre) === 'inside');
  return host === undefined || host.heart === heart || host.depth < LARGE_NEIGHBOUR ? null : COST.inNeighbour;
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
