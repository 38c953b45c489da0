import { formatLength, type LengthUnit } from '@seamwright/geometry';

/** `6 × 6 in`: the unit once, after both. Inches. */
export function sizeText(
  { width, height }: { readonly width: number; readonly height: number },
  unit: LengthUnit,
): string {
  const both = [width, height].map((side) => formatLength(side, unit));
  return `${both[0]!.slice(0, -unit.length - 1)} × ${both[1]}`;
}
