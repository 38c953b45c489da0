import type { Drawing } from '@seamwright/arrangement';
import { formatSize, type LengthUnit } from '@seamwright/geometry';
import { blockBounds } from '../canvas/bounds.ts';

/** A block's finished size as it is said: `8 × 10 in`, `20.32 × 25.4 cm`. */
export function sizeWords(drawing: Drawing, unit: LengthUnit): string {
  const { minX, minY, maxX, maxY } = blockBounds(drawing);
  return formatSize(maxX - minX, maxY - minY, unit);
}
