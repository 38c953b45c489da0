import type { Block, Fabric, Pattern } from '../pattern.ts';
import type { Picture } from './tracing.ts';

/** The pictures of a pattern, each once: those under its blocks, then those of its fabrics. */
export function picturesOf({ blocks, fabrics = [] }: Pattern): readonly Picture[] {
  const held = [...blocks.map(({ tracing }) => tracing), ...fabrics.map(({ swatch }) => swatch)];
  return [...new Set(held.flatMap((holder) => (holder === undefined ? [] : [holder.picture])))];
}

/**
 * The pattern with other pictures; what has none, and what keeps its own, stays the same object.
 *
 * @param exchanged blocks and fabrics whose pictures were exchanged before: documents that share them go on sharing them
 */
export function withPictures(
  pattern: Pattern,
  other: (picture: Picture) => Picture,
  exchanged: WeakMap<Block | Fabric, Block | Fabric> = new WeakMap(),
): Pattern {
  const once =
    <Holder extends Block | Fabric>(exchange: (holder: Holder) => Holder) =>
    (holder: Holder): Holder => {
      const known = exchanged.get(holder) ?? exchange(holder);
      exchanged.set(holder, known);
      return known as Holder;
    };
  const blocks = changed(
    pattern.blocks,
    once((block) => withPicture(block, 'tracing', other)),
  );
  const fabrics = changed(
    pattern.fabrics ?? NONE,
    once((fabric) => withPicture(fabric, 'swatch', other)),
  );
  if (blocks === pattern.blocks && fabrics === (pattern.fabrics ?? NONE)) return pattern;
  return { ...pattern, ...(pattern.fabrics !== undefined && { fabrics }), blocks };
}

const NONE: readonly Fabric[] = [];

/** The list with each item changed; the same list where all stay. */
function changed<T>(items: readonly T[], change: (item: T) => T): readonly T[] {
  const after = items.map(change);
  return after.every((item, i) => item === items[i]) ? items : after;
}

function withPicture<Field extends string, Holder extends { readonly [F in Field]?: { picture: Picture } }>(
  holder: Holder,
  field: Field,
  other: (picture: Picture) => Picture,
): Holder {
  const held = holder[field];
  if (held === undefined) return holder;
  const picture = other(held.picture);
  return picture === held.picture ? holder : { ...holder, [field]: { ...held, picture } };
}

/** Characters that the pictures of a pattern take in its file. */
export const pictureData = (pattern: Pattern): number =>
  picturesOf(pattern).reduce((sum, { data }) => sum + data.length, 0);
