import type { Spot } from '../../../e2e/support/pdf.ts';

/** How a foundation may lie on the sheet, quarter turns clockwise. */
export const QUARTERS = [0, 1, 2, 3] as const;
export type Quarters = (typeof QUARTERS)[number];

/** The point turned clockwise, as seen with y down, by so many quarters about the origin. */
export function turnedBy({ x, y }: Spot, quarters: Quarters): Spot {
  return [
    { x, y },
    { x: -y, y: x },
    { x: -x, y: -y },
    { x: y, y: -x },
  ][quarters]!;
}
