import type { Arrangement } from '@seamwright/arrangement';
import { type Point, type Segment, scale } from '@seamwright/geometry';
import type { Join, SewingPlan } from '@seamwright/sewing';
import { outward } from '../placing/parts-outside.ts';
import { type PatchNeed, pastSewLine, patchNeeds } from '../sizes/patch-needs.ts';
import { type Fold, folded, type Layer } from './fold.ts';
import { type LayerRegion, regionsOf } from './layer-regions.ts';
import { OpenSeams } from './open-seams.ts';

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
 * - A partial join folds as far as it is sewn. What it leaves open is folded when it is closed: on either side all that lies
 *   there by then. Until then a seam that ends on the open stretch folds nothing beyond it.
 *
 * The regions do not overlap, and together are all that fabric covers.
 */
export function bulkMap(request: BulkRequest): readonly LayerRegion[] {
  const { arrangement, plan, allowance, scale: size = 1 } = request;
  const needs = new Map(patchNeeds(arrangement, plan, allowance, size).map((need) => [need.patch, need]));
  const units = new Map(
    plan.sections.map(({ letter, order }): [string, Unit] => {
      const layers = order.flatMap((patch) => foldedPatch(needs.get(patch)!, allowance));
      return [letter, { patches: new Set(order), layers }];
    }),
  );
  const open = new OpenSeams(arrangement);
  plan.joins.forEach((join, k) => {
    const [first, second] = join.units.map((name) => units.get(name)!) as [Unit, Unit];
    const towardsSecond = sideOfSecond(arrangement, join, first, second);
    const stops = join.open?.seam.a;
    const sewn = { a: join.seam.a, b: stops ?? join.seam.b };
    let layers = pressed(
      request,
      { join: k, seam: sewn, towardsSecond, goesOn: [true, stops === undefined] },
      [first.layers, second.layers],
      open.beyond(sewn),
    );
    if (join.open !== undefined) open.add({ ...join.open, join: k, line: join.line, towardsSecond });
    for (let one = open.close(k); one !== undefined; one = open.close(k)) {
      const onSecond = open.onSecond(one);
      const [here, there] = [false, true].map((side) =>
        layers.filter(({ patch }) => onSecond(patch) === side),
      );
      layers = pressed(request, { ...one, goesOn: [false, true] }, [here!, there!], open.beyond(one.seam));
    }
    for (const name of join.units) units.delete(name);
    units.set(join.makes, { patches: new Set([...first.patches, ...second.patches]), layers });
  });
  return regionsOf([...units.values()].flatMap(({ layers }) => layers.map(({ polygon }) => polygon)));
}

/** What is sewn together so far: its patches, and every flat stretch of fabric in it. */
interface Unit {
  readonly patches: ReadonlySet<number>;
  readonly layers: readonly Layer[];
}

const foldedPatch = (
  { patch, sewLine, needed, finished }: PatchNeed,
  allowance: number,
): readonly Layer[] => {
  const layer = { patch, polygon: needed };
  if (sewLine === null) return [layer];
  return folded([layer], {
    seam: sewLine,
    past: pastSewLine(sewLine, finished),
    goesOn: [true, true],
    allowance,
  });
};

/** A stretch of a seam that is sewn and pressed in one go, inches as drawn. */
interface SewnStretch extends Pick<Fold, 'goesOn'> {
  /** By its number in the plan, the join that it belongs to. */
  readonly join: number;
  readonly seam: Segment;
  readonly towardsSecond: Point;
}

/** Both sides of a stretch after it is pressed; patches of which `stays` are not folded with it. */
function pressed(
  { allowance, pressingOf, scale: size = 1 }: BulkRequest,
  { join, seam, towardsSecond, goesOn }: SewnStretch,
  [first, second]: readonly [readonly Layer[], readonly Layer[]],
  stays: (patch: number) => boolean,
): readonly Layer[] {
  const pressing = pressingOf(join);
  const fold = { seam: { a: scale(seam.a, size), b: scale(seam.b, size) }, goesOn, allowance };
  const over = (layers: readonly Layer[], past: Point) => [
    ...layers.filter(({ patch }) => stays(patch)),
    ...folded(
      layers.filter(({ patch }) => !stays(patch)),
      { ...fold, past },
    ),
  ];
  return [
    ...(pressing === 'second' ? first : over(first, towardsSecond)),
    ...(pressing === 'first' ? second : over(second, scale(towardsSecond, -1))),
  ];
}

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
