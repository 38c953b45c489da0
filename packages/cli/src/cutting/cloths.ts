import type { PatchRecord } from '@seamwright/arrangement';
import { asCloth, type Cloth } from '@seamwright/cloth';
import { fail, ok, type Result } from '@seamwright/geometry';
import { fabricIn } from '@seamwright/pattern';
import type { Drawings } from '../drawings.ts';
import type { CuttingOrder } from './order.ts';

export interface Dressed {
  readonly cloths: readonly Cloth[];
  /** The id of a patch's fabric; null where none is chosen. */
  readonly fabricOf: (record: PatchRecord | undefined) => string | null;
}

/** The pattern's fabrics as they are cut, and which patch is cut from which in the colourway that is asked for. */
export function clothsOf(
  { fabrics, colourways }: Drawings,
  { colourway: wanted, plan }: CuttingOrder,
): Result<Dressed> {
  const index = colourways.findIndex(({ name }) => name.toLowerCase() === wanted?.toLowerCase());
  if (wanted !== undefined && index < 0)
    return fail(
      `There is no colourway "${wanted}"`,
      '',
      colourways.length === 0
        ? 'Leave --colourway out: there is one only'
        : `Choose one of: ${colourways.map(({ name }) => name).join(', ')}`,
    );
  // The first one is what the patches say themselves.
  const key = index > 0 ? colourways[index]!.id : null;
  return ok({
    cloths: fabrics.map((fabric) => asCloth(fabric, plan.usableWidth)),
    fabricOf: (record) => (record === undefined ? undefined : fabricIn(record, key)) ?? null,
  });
}
