import type { Point } from '@seamwright/geometry';

const SECTORS = [
  'the right',
  'the lower right',
  'the bottom',
  'the lower left',
  'the left',
  'the upper left',
  'the top',
  'the upper right',
] as const;

/** The way in which a vector points, as one says it of a sheet on the table: `the left`, `the upper right`. */
export function towards({ x, y }: Point): string {
  const eighths = Math.round((Math.atan2(y, x) / Math.PI) * 4);
  return SECTORS[(eighths + 8) % 8]!;
}
