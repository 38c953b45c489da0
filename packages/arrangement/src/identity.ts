import { contains, distance, type Point } from '@seamwright/geometry';
import { idsAfter, numberOfId } from './counted-ids.ts';
import type { Arrangement, Patch } from './types.ts';

/**
 * A patch as the document remembers it: enough to know it again in the next arrangement, and what the maker gave
 * it.
 */
export interface PatchRecord {
  /** Not used again for another patch of the block for as long as anything in the document names it. */
  readonly id: string;
  /** {@link Patch.signature} when it was last seen. */
  readonly signature: string;
  /** {@link Patch.heart} when it was last seen. */
  readonly at: Point;
  /** The maker's own words, e.g. `sail`; empty when none. */
  readonly note: string;
  /** The id of the fabric that it is cut from, in the pattern's first colourway; left out where the maker chose none. */
  readonly fabric?: string;
  /** The same in the other colourways, by their ids; left out where there are none. */
  readonly fabrics?: Readonly<Record<string, string>>;
}

/**
 * Knows the patches of a new arrangement again, so that each keeps its id and what the maker gave it.
 *
 * First by the lines round them: while lines move without changing who meets whom, these stay the same. Then by
 * place: a patch that was divided or grew goes on as the patch that holds its old heart. Where patches were merged,
 * the one that was given something (a note, a fabric) goes on, and of several the oldest: that of the lowest number.
 * What is left gets a new id, counted on from the highest that is borne or named.
 *
 * @param named ids that the document names patches by elsewhere, also of patches that are gone: none of them is given
 * to another patch
 * @returns one record for each patch, in the order of `arrangement.patches`
 */
export function carryPatches(
  records: readonly PatchRecord[],
  arrangement: Arrangement,
  named: readonly string[],
): PatchRecord[] {
  const { patches } = arrangement;
  const recordOf = new Map<number, PatchRecord>();
  const used = new Set<string>();
  const assign = (patch: Patch, record: PatchRecord) => {
    recordOf.set(patch.index, record);
    used.add(record.id);
  };

  const bySignature = new Map<string, PatchRecord[]>();
  for (const record of records) {
    bySignature.set(record.signature, [...(bySignature.get(record.signature) ?? []), record]);
  }
  const pairs = patches.flatMap((patch) =>
    (bySignature.get(patch.signature) ?? []).map((record) => ({ patch, record })),
  );
  pairs.sort((p, q) => distance(p.patch.heart, p.record.at) - distance(q.patch.heart, q.record.at));
  for (const { patch, record } of pairs) {
    if (!recordOf.has(patch.index) && !used.has(record.id)) assign(patch, record);
  }

  const left = records.filter((record) => !used.has(record.id));
  left.sort((p, q) => Number(isGiven(q)) - Number(isGiven(p)) || numberOfId(p.id) - numberOfId(q.id));
  for (const record of left) {
    const holder = patches.find(
      (patch) => !recordOf.has(patch.index) && contains(patch.polygon, record.at) !== 'outside',
    );
    if (holder !== undefined) assign(holder, record);
  }

  const nextId = idsAfter([...records.map(({ id }) => id), ...named]);
  return patches.map((patch) => {
    const known = recordOf.get(patch.index);
    return {
      id: known?.id ?? nextId('patch'),
      signature: patch.signature,
      at: patch.heart,
      ...giftsOf(known ?? NOTHING),
    };
  });
}

/** What the maker gave a patch. */
export type Gifts = Pick<PatchRecord, 'note' | 'fabric' | 'fabrics'>;

/** What the maker gave the patch; fields that are left out stay so. */
export const giftsOf = ({ note, fabric, fabrics }: Gifts): Gifts => ({
  note,
  ...(fabric === undefined ? {} : { fabric }),
  ...(fabrics === undefined ? {} : { fabrics }),
});

/** Whether the maker gave the patch anything. */
export const isGiven = ({ note, fabric, fabrics }: Gifts): boolean =>
  note !== '' || fabric !== undefined || fabrics !== undefined;

/** Whether both were given the same. */
export function sameGifts(one: Gifts, other: Gifts): boolean {
  const [a, b] = [one.fabrics ?? {}, other.fabrics ?? {}];
  return (
    one.note === other.note &&
    one.fabric === other.fabric &&
    Object.keys(a).length === Object.keys(b).length &&
    Object.entries(a).every(([colourway, fabric]) => b[colourway] === fabric)
  );
}

const NOTHING: Gifts = { note: '' };
