import { add, distance, type Point, type Segment, scale } from '@seamwright/geometry';
import { plateOf } from './label-lines.ts';
import { type AroundLeaders, costOf, edgeTowards, grown } from './leader-places.ts';
import {
  longWay,
  numberLine,
  type PatchToLabel,
  type PlacedLabel,
  SMALLEST_NUMBER,
  spotsAlong,
} from './patch-labels.ts';
import type { Plate } from './plate.ts';

/** A label that stands outside its patch, and the line that leads from it into the patch. */
export interface LedLabel extends PlacedLabel {
  readonly patch: PatchToLabel;
  /** The leader from the label to the dot. */
  readonly line: Segment<'page'>;
}

/** Places are tried on circles round the dot, so far apart, in so many directions. */
const CIRCLES_APART = 3;
const DIRECTIONS = 24;

/**
 * Labels for the patches that are too small for their own: in the allowance, outside the cutting line or in a large
 * neighbour, where it is nearest; null for those for which there is no free place. No leader crosses another or a label.
 */
export function ledLabels(
  patches: readonly PatchToLabel[],
  around: AroundLeaders,
): readonly (LedLabel | null)[] {
  let order = patches;
  let found = new Map<PatchToLabel, LedLabel>();
  for (let round = 0; round < ROUNDS; round++) {
    found = inOrder(order, around);
    const shut = order.filter((patch) => !found.has(patch));
    if (shut.length === 0) break;
    order = [...shut, ...order.filter((patch) => found.has(patch))];
  }
  return patches.map((patch) => found.get(patch) ?? null);
}

/** Those that were shut in by others' leaders come first the next time, so often. */
const ROUNDS = 3;

function inOrder(patches: readonly PatchToLabel[], around: AroundLeaders): Map<PatchToLabel, LedLabel> {
  const found = new Map<PatchToLabel, LedLabel>();
  for (const patch of patches) {
    const label = placeFor(patch, around, [...found.values()]);
    if (label) found.set(patch, label);
  }
  return found;
}

/** Points between the places in a patch at which a leader may end, and how many are tried. */
const DOTS_APART = 6;
const DOTS = 5;

/** What a dot beside the patch's heart makes worse, points of way for each point from it. */
const AWAY_FROM_HEART = 0.5;

/** A place that is worth so little way needs no comparing. */
const GOOD = 24;

function placeFor(patch: PatchToLabel, around: AroundLeaders, placed: readonly LedLabel[]): LedLabel | null {
  const number = [numberLine(patch, SMALLEST_NUMBER)];
  let best: Place | null = null;
  for (const dot of dotsIn(patch)) {
    if (best !== null && best.cost < GOOD) break;
    const detour = AWAY_FROM_HEART * distance(dot, patch.heart);
    best = cheapest(plateOf(number, dot, 0), dot, detour, best, around, placed);
  }
  if (best === null) return null;
  const { plate, dot } = best;
  const line = { a: edgeTowards(plate, dot), b: dot };
  return {
    lines: number,
    plate,
    noted: patch.note === null,
    line,
    patch,
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
