import { type Arrangement, boundaryRing, cornersOfRing } from '@seamwright/arrangement';
import {
  area,
  distance,
  motionsOnto,
  type Point,
  type Polygon,
  perimeter,
  STRAIGHT_WITHIN,
  type Transform,
  transformPoint,
} from '@seamwright/geometry';
import { type Corners, patchesRound } from './corners.ts';
import type { Region } from './region.ts';

/** How one section is a copy of another: turned, and perhaps mirrored, which makes a print of its own of it. */
export interface Copy {
  /** Carries the template's shape on to the copy, inches on the block. */
  readonly transform: Transform;
  readonly mirrored: boolean;
  /** For each patch of the template, the patch of the copy that is its image. */
  readonly imageOf: ReadonlyMap<number, number>;
}

/** A set of patches seen as a shape of its own. */
export interface Shape {
  readonly patches: Region;
  /** For each of the patches, the middle of its corners: motions carry middles on to middles. */
  readonly middles: readonly Point[];
  /** The vertices round it, clockwise. */
  readonly ring: readonly number[];
  readonly outline: Polygon;
  /** Inches round it. */
  readonly rim: number;
  /** Square inches. */
  readonly area: number;
}

export function shapeOf(arrangement: Arrangement, patches: Region): Shape {
  const ring = boundaryRing(arrangement, new Set(patches));
  const outline = cornersOfRing(arrangement, ring);
  const middles = patches.map((p) => middleOf(arrangement.patches[p]!.polygon));
  return { patches, middles, ring, outline, rim: perimeter(outline), area: area(outline) };
}

function middleOf(polygon: Polygon): Point {
  let [x, y] = [0, 0];
  for (const corner of polygon) {
    x += corner.x;
    y += corner.y;
  }
  return { x: x / polygon.length, y: y / polygon.length };
}

/**
 * All ways in which `copy` is a copy of `template`: every way to lay one outline on the other is tried, and all patches
 * must then fit within {@link STRAIGHT_WITHIN}. Unmirrored ones come first.
 */
function* waysToCopy(arrangement: Arrangement, template: Shape, copy: Shape): Generator<Copy> {
  const n = template.outline.length;
  if (copy.outline.length !== n || copy.patches.length !== template.patches.length) return;
  if (Math.abs(copy.rim - template.rim) > n * STRAIGHT_WITHIN) return;
  if (Math.abs(copy.area - template.area) > template.rim * STRAIGHT_WITHIN) return;

  for (const motion of motionsOnto(template.outline, copy.outline, STRAIGHT_WITHIN)) {
    const imageOf = matchPatches(arrangement, template, copy, motion.transform);
    if (imageOf !== null) yield { ...motion, imageOf };
  }
}

/**
 * The motion that turns a section over on to itself, each patch on to its own place, inches on the block; null where none
 * does. Where there is one, the section's foundation and that of its mirror image are the same, numbers too.
 */
export function mirrorOntoItself(arrangement: Arrangement, patches: Region): Transform | null {
  const shape = shapeOf(arrangement, patches);
  for (const { mirrored, transform, imageOf } of waysToCopy(arrangement, shape, shape))
    if (mirrored && [...imageOf].every(([patch, image]) => patch === image)) return transform;
  return null;
}

/** Inches: corners that are farther apart do not lie on each other. */
const MISS = 2 * STRAIGHT_WITHIN;

function matchPatches(
  { patches }: Arrangement,
  template: Shape,
  copy: Shape,
  transform: Transform,
): Map<number, number> | null {
  const count = copy.patches.length;
  const isTaken = new Uint8Array(count);
  const imageOf = new Map<number, number>();
  // Copies mostly have their patches in the same order or in the opposite one: the next is sought from the last on.
  let last = 0;
  for (const [i, p] of template.patches.entries()) {
    const middle = transformPoint(transform, template.middles[i]!);
    let found = -1;
    for (let step = 0; step < count && found < 0; step += 1) {
      const k = (last + step) % count;
      if (isTaken[k] === 1 || !areWithin(middle, copy.middles[k]!, MISS)) continue;
      const image = patches[p]!.polygon.map((corner) => transformPoint(transform, corner));
      if (sameCorners(image, patches[copy.patches[k]!]!.polygon)) found = k;
    }
    if (found < 0) return null;
    isTaken[found] = 1;
    last = found;
    imageOf.set(p, copy.patches[found]!);
  }
  return imageOf;
}

/** Whether two polygons have the same corners, in whichever order; enough for shapes that are cut by straight lines. */
const sameCorners = (image: Polygon, polygon: Polygon): boolean =>
  image.length === polygon.length && image.every((p) => polygon.some((q) => areWithin(p, q, MISS)));

/** Most points that are asked about are far apart, which takes no root to tell. */
const areWithin = (p: Point, q: Point, most: number): boolean =>
  Math.abs(p.x - q.x) <= most && Math.abs(p.y - q.y) <= most && distance(p, q) <= most;

/** Numbers the different templates among shapes as they come: copies have the number of the first of them. */
export class Templates {
  private readonly found: Shape[] = [];
  /** The numbers of those with so many corners and patches and about so long a rim. */
  private readonly alike = new Map<string, number[]>();

  constructor(private readonly arrangement: Arrangement) {}

  numberOf(shape: Shape): number {
    const known = this.candidates(shape).find((template) => {
      const { done } = waysToCopy(this.arrangement, this.found[template]!, shape).next();
      return done !== true;
    });
    return known ?? this.add(shape);
  }

  /** The shape that came first with this number. */
  firstOf(template: number): Shape {
    return this.found[template]!;
  }

  private add(shape: Shape): number {
    const template = this.found.push(shape) - 1;
    const key = keyOf(shape, 0);
    const others = this.alike.get(key);
    if (others === undefined) this.alike.set(key, [template]);
    else others.push(template);
    return template;
  }

  private candidates(shape: Shape): number[] {
    const near = [-1, 0, 1].flatMap((step) => this.alike.get(keyOf(shape, step)) ?? []);
    return near.sort((s, t) => s - t);
  }
}

/** Corners, patches, and the rim's length in steps of as much as the rims of copies may differ. */
function keyOf({ outline, patches, rim }: Shape, step: number): string {
  const corners = outline.length;
  return `${corners} ${patches.length} ${Math.floor(rim / (corners * STRAIGHT_WITHIN)) + step}`;
}

/** Degrees: turns that differ by less are one turn, drawn imprecisely. */
const SAME_TURN = 1;

/** Finds out how sections of one plan are best taken for copies of each other. */
export class Copies {
  /** @param corners those of the arrangement */
  constructor(
    private readonly arrangement: Arrangement,
    private readonly corners: Corners,
  ) {}

  /**
   * The best way to take one shape for a copy of another; null where there is none.
   *
   * An unmirrored one, which is sewn on prints of the same foundation; of those the one that brings the most match points on
   * to match points, so that the fewest marks are for some of the copies only; then the one that turns the least, so that prints
   * with a direction keep theirs.
   */
  best(template: Shape, copy: Shape): Copy | null {
    const alike: Copy[] = [];
    for (const way of waysToCopy(this.arrangement, template, copy)) {
      // Unmirrored ones come first.
      if (way.mirrored !== (alike[0] ?? way).mirrored) break;
      alike.push(way);
    }
    if (alike.length <= 1) return alike[0] ?? null;
    const [own, theirs] = [this.matchPoints(template), this.matchPoints(copy)];
    const rated = alike.map((way) => ({
      way,
      met: meeting(
        own.map((p) => transformPoint(way.transform, p)),
        theirs,
      ),
      turn: Math.abs(turnOf(way.transform)),
    }));
    return rated.reduce((best, other) => {
      const better = other.met - best.met || best.turn - other.turn - SAME_TURN;
      return better > 0 ? other : best;
    }).way;
  }

  /**
   * The points inside straight stretches of the boundary that have to meet something: seams of other sections end there, or
   * the block's edge begins.
   */
  private matchPoints({ patches, ring, outline }: Shape): Point[] {
    const own = new Set(patches);
    const corners = new Set(outline);
    return ring.flatMap((vertex) => {
      const { at } = this.arrangement.vertices[vertex]!;
      const others = patchesRound(this.corners, vertex).filter((p) => !own.has(p)).length;
      return corners.has(at) || others + this.corners.outer[vertex]! < 2 ? [] : [at];
    });
  }
}

/** How many points of some meet one of others. */
const meeting = (some: readonly Point[], others: readonly Point[]): number =>
  some.filter((p) => others.some((q) => areWithin(p, q, MISS))).length;

/** Degrees, from −180 to 180. */
const turnOf = ({ a, b }: Transform): number => (Math.atan2(b, a) * 180) / Math.PI;
