import { type Box, distance, normalize, type Point, type Segment, subtract } from '@seamwright/geometry';
import { QUIET, type TextLook } from '../marks/marks.ts';
import { CAP_HEIGHT, textWidth } from '../marks/metrics.ts';

/** A word that is to stand along an outline, and what it must keep clear of. All in page space, points. */
export interface EdgeWord {
  readonly word: string;
  readonly size: number;
  /** Edges of one outline, or parts of them, each walked clockwise round it as seen on the screen. */
  readonly edges: readonly Segment<'page'>[];
  readonly side: 'outside' | 'inside';
  /** Between the edge and the word. */
  readonly gap: number;
  readonly obstacles: readonly Segment<'page'>[];
  /** The word stays inside it. */
  readonly room: Box<'page'>;
  /** Where along an edge it stands if it can; a little way in from where a reader starts when left out. */
  readonly from?: 'start' | 'middle';
}

export interface PlacedWord {
  readonly at: Point<'page'>;
  readonly look: TextLook;
}

/** Points kept free between a word and what is printed beside it. */
const CLEARANCE = 2;

/** Points from a corner to where a word starts if it can. */
const USUAL_START = 14;

/** Points between the places that are tried along an edge. */
const STEP = 3;

/**
 * Where the word can stand along one of the edges, parallel to it and never upside down; null when no edge
 * has a clear place. Level edges come before slanting ones, upper before lower, long before short; on an edge the
 * place nearest to where a reader starts.
 */
export function placeWord(wanted: EdgeWord): PlacedWord | null {
  const edges = wanted.edges
    .map((edge) => ({ edge, rank: rankOf(edge) }))
    .sort((p, q) => p.rank - q.rank || distance(q.edge.a, q.edge.b) - distance(p.edge.a, p.edge.b));
  for (const { edge } of edges) {
    const placed = placeOnEdge(wanted, edge);
    if (placed) return placed;
  }
  return null;
}

/** Less is better. In steps, so that edges of nearly the same slant are told apart by their length. */
function rankOf({ a, b }: Segment<'page'>): number {
  const along = normalize(subtract(b, a));
  const slant = Math.round(Math.abs(along.y) * 8) / 8;
  const lower = along.x < 0 ? 0.5 : 0;
  return slant + lower;
}

function placeOnEdge(wanted: EdgeWord, edge: Segment<'page'>): PlacedWord | null {
  const { word, size, gap } = wanted;
  const along = normalize(subtract(edge.b, edge.a));
  const outward: Point<'page'> = { x: along.y, y: -along.x };
  const width = textWidth(word, size, 'regular');
  const height = CAP_HEIGHT * size;
  const near = wanted.side === 'outside' ? gap : -gap - height;
  const long = distance(edge.a, edge.b);
  const blocked = shadows(wanted.obstacles, edge.a, along, long, near, near + height);
  // Reading runs with the edge unless that would put the word on its head.
  const backwards = along.x < 0 || (along.x === 0 && along.y > 0);
  for (const fromStart of placesAlong(long - width, wanted.from)) {
    const t = backwards ? long - fromStart - width : fromStart;
    if (overlaps(blocked, t, t + width)) continue;
    const place = (u: number, v: number): Point<'page'> => ({
      x: edge.a.x + along.x * u + outward.x * v,
      y: edge.a.y + along.y * u + outward.y * v,
    });
    const corners = [
      place(t, near),
      place(t + width, near),
      place(t + width, near + height),
      place(t, near + height),
    ];
    if (!corners.every((corner) => inBox(corner, wanted.room))) continue;
    const degrees = (Math.atan2(along.y, along.x) * 180) / Math.PI;
    return backwards
      ? { at: place(t + width, near + height), look: { size, angle: upright(degrees + 180), ink: QUIET } }
      : { at: place(t, near), look: { size, angle: upright(degrees), ink: QUIET } };
  }
  return null;
}

/**
 * Where a word may start along an edge that leaves `slack` points beside it: a little way in, or in the middle, before anywhere
 * else, and away from the corner rather than towards it.
 */
function* placesAlong(slack: number, from: EdgeWord['from'] = 'start'): Generator<number> {
  const preferred = from === 'middle' ? slack / 2 : Math.min(USUAL_START, slack / 2);
  for (let at = preferred; at <= slack - CLEARANCE; at += STEP) yield at;
  for (let at = preferred - STEP; at >= CLEARANCE; at -= STEP) yield at;
}

/**
 * What the segments block of the strip between the distances `low` and `high` outside an edge that is `long`: from where to where along
 * it, one stretch after the other. In plain numbers: for each word all lines of a foundation are looked at.
 */
function shadows(
  segments: readonly Segment<'page'>[],
  origin: Point<'page'>,
  along: Point<'page'>,
  long: number,
  low: number,
  high: number,
): readonly number[] {
  const [least, most] = [low - CLEARANCE, high + CLEARANCE];
  const stretches: number[] = [];
  for (const { a, b } of segments) {
    const ax = a.x - origin.x;
    const ay = a.y - origin.y;
    const bx = b.x - origin.x;
    const by = b.y - origin.y;
    const va = ax * along.y - ay * along.x;
    const vb = bx * along.y - by * along.x;
    const ca = Math.min(Math.max(va, least), most);
    const cb = Math.min(Math.max(vb, least), most);
    if (ca === cb && ca !== va) continue;
    const ta = ax * along.x + ay * along.y;
    const tb = bx * along.x + by * along.y;
    const slope = va === vb ? 0 : (tb - ta) / (vb - va);
    const from = ta + slope * (ca - va);
    const to = va === vb ? tb : ta + slope * (cb - va);
    const [start, end] = [Math.min(from, to) - CLEARANCE, Math.max(from, to) + CLEARANCE];
    if (end > 0 && start < long) stretches.push(start, end);
  }
  return stretches;
}

function overlaps(stretches: readonly number[], from: number, to: number): boolean {
  for (let i = 0; i < stretches.length; i += 2)
    if (stretches[i]! < to && from < stretches[i + 1]!) return true;
  return false;
}

const inBox = (p: Point<'page'>, box: Box<'page'>): boolean =>
  p.x >= box.minX && p.x <= box.maxX && p.y >= box.minY && p.y <= box.maxY;

/** Within half a turn: −90 < angle ≤ 90 for what comes in here. */
const upright = (degrees: number): number => {
  const turned = ((((degrees + 180) % 360) + 360) % 360) - 180;
  return Object.is(turned, -0) ? 0 : turned;
};
