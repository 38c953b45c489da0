import type { PatchRecord } from '@seamwright/arrangement';
import { asCloth, type Cloth } from '@seamwright/cloth';
import { fail, ok, type Result } from '@seamwright/geometry';
import { type Colourway, fabricIn } from '@seamwright/pattern';
import { type Drawings, isCalled } from '../drawings.ts';

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

/** The colourway of that name, the first where none is asked for; undefined where there is no such one. */
export const colourwayFor = (
  colourways: readonly Colourway[],
  wanted: string | undefined,
): Colourway | undefined =>
  wanted === undefined ? colourways[0] : colourways.find(({ name }) => isCalled(wanted, name));

/** The pattern's fabrics as they are cut, and which patch is cut from which in the colourway that is asked for. */
export function clothsOf(
  { fabrics, colourways }: Drawings,
  { colourway: wanted, usableWidth }: Dressing,
): Result<Dressed> {
  const colourway = colourwayFor(colourways, wanted);
  if (wanted !== undefined && colourway === undefined)
    return fail(
      `There is no colourway "${wanted}"`,
      '',
      colourways.length === 0
        ? 'Leave --colourway out: there is one only'
        : `Choose one of: ${colourways.map(({ name }) => name).join(', ')}`,
    );
  // The first one is what the patches say themselves.
  const key = colourway === undefined || colourway === colourways[0] ? null : colourway.id;
  return ok({
    cloths: fabrics.map((fabric) => asCloth(fabric, usableWidth)),
    fabricOf: (record) => (record === undefined ? undefined : fabricIn(record, key)) ?? null,
  });
}
