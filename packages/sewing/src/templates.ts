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
import { type Corners, cornersOf, patchesRound } from './corners.ts';
import type { Region } from './region.ts';

/** How one section is a copy of another: the same template, turned and perhaps mirrored. */
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
  return { patches, ring, outline, rim: perimeter(outline), area: area(outline) };
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
    const imageOf = matchPatches(arrangement, template.patches, copy.patches, motion.transform);
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

function matchPatches(
  arrangement: Arrangement,
  template: Region,
  copy: Region,
  transform: Transform,
): Map<number, number> | null {
  const polygonOf = (p: number) => arrangement.patches[p]!.polygon;
  const left = new Set(copy);
  const imageOf = new Map<number, number>();
  for (const p of template) {
    const image = polygonOf(p).map((corner) => transformPoint(transform, corner));
    const found = [...left].find((q) => sameCorners(image, polygonOf(q)));
    if (found === undefined) return null;
    left.delete(found);
    imageOf.set(p, found);
  }
  return imageOf;
}

/** Whether two polygons have the same corners, in whichever order; enough for shapes that are cut by straight lines. */
const sameCorners = (image: Polygon, polygon: Polygon): boolean =>
  image.length === polygon.length &&
  image.every((p) => polygon.some((q) => distance(p, q) <= 2 * STRAIGHT_WITHIN));

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
  private readonly corners: Corners;

  constructor(private readonly arrangement: Arrangement) {
    this.corners = cornersOf(arrangement);
  }

  /**
   * The best way to take one shape for a copy of another; null where there is none.
   *
   * An unmirrored one, which is sewn on prints of the same foundation; of those the one that brings the most match points on
   * to match points, so that the fewest marks are for some of the copies only; then the one that turns the least, so that prints
   * with a direction keep theirs.
   */
  best(template: Shape, copy: Shape): Copy | null {
    const ways = [...waysToCopy(this.arrangement, template, copy)];
    const alike = ways.filter(({ mirrored }) => mirrored === ways[0]?.mirrored);
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
  some.filter((p) => others.some((q) => distance(p, q) <= 2 * STRAIGHT_WITHIN)).length;

/** Degrees, from −180 to 180. */
const turnOf = ({ a, b }: Transform): number => (Math.atan2(b, a) * 180) / Math.PI;
