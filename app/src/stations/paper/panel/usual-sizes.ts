import { type LengthUnit, MM_PER_INCH, SIZE_RANGE } from '@seamwright/geometry';
import type { FinishedSize } from '@seamwright/pages';

/** Inches: the widths of blocks that are asked for most, by the unit in which they are asked for (common practice). */
export const USUAL_WIDTHS: Readonly<Record<LengthUnit, readonly number[]>> = {
  in: [3, 4.5, 6, 9, 12],
  cm: [7.5, 10, 15, 20, 30].map((centimetres) => (10 * centimetres) / MM_PER_INCH),
};

interface Block {
  /** As drawn, inches. */
  readonly width: number;
}

/** Whether the size makes the block so wide; widths are typed, so what is meant to be alike is alike to a thousandth. */
const isWide = ({ scale }: FinishedSize, { width }: Block, inches: number): boolean =>
  Math.round(scale * width * 1000) === Math.round(inches * 1000);

/** The sizes with those of {@link USUAL_WIDTHS} that are not there, for as many blocks as the first; smallest first. */
export function withUsualSizes(
  sizes: readonly FinishedSize[],
  block: Block,
  unit: LengthUnit,
): readonly FinishedSize[] {
  const missing = USUAL_WIDTHS[unit].filter((width) => !sizes.some((size) => isWide(size, block, width)));
  const added = missing.map((width) => ({ ...sizes[0]!, scale: width / block.width }));
  return added.length === 0 ? sizes : [...sizes, ...added].sort((a, b) => a.scale - b.scale);
}

/** A size to begin another line of the list with: the next larger usual one, or twice the largest. */
export function nextSize(sizes: readonly FinishedSize[], block: Block, unit: LengthUnit): FinishedSize {
  const largest = Math.max(...sizes.map(({ scale }) => scale));
  const larger = USUAL_WIDTHS[unit].find((width) => width > largest * block.width);
  const fit = larger === undefined ? largest * 2 : larger / block.width;
  return { copies: 1, scale: fit * block.width > SIZE_RANGE.most ? largest / 2 : fit };
}
