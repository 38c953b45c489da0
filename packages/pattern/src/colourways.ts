import type { PatchRecord } from '@seamwright/arrangement';
import type { Block, Colourway, Fabric, Pattern } from './pattern.ts';

/**
 * The choices of fabrics of a pattern. Every function gives a new document, or the same one where nothing changes.
 *
 * A colourway is asked for by its id; the first one, also of a pattern that lists none, is null.
 */
export type ColourwayKey = string | null;

const NO_COLOURWAYS: readonly Colourway[] = [];
const NO_FABRICS: readonly Fabric[] = [];

/** The colourway's key: null for the first, and for one that the pattern does not have. */
export function colourwayKey({ colourways = NO_COLOURWAYS }: Pattern, id: string | null): ColourwayKey {
  return colourways.slice(1).some((colourway) => colourway.id === id) ? id : null;
}

/** The id of the fabric that a patch is cut from in a colourway; undefined where none is chosen. */
export const fabricIn = ({ fabric, fabrics }: PatchRecord, colourway: ColourwayKey): string | undefined =>
  colourway === null ? fabric : fabrics?.[colourway];

/** The patch cut from another fabric in that colourway; null: from none. */
export function cutFrom(record: PatchRecord, colourway: ColourwayKey, fabric: string | null): PatchRecord {
  if ((fabricIn(record, colourway) ?? null) === fabric) return record;
  if (colourway === null) {
    const { fabric: _, ...rest } = record;
    return fabric === null ? rest : { ...rest, fabric };
  }
  const { fabrics = {}, ...rest } = record;
  const { [colourway]: _, ...others } = fabrics;
  return withFabrics(rest, fabric === null ? others : { ...others, [colourway]: fabric });
}

/** No empty list of fabrics is kept: records that say the same are the same in the file. */
function withFabrics(
  record: Omit<PatchRecord, 'fabrics'>,
  fabrics: Readonly<Record<string, string>>,
): PatchRecord {
  return Object.keys(fabrics).length === 0 ? record : { ...record, fabrics };
}

/**
 * A further colourway that begins as a copy of another one.
 *
 * @param like the one that is copied
 * @param first how the pattern's only colourway is listed from now on; not looked at where several are
 */
export function addColourway(
  pattern: Pattern,
  added: Colourway,
  like: ColourwayKey,
  first: Colourway,
): Pattern {
  return {
    ...changePatches(pattern, (record) => cutFrom(record, added.id, fabricIn(record, like) ?? null)),
    colourways: [...(pattern.colourways ?? [first]), added],
  };
}

export function renameColourway(pattern: Pattern, id: string, name: string): Pattern {
  const { colourways = NO_COLOURWAYS } = pattern;
  if (!colourways.some((one) => one.id === id && one.name !== name)) return pattern;
  return { ...pattern, colourways: colourways.map((one) => (one.id === id ? { ...one, name } : one)) };
}

/** Without a colourway. When the first goes, the second takes its place. One that is not there changes nothing. */
export function removeColourway(pattern: Pattern, id: string): Pattern {
  const { colourways: listed = NO_COLOURWAYS, ...bare } = pattern;
  const colourways = listed.filter((colourway) => colourway.id !== id);
  if (colourways.length === listed.length) return pattern;
  const follower = listed[0]!.id === id ? (listed[1]?.id ?? null) : null;
  const emptied = follower ?? id;
  const rest = changePatches(bare, (record) => {
    const first = follower === null ? record : cutFrom(record, null, fabricIn(record, follower) ?? null);
    return cutFrom(first, emptied, null);
  });
  return colourways.length > 1 ? { ...rest, colourways } : rest;
}

/**
 * Other fabrics in the place of those that a colourway has, on all blocks: two swapped, or all shuffled.
 *
 * @param instead by the id of a fabric the id of the one that takes its place
 */
export const exchangeFabrics = (
  pattern: Pattern,
  colourway: ColourwayKey,
  instead: ReadonlyMap<string, string>,
): Pattern =>
  changePatches(pattern, (record) => {
    const before = fabricIn(record, colourway);
    const after = before === undefined ? undefined : instead.get(before);
    return after === undefined ? record : cutFrom(record, colourway, after);
  });

/** Without a fabric: patches that were cut from it, in whatever colourway, are cut from none. */
export function removeFabric(pattern: Pattern, id: string): Pattern {
  const { fabrics = NO_FABRICS, colourways = NO_COLOURWAYS } = pattern;
  const keys: ColourwayKey[] = [null, ...colourways.slice(1).map((colourway) => colourway.id)];
  const bare = changePatches(pattern, (record) =>
    keys.reduce((left, key) => (fabricIn(left, key) === id ? cutFrom(left, key, null) : left), record),
  );
  return { ...bare, fabrics: fabrics.filter((fabric) => fabric.id !== id) };
}

/** The pattern with its patches changed; blocks of which none changes stay the same objects. */
function changePatches(pattern: Pattern, change: (record: PatchRecord) => PatchRecord): Pattern {
  const blocks = pattern.blocks.map((block): Block => {
    const patches = block.patches.map(change);
    return patches.every((record, i) => record === block.patches[i]) ? block : { ...block, patches };
  });
  return blocks.every((block, i) => block === pattern.blocks[i]) ? pattern : { ...pattern, blocks };
}
