import type { RepairPrice } from '@seamwright/arrangement';
import type { LengthUnit } from '@seamwright/geometry';
import { counted } from '../ui/plural.ts';
import { roughLength } from '../ui/rough-length.ts';

/** Inches: less seam than this is none. */
const LITTLE = 1 / 32;

/** What a repair costs: `Adds 1 patch and 2⅜ in of seam.` */
export function priceWords({ patches, seamLength }: RepairPrice, unit: LengthUnit): string {
  const more = [
    ...(patches > 0 ? [counted(patches, 'patch', 'patches')] : []),
    ...(seamLength > LITTLE ? [`${roughLength(seamLength, unit)} of seam`] : []),
  ];
  const fewer = [
    ...(patches < 0 ? [counted(-patches, 'patch', 'patches')] : []),
    ...(seamLength < -LITTLE ? [`${roughLength(-seamLength, unit)} of seam`] : []),
  ];
  if (more.length === 0 && fewer.length === 0) return 'Adds no patch and no seam.';
  if (fewer.length === 0) return `Adds ${more.join(' and ')}.`;
  if (more.length === 0) return `Takes ${fewer.join(' and ')} away.`;
  return `Adds ${more.join(' and ')}, takes ${fewer.join(' and ')} away.`;
}
