import {
  buyText,
  type ChartRow,
  type ClothPlan,
  CUTTING_CAUTIONS,
  clothNames,
  layerCautions,
  noteText,
  sizeText,
  stripTexts,
  takesText,
} from '@seamwright/cloth';
import { formatLength, type LengthUnit } from '@seamwright/geometry';
import { oneLine } from '../complaint.ts';
import type { Drawings } from '../drawings.ts';
import { counted } from '../report-text.ts';
import type { CuttingOrder } from './order.ts';

/** The chart, the strips and what to buy, for a person at the cutting table; ends with a line break. */
export function cuttingText(
  { blocks, unit }: Drawings,
  order: CuttingOrder,
  rows: readonly ChartRow[],
  plans: readonly ClothPlan[],
): string {
  const nameOf = clothNames(plans.map(({ cloth }) => cloth));
  const { allowance, spare, turn, roundUpTo } = order.cut;
  const length = (inches: number) => formatLength(inches, unit);
  const lines = [
    `To cut for ${blocksText(
      blocks.map(({ name }) => name),
      order,
    )}`,
    `Seam allowance ${length(allowance)}. Pieces still cover when laid ${length(spare)}${turn === 0 ? '' : ` and turned ${turn}°`} off true; sizes are rounded up to ${length(roundUpTo)}.`,
    ...extrasLines(order, rows),
  ];
  for (const plan of plans) {
    const own = rows.filter(({ cloth }) => (cloth ?? '') === plan.cloth.id);
    lines.push(
      '',
      `${nameOf(plan.cloth.id) || 'Fabric'}, usable width ${length(plan.cloth.usableWidth)}`,
      ...chartLines(own, unit).map(indented),
      ...stripLines(plan, order.layers, unit).map(indented),
      ...buyingLines(plan, unit).map(indented),
      ...plan.notes.map((note) => indented(`To know: ${noteText(note, plan.cloth, unit)}.`)),
    );
  }
  const cautions = [...CUTTING_CAUTIONS, ...layerCautions(rows)];
  lines.push('', 'With the cutter in your hand', ...cautions.map(({ text }) => indented(text)));
  return `${lines.join('\n')}\n`;
}

function extrasLines({ plan: { shrinkage, safety } }: CuttingOrder, rows: readonly ChartRow[]): string[] {
  const added =
    shrinkage === 0 && safety === 0
      ? ['Nothing is added for the wash or for slips: --shrinkage and --safety do.']
      : [];
  // How a half-rectangle is meant: `CutShape`.
  const halves = rows.some(({ shape }) => shape === 'half-rectangle')
    ? [
        'A half-rectangle lies right side up with its first length across, and is cut from bottom left to top right.',
      ]
    : [];
  return [...added, ...halves];
}

const indented = (line: string): string => `  ${line}`;

function blocksText(names: readonly string[], { copies, mirrored }: CuttingOrder): string {
  const plain = copies > 0 ? [`${copies}`] : [];
  const turned = mirrored > 0 ? [`${mirrored} mirrored`] : [];
  const count = [...plain, ...turned].join(' and ');
  return oneLine(names.length === 1 ? `${count} of ${names[0]}` : `${count} of each: ${names.join(', ')}`);
}

function chartLines(rows: readonly ChartRow[], unit: LengthUnit): string[] {
  const withSection = rows.some(({ section }) => section !== undefined);
  const cells = rows.map(({ section = '', shape, width, height, cut, yields, pieces }) => [
    ...(withSection ? [section] : []),
    `${cut}`,
    sizeText(width, height, unit),
    shape,
    pieces.join(', ') + (shape === 'half-rectangle' ? ` (${counted(yields, 'triangle', 'triangles')})` : ''),
  ]);
  const head = [...(withSection ? ['section'] : []), 'cut', 'size', 'shape', 'for'];
  return table([head, ...cells]).map(oneLineKeepingSpaces);
}

function stripLines(plan: ClothPlan, layers: number, unit: LengthUnit): string[] {
  const steps = stripTexts(plan, layers, unit);
  if (steps.length === 0) return [];
  const lines = steps.flatMap(({ strips, cuts }) => [strips, ...cuts.map(indented)]);
  return [
    `Strips across the fabric, cut in ${counted(layers, 'layer', 'layers')} at a time:`,
    ...lines.map(indented),
  ];
}

const buyingLines = (plan: ClothPlan, unit: LengthUnit): string[] => [
  takesText(plan, unit),
  buyText(plan, unit),
];

/** Columns under one another, numbers and words alike to the left. */
function table(rows: readonly (readonly string[])[]): string[] {
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
  return rows.map((row) =>
    row
      .map((cell, i) => cell.padEnd(widths[i]!))
      .join('  ')
      .trimEnd(),
  );
}

/** Names come from files: no control characters, while the columns stay. */
const oneLineKeepingSpaces = (line: string): string => line.replace(/[\p{Cc}\p{Zl}\p{Zp}]/gu, ' ');
