import {
  buyText,
  type ChartRow,
  type ClothPlan,
  CUTTING_CAUTIONS,
  clothNames,
  halvesTexts,
  layerCautions,
  noteText,
  rulesText,
  shapeName,
  stripTexts,
  takesText,
} from '@seamwright/cloth';
import { formatCutSize, formatLength, type LengthUnit } from '@seamwright/geometry';
import { oneLine } from '../complaint.ts';
import { counted } from '../report-text.ts';
import { type BlocksToCut, cutForText } from './blocks-to-cut.ts';
import type { CuttingOrder } from './order.ts';

/** The chart, the strips and what to buy, for a person at the cutting table; ends with a line break. */
export function cuttingText(
  toCut: BlocksToCut,
  order: CuttingOrder,
  rows: readonly ChartRow[],
  plans: readonly ClothPlan[],
): string {
  const { unit } = toCut;
  const nameOf = clothNames(plans.map(({ cloth }) => cloth));
  const length = (inches: number) => formatLength(inches, unit);
  const lines = [
    oneLine(`To cut for ${cutForText(toCut, order)}`),
    rulesText(order.cut, unit),
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

function extrasLines({ plan }: CuttingOrder, rows: readonly ChartRow[]): string[] {
  const { shrinkage, safety } = plan;
  const added =
    shrinkage === 0 && safety === 0
      ? ['Nothing is added for the wash or for slips: --shrinkage and --safety do.']
      : [];
  return [...added, ...halvesTexts(rows)];
}

const indented = (line: string): string => `  ${line}`;

function chartLines(rows: readonly ChartRow[], unit: LengthUnit): string[] {
  const withSection = rows.some(({ section }) => section !== undefined);
  const cells = rows.map((row) => {
    const { section = '', shape, width, height, cut, yields, pieces } = row;
    return [
      ...(withSection ? [section] : []),
      `${cut}`,
      formatCutSize(width, height, unit),
      shapeName(row),
      pieces.join(', ') +
        (shape === 'half-rectangle' ? ` (${counted(yields, 'triangle', 'triangles')})` : ''),
    ];
  });
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
