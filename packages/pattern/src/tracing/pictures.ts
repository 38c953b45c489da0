import type { Block, Pattern } from '../pattern.ts';
import type { Picture } from './tracing.ts';

/** The pictures of a pattern, each once, in the order of its blocks. */
export function picturesOf({ blocks }: Pattern): readonly Picture[] {
  return [...new Set(blocks.flatMap(({ tracing }) => (tracing === undefined ? [] : [tracing.picture])))];
}

/** The pattern with other pictures; blocks without one, and blocks whose picture stays, are the same objects. */
export function withPictures(pattern: Pattern, other: (picture: Picture) => Picture): Pattern {
  const blocks = pattern.blocks.map((block) => withPicture(block, other));
  return blocks.every((block, i) => block === pattern.blocks[i]) ? pattern : { ...pattern, blocks };
}

/** The block with another picture; one without, or whose picture stays, is the same object. */
export function withPicture(block: Block, other: (picture: Picture) => Picture): Block {
  if (block.tracing === undefined) return block;
  const picture = other(block.tracing.picture);
  return picture === block.tracing.picture ? block : { ...block, tracing: { ...block.tracing, picture } };
}

/** Characters that the pictures of a pattern take in its file. */
export const pictureData = (pattern: Pattern): number =>
  picturesOf(pattern).reduce((sum, { data }) => sum + data.length, 0);
