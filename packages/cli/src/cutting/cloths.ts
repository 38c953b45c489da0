import type { PatchRecord } from '@seamwright/arrangement';
import { asCloth, type Cloth } from '@seamwright/cloth';
import { fail, ok, type Result } from '@seamwright/geometry';
import { fabricIn } from '@seamwright/pattern';
import type { Drawings } from '../drawings.ts';

export interface Dressed {
  readonly cloths: readonly Cloth[];
  /** The id of a patch's fabric; null where none is chosen. */
  readonly fabricOf: (record: PatchRecord | undefined) => string | null;
}

/** How the pattern's blocks are to be dressed. */
interface Dressing {
  /** The first one where it is left out. */
  readonly colourway: string | undefined;
  /** Inches: of fabrics that do not say their own. */
  readonly usableWidth: number;
}

/** The pattern's fabrics as they are cut, and which patch is cut from which in the colourway that is asked for. */
export function clothsOf(
  { fabrics, colourways }: Drawings,
  { colourway: wanted, usableWidth }: Dressing,
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
    cloths: fabrics.map((fabric) => asCloth(fabric, usableWidth)),
    fabricOf: (record) => (record === undefined ? undefined : fabricIn(record, key)) ?? null,
  });
}
