import { formatLength, type LengthUnit } from '@seamwright/geometry';
import type { BuyingRules } from '../buying/buying.ts';
import type { ChartRow, CutRules } from '../types.ts';
import { shapeName } from './words.ts';

/** What is said of a whole chart. */

/** How many of a block are cut for. */
export interface CountedBlock {
  readonly name: string;
  readonly copies: number;
  readonly mirrored: number;
  /** Its finished size, in words. */
  readonly size?: string;
}

/**
 * `8 of Lantern`, `2 and 1 mirrored of each: Lantern, Lighthouse`, `4 of Lantern, 1 of Lighthouse`: what a chart is for.
 *
 * @param colourway the name of the one whose fabrics are cut; undefined where there is but one
 */
export function blocksText(blocks: readonly CountedBlock[], colourway?: string): string {
  const counts = countsText(blocks);
  return colourway === undefined ? counts : `${counts}, from the fabrics of “${colourway}”`;
}

function countsText(blocks: readonly CountedBlock[]): string {
  const texts = blocks.map(({ name, size, ...counts }) => ({
    count: countText(counts),
    name: size === undefined ? name : `${name} at ${size}`,
  }));
  const [first, ...others] = texts;
  if (first !== undefined && others.length > 0 && others.every(({ count }) => count === first.count))
    return `${first.count} of each: ${texts.map(({ name }) => name).join(', ')}`;
  return texts.map(({ count, name }) => `${count} of ${name}`).join(', ');
}

function countText({ copies, mirrored }: Pick<CountedBlock, 'copies' | 'mirrored'>): string {
  const plain = copies > 0 ? [`${copies}`] : [];
  const turned = mirrored > 0 ? [`${mirrored} mirrored`] : [];
  return [...plain, ...turned].join(' and ');
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

/** How halves are meant (`CutShape`), a sentence for each kind that is cut. */
export function halvesTexts(rows: readonly ChartRow[]): readonly string[] {
  const names = new Set(rows.map(shapeName));
  return [
    ...(names.has('half-square') ? ['A half-square is a square cut corner to corner.'] : []),
    ...(names.has('half-rectangle')
      ? [
          'A half-rectangle lies right side up with its first length across, and is cut from bottom left to top right.',
        ]
      : []),
  ];
}
