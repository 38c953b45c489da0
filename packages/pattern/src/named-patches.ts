import { patchesOfPin } from '@seamwright/arrangement';
import type { Block } from './pattern.ts';

/** The ids by which a block's pins and pressings name patches, also of patches that are gone. */
export const namedPatches = ({
  sewing,
  pressings = [],
}: Pick<Block, 'sewing' | 'pressings'>): readonly string[] => [
  ...(sewing?.pins ?? []).flatMap(patchesOfPin),
  ...pressings.flatMap(({ patches }) => patches),
];
