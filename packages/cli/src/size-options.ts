import { SIZE_RANGE } from '@seamwright/geometry';
import type { Option } from './call.ts';
import type { OptionReader } from './option-reader.ts';

/** A finished width, inches, or how many times as large as drawn. */
export type WantedSize =
  | { readonly width: number; readonly scale?: never }
  | { readonly scale: number; readonly width?: never };

/** Which sizes of a block are wanted, and how many blocks. */
export interface SizeOrder {
  /** One or more. */
  readonly sizes: readonly WantedSize[];
  readonly copies: number;
  readonly mirrored: number;
}

export const SIZE_OPTIONS: readonly Option[] = [
  { name: 'width', value: 'W', says: 'the finished width of the block; as drawn unless you say otherwise' },
  {
    name: 'sizes',
    value: 'LIST',
    says: 'several finished widths in one go, such as "3,4 1/2,6", or from\n25% to 400% of the drawing',
  },
  {
    name: 'copies',
    value: 'N',
    says: 'how many of the block are to be sewn, printed on each foundation;\n1 unless you say otherwise',
  },
  { name: 'mirrored', value: 'N', says: 'how many are to be sewn as its mirror image, beside the copies' },
];

/** Percentages of the drawing that are asked for; larger and smaller blocks are asked for by their width. */
const PERCENTAGES = { least: 25, most: 400 };

export const readSizes = (read: OptionReader): SizeOrder => ({
  sizes: sizesOf(read),
  copies: read.count('copies', 1),
  mirrored: read.count('mirrored', 0),
});

function sizesOf(read: OptionReader): readonly WantedSize[] {
  const [width, list] = [read.text('width'), read.text('sizes')];
  if (width !== undefined && list !== undefined)
    read.wrong('--width and --sizes are both given', 'Give one of them');
  if (width !== undefined) return [{ width: read.lengthIn('width', width, SIZE_RANGE) }];
  return list === undefined ? [{ scale: 1 }] : list.split(',').map((part) => sizeOf(read, part));
}

function sizeOf(read: OptionReader, part: string): WantedSize {
  const percentage = /^\s*(\d+(?:\.\d+)?)\s*%\s*$/.exec(part)?.[1];
  if (percentage === undefined) return { width: read.lengthIn('sizes', part, SIZE_RANGE) };
  const { least, most } = PERCENTAGES;
  if (Number(percentage) < least || Number(percentage) > most)
    read.wrong(
      `--sizes: ${percentage} % is out of bounds`,
      `Give ${least} to ${most} %, or a finished width`,
    );
  return { scale: Number(percentage) / 100 };
}
