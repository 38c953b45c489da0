import { formatLength, type LengthUnit } from '@seamwright/geometry';
import type { BuyingRules } from '../buying/buying.ts';
import type { ChartRow, CutRules } from '../types.ts';

/** What is said of a whole chart. */

/** `8 of Lantern`, `2 and 1 mirrored of each: Lantern, Lighthouse`: what a chart is for. */
export function blocksText(
  names: readonly string[],
  { copies, mirrored }: { readonly copies: number; readonly mirrored: number },
): string {
  const plain = copies > 0 ? [`${copies}`] : [];
  const turned = mirrored > 0 ? [`${mirrored} mirrored`] : [];
  const count = [...plain, ...turned].join(' and ');
  return names.length === 1 ? `${count} of ${names[0]}` : `${count} of each: ${names.join(', ')}`;
}

/** What the sizes of a chart hold, and how far off a piece may be laid. */
export function rulesText({ allowance, spare, turn, roundUpTo }: CutRules, unit: LengthUnit): string {
  const length = (inches: number) => formatLength(inches, unit);
  const turned = turn === 0 ? '' : ` and turned ${turn}°`;
  return `Seam allowance ${length(allowance)}. Pieces still cover when laid ${length(spare)}${turned} off true; sizes are rounded up to ${length(roundUpTo)}.`;
}

/** What is bought beyond what the strips take. */
export function addedText({ shrinkage, safety }: Pick<BuyingRules, 'shrinkage' | 'safety'>): string {
  const percent = (part: number) => `${Number((100 * part).toFixed(1))} %`;
  const added = [
    ...(shrinkage === 0 ? [] : [`${percent(shrinkage)} that the wash takes`]),
    ...(safety === 0 ? [] : [`${percent(safety)} for slips`]),
  ];
  return added.length === 0
    ? 'Nothing is added for the wash or for slips.'
    : `What is bought has room for ${added.join(' and ')}.`;
}

/** How half-rectangles are meant (`CutShape`); null where none are cut. */
export const halvesText = (rows: readonly ChartRow[]): string | null =>
  rows.some(({ shape }) => shape === 'half-rectangle')
    ? 'A half-rectangle lies right side up with its first length across, and is cut from bottom left to top right.'
    : null;
