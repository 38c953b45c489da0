import type { Arrangement } from '@seamwright/arrangement';
import type { SewingPlan } from '@seamwright/sewing';

/** A place where fabric of one patch lies under a lighter one and may be seen through it. */
export interface ShowThrough {
  /** The lighter patch, by its index; it is sewn on later. */
  readonly patch: number;
  /** The darker patches whose allowances lie under it, and the edges of the arrangement along which they do. */
  readonly under: readonly { readonly patch: number; readonly edges: readonly number[] }[];
}

/**
 * Where dark allowances lie under lighter patches. In foundation piecing both allowances of a seam lie under the patch that
 * is sewn on later, so that is decided by the piecing order; the order's costs count the same patches (`showThrough`).
 * In working order. Joins are not looked at: the maker presses them to the darker side.
 *
 * @param lightnessOf a patch's lightness from 0, dark, to 1, light; undefined where it is not known
 * @param least how much lighter the patch must be
 */
export function showThrough(
  { edges, patches }: Arrangement,
  plan: Pick<SewingPlan, 'sections'>,
  lightnessOf: (patch: number) => number | undefined,
  least = 0,
): readonly ShowThrough[] {
  return plan.sections.flatMap(({ order }) => {
    const place = new Map(order.map((patch, k) => [patch, k]));
    return order.flatMap((patch, k): ShowThrough[] => {
      const lightness = lightnessOf(patch);
      if (lightness === undefined) return [];
      const under = new Map<number, number[]>();
      for (const edge of patches[patch]!.border) {
        const { left, right } = edges[edge]!;
        const neighbour = left === patch ? right : left;
        const before = place.get(neighbour);
        const other = before === undefined || before > k ? undefined : lightnessOf(neighbour);
        if (other === undefined || lightness - other <= least) continue;
        under.set(neighbour, [...(under.get(neighbour) ?? []), edge]);
      }
      const found = [...under].map(([neighbour, along]) => ({ patch: neighbour, edges: along }));
      return found.length === 0 ? [] : [{ patch, under: found }];
    });
  });
}
