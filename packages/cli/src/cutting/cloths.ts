import type { PatchRecord } from '@seamwright/arrangement';
import type { Cloth } from '@seamwright/cloth';
import { fail, ok, type Result } from '@seamwright/geometry';
import { fabricIn } from '@seamwright/pattern';
import type { Drawings } from '../drawings.ts';
import type { CuttingOrder } from './order.ts';

export interface Dressed {
  readonly cloths: readonly Cloth[];
  /** The fabric of a patch; null where none is chosen. */
  readonly clothOf: (record: PatchRecord | undefined) => Cloth | null;
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
  const cloths = fabrics.map(
    ({ id, name, width = plan.usableWidth, grain }): Cloth => ({
      id,
      name,
      usableWidth: width,
      directional: grain === 'one way',
      straight: grain === 'straight',
    }),
  );
  const byId = new Map(cloths.map((cloth) => [cloth.id, cloth]));
  return ok({
    cloths,
    clothOf: (record) => {
      const fabric = record === undefined ? undefined : fabricIn(record, key);
      return (fabric === undefined ? undefined : byId.get(fabric)) ?? null;
    },
  });
}
