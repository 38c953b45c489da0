import type { Arrangement } from '@seamwright/arrangement';
import {
  add,
  commonParts,
  convexHull,
  distance,
  MITRE_REACH,
  type Point,
  type Polygon,
  reflectionAcross,
  type Segment,
  scale,
  subtract,
  transformPolygon,
} from '@seamwright/geometry';
import type { Join, SewingPlan } from '@seamwright/sewing';
import { outward, partsOutside } from '../placing/parts-outside.ts';
import { type PatchNeed, pastSewLine, patchNeeds } from '../sizes/patch-needs.ts';
import { type LayerRegion, regionsOf } from './layer-regions.ts';

/** Where the two allowances of a join lie: under its first unit, under its second, or one under each. */
export type Pressing = 'first' | 'second' | 'open';

export interface BulkRequest {
  readonly arrangement: Arrangement;
  readonly plan: Pick<SewingPlan, 'sections' | 'joins'>;
  /** Inches at the size that is sewn. */
  readonly allowance: number;
  /** How a join is pressed, by its place in the plan. */
  readonly pressingOf: (join: number) => Pressing;
  /** Size that is sewn ÷ size that is drawn; 1, if not given. */
  readonly scale?: number;
}

/**
 * How many layers of fabric lie where, over the sewn block with the allowance round it, trimmed and pressed; paper not
 * counted. Exact: every piece of fabric is followed through its folds.
 *
 * - A patch is trimmed to what it needs ({@link patchNeeds}). Sewn on, it is folded along its sew line; the allowance of what
 *   was there stays flat. So both lie under the newer patch.
 * - In a join, the unit that is pressed over the allowances is folded along the seam, with all that it is made of: seams that
 *   end on the join are folded with it. Pressed open, both are.
 *
 * Partial seams are not followed: the plan must have none.
 *
 * The regions do not overlap, and together are all that fabric covers.
 */
export function bulkMap(request: BulkRequest): readonly LayerRegion[] {
  const { arrangement, plan, allowance, pressingOf, scale: size = 1 } = request;
  const needs = new Map(patchNeeds(arrangement, plan, allowance, size).map((need) => [need.patch, need]));
  const units = new Map(
    plan.sections.map(({ letter, order }): [string, Unit] => {
      const layers = order.flatMap((patch) => foldedPatch(needs.get(patch)!, allowance));
      return [letter, { patches: new Set(order), layers }];
    }),
  );
  plan.joins.forEach((join, k) => {
    const [first, second] = join.units.map((name) => units.get(name)!) as [Unit, Unit];
    const seam = { a: scale(join.seam.a, size), b: scale(join.seam.b, size) };
    const towardsSecond = sideOfSecond(arrangement, join, first, second);
    const pressing = pressingOf(k);
    const layers = [
      ...(pressing === 'second' ? first.layers : folded(first.layers, seam, towardsSecond, allowance)),
      ...(pressing === 'first'
        ? second.layers
        : folded(second.layers, seam, scale(towardsSecond, -1), allowance)),
    ];
    for (const name of join.units) units.delete(name);
    units.set(join.makes, { patches: new Set([...first.patches, ...second.patches]), layers });
  });
  return regionsOf([...units.values()].flatMap(({ layers }) => layers));
}

/** What is sewn together so far: its patches, and every flat stretch of fabric in it. */
interface Unit {
  readonly patches: ReadonlySet<number>;
  readonly layers: readonly Polygon[];
}

const foldedPatch = ({ sewLine, needed, finished }: PatchNeed, allowance: number): readonly Polygon[] =>
  sewLine === null ? [needed] : folded([needed], sewLine, pastSewLine(sewLine, finished), allowance);

/** Square to the seam, from the first unit to the second; read off an edge with one of each on either hand. */
function sideOfSecond({ edges, vertices }: Arrangement, join: Join, first: Unit, second: Unit): Point {
  for (const { line, left, right, from, to } of edges) {
    if (line !== join.line) continue;
    const onRight = first.patches.has(left) && second.patches.has(right);
    if (!onRight && !(first.patches.has(right) && second.patches.has(left))) continue;
    const leftHand = outward({ a: vertices[from]!.at, b: vertices[to]!.at });
    return onRight ? scale(leftHand, -1) : leftHand;
  }
  throw new Error(`units ${join.units.join(' and ')} do not touch on their seam`);
}

/** The layers, with what lies past the seam in the direction `past` turned over it. */
function folded(
  layers: readonly Polygon[],
  { a, b }: Segment,
  past: Point,
  allowance: number,
): readonly Polygon[] {
  // As far as tips of an allowance reach.
  const reach = MITRE_REACH * allowance;
  const on = scale(subtract(b, a), reach / distance(a, b));
  const [from, to, out] = [subtract(a, on), add(b, on), scale(past, reach)];
  const strip = convexHull([from, to, add(from, out), add(to, out)]);
  const over = reflectionAcross({ a, b });
  return layers.flatMap((layer) => {
    const turned = commonParts(layer, strip);
    if (turned.length === 0) return [layer];
    return [...partsOutside(layer, strip), ...turned.map((part) => transformPolygon(over, part))];
  });
}
