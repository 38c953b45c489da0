import {
  formatCutLength,
  formatInches,
  formatLength,
  type LengthUnit,
  SAME_COORDINATE,
} from '@seamwright/geometry';
import { leftOver, type Purchase, STRAIGHTENING } from '../buying/buying.ts';
import type { ClothPlan } from '../buying/plan-cloths.ts';
import { METRIC_FAT_QUARTER, type SheetPlan } from '../buying/plan-sheets.ts';
import type { SubCut } from '../buying/plan-strips.ts';
import { CHUNK_EXTRA, type Waste } from '../placing/waste.ts';
import type { ChartRow } from '../types.ts';
import { batchSteps } from './batch.ts';

/** Plans as a maker reads them. Lengths are written in the unit that is asked for; fabric is bought in yards or metres. */

/** What a row cuts, as the trade calls it: two half-square triangles come from a square. */
export function shapeName({ shape, width, height }: Pick<ChartRow, 'shape' | 'width' | 'height'>): string {
  const whole = Math.abs(width - height) <= SAME_COORDINATE ? 'square' : 'rectangle';
  return shape === 'rectangle' ? whole : `half-${whole}`;
}

/**
 * How a half-rectangle's whole is laid and cut (`CutShape` has the convention); nothing for rectangles. Of squares, both
 * ways give the same halves.
 */
export function halvedText(row: Omit<ChartRow, 'cloth' | 'pieces'>, unit: LengthUnit): string | null {
  const { shape, width, cut, yields } = row;
  if (shape === 'rectangle') return null;
  const how =
    shapeName(row) === 'half-square'
      ? 'halved corner to corner'
      : `right side up, ${formatCutLength(width, unit)} across: halved from bottom left to top right`;
  return yields < 2 * cut ? `${how}; one half is left over` : how;
}

/** How much of what is cut is trimmed off, beside what plain chunks would lose. */
export function wasteText({ wastePercent, chunkWastePercent }: Waste, unit: LengthUnit): string {
  const few = chunkWastePercent < wastePercent ? ', but some would not be sure to cover' : '';
  const plain = `of plain chunks, ${formatLength(CHUNK_EXTRA, unit)} larger than each patch both ways, it would be ${chunkWastePercent.toFixed(0)} %${few}`;
  return `${wastePercent.toFixed(0)} % of the pieces is trimmed off; ${plain}.`;
}

/** `2 strips`, `1 strip`. */
export const counted = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;

/** Strips of one height, and what is cut from them, line by line. */
export interface StripText {
  readonly strips: string;
  readonly cuts: readonly string[];
}

/** The strips of a fabric in the order in which they are cut; none where the layers make no sense. */
export function stripTexts(
  { plan, cloth }: ClothPlan,
  layers: number,
  unit: LengthUnit,
): readonly StripText[] {
  const steps = batchSteps(plan.strips, layers);
  if (!steps.ok) return [];
  return steps.value.map(({ height, strips, groups }) => ({
    strips: `${counted(strips, 'strip')} of ${formatCutLength(height, unit)}`,
    cuts: groups.map(({ strips: some, cuts, leftover, runs }) => {
      const from = some === strips ? (some === 1 ? '' : 'each: ') : `${some} of them: `;
      const pieces = cuts.map((cut) => subCutText(cut, unit)).join(', ');
      const stacked = Math.min(some, layers);
      const all = some === 1 ? '' : ` in all${stacked === 1 ? '' : `, ${stacked} layers at a time`}`;
      return `${from}${pieces}; ${leftoverText(leftover, cloth.usableWidth, unit)}; ${counted(runs, 'cut')}${all}`;
    }),
  }));
}

const subCutText = ({ width, height, count }: SubCut, unit: LengthUnit): string =>
  `${count} of ${formatCutLength(width, unit)}${height === undefined ? '' : ` trimmed to ${formatCutLength(height, unit)}`}`;

const leftoverText = (leftover: number, usableWidth: number, unit: LengthUnit): string =>
  leftover < usableWidth / 1000 ? 'nothing left over' : `${formatLength(leftover, unit)} left over`;

/** How much fabric the strips take, and whether others of their kind might take less. */
export function takesText({ plan, wastePercent }: ClothPlan, unit: LengthUnit): string {
  const { trim, lengthInches, atLeast, provenLeast } = plan;
  const kind = trim ? 'with their pieces side by side' : 'each as high as all its pieces';
  const proof = provenLeast
    ? 'the least for such strips'
    : `and no such strips less than ${formatLength(atLeast, unit)}`;
  return `The strips, ${kind}, take ${formatCutLength(lengthInches, unit)} of fabric, ${proof}; ${wastePercent.toFixed(0)} % of it is waste.`;
}

/** What is bought, and how many fat quarters would do instead. */
export function buyText({ purchase, sheets }: ClothPlan, unit: LengthUnit): string {
  const instead = sheets
    // By name: plans may have come from a worker, as copies.
    .filter(({ sheet }) => (sheet.name === METRIC_FAT_QUARTER.name) === (unit === 'cm'))
    .flatMap(sheetText);
  const [yards, metres] = [`${formatInches(purchase.buyYards)} yd`, `${purchase.buyMetres} m`];
  const length = unit === 'cm' ? `${metres} (${yards})` : `${yards} (${metres})`;
  const [last, ...others] = [length, ...instead].reverse();
  const buy = others.length === 0 ? `Buy ${last}.` : `Buy ${others.reverse().join(', ')} or ${last}.`;
  return `${buy}${scarceText(purchase, unit === 'cm' ? metres : yards, unit)}`;
}

/** Said where hardly anything of what is bought is left to cut its end straight; nothing where enough is, or none is bought. */
function scarceText(purchase: Purchase, bought: string, unit: LengthUnit): string {
  const left = leftOver(purchase, unit);
  if (purchase.takeInches === 0 || left >= STRAIGHTENING[unit]) return '';
  return left <= SAME_COORDINATE
    ? ` ${bought} is just what the strips take: nothing is left to straighten a crooked cut.`
    : ` Of ${bought}, less than ${formatLength(STRAIGHTENING[unit], unit)} is left to straighten a crooked cut.`;
}

/** Nothing where a piece is larger than the sheet. */
function sheetText({ sheet, sheets, atLeast, provenLeast, tooLarge }: SheetPlan): readonly string[] {
  if (tooLarge.length > 0) return [];
  const count = counted(sheets.length, sheet.name);
  return [provenLeast ? count : `${count} (${atLeast} might do)`];
}
