import { type CutRules, LAYERS, PLAIN_RULES, type PlanRules, USUAL_CUTS } from '@seamwright/cloth';
import { ALLOWANCE_RANGE, ok, type Result, SIZE_RANGE } from '@seamwright/geometry';
import type { Call, Option } from '../call.ts';
import { OptionReader } from '../option-reader.ts';
import { type AnswerForm, FORM_OPTIONS, readForm } from './form.ts';
import { ANY_LENGTH, type CutSizes, PIECE_OPTIONS, readPieces } from './piece-options.ts';

export const CUTTING_OPTIONS: readonly Option[] = [
  ...FORM_OPTIONS,
  { name: 'block', value: 'NAME', says: 'only the block of that name; all unless you say otherwise' },
  { name: 'colourway', value: 'NAME', says: 'the colourway to cut; the first unless you say otherwise' },
  {
    name: 'copies',
    value: 'N',
    says: 'how many of each block are sewn, or for each block how many, such as\n4,0,2; 1 unless you say otherwise',
  },
  { name: 'mirrored', value: 'N', says: 'how many of its mirror image are sewn beside them, likewise' },
  { name: 'width', value: 'W', says: 'the finished width of the block; as drawn unless you say otherwise' },
  { name: 'allowance', value: 'A', says: 'the seam allowance; 1/4in unless you say otherwise' },
  ...PIECE_OPTIONS,
  { name: 'by-section', says: 'chart each section on its own' },
  {
    name: 'usable-width',
    value: 'U',
    says: 'the usable width of fabrics that do not say their own; 40in unless\nyou say otherwise',
  },
  {
    name: 'trim',
    says: 'cut pieces from higher strips, too, and trim them: less fabric,\nmore cuts',
  },
  { name: 'layers', value: 'N', says: 'how many layers are cut at once; 2 unless you say otherwise' },
  {
    name: 'shrinkage',
    value: 'P',
    says: 'what the wash takes of the length, such as 5%; 0 unless you say\notherwise',
  },
  {
    name: 'safety',
    value: 'P',
    says: 'what is bought beyond the need, such as 10%; 0 unless you say\notherwise',
  },
  { name: 'quarter-yards', says: 'buy whole quarters of a yard, not eighths' },
  { name: 'more-on-the-line', says: 'buy 1/8 yd or 10 cm more where the need is exactly what is bought' },
  { name: 'spare-of-largest', says: 'cut one more of the largest size of each fabric' },
];

/** What was asked for, read and checked. */
export interface CuttingOrder extends AnswerForm {
  readonly file: string;
  readonly block: string | undefined;
  readonly colourway: string | undefined;
  /** One number for all blocks, or one for each. */
  readonly copies: readonly number[];
  readonly mirrored: readonly number[];
  readonly width: number | undefined;
  readonly bySection: boolean;
  readonly layers: number;
  readonly cut: CutRules;
  readonly plan: PlanRules;
}

/** As it was asked for: the usual step of sizes depends on the file's unit. */
export interface AskedOrder extends Omit<CuttingOrder, 'cut'> {
  readonly cut: CutSizes & Pick<CutRules, 'allowance'>;
}

/** Pieces of more blocks than this are a slip of the finger. */
const MOST_COPIES = 10_000;

export function readCuttingOrder(call: Call): Result<AskedOrder> {
  const read = new OptionReader(call, 'cutting');
  const file = read.oneFile();
  const order: AskedOrder = {
    file,
    ...readForm(read, file),
    block: read.text('block'),
    colourway: read.text('colourway'),
    copies: read.counts('copies', 1, MOST_COPIES),
    mirrored: read.counts('mirrored', 0, MOST_COPIES),
    width: read.length('width', undefined, SIZE_RANGE),
    bySection: read.has('by-section'),
    layers: read.count('layers', LAYERS.usual, MOST_COPIES),
    cut: {
      allowance: read.length('allowance', USUAL_CUTS.allowance, ALLOWANCE_RANGE),
      ...readPieces(read),
    },
    plan: {
      ...PLAIN_RULES,
      usableWidth: read.length('usable-width', PLAIN_RULES.usableWidth, ANY_LENGTH),
      trim: read.has('trim'),
      shrinkage: read.part('shrinkage'),
      safety: read.part('safety'),
      partsOfYard: read.has('quarter-yards') ? 4 : PLAIN_RULES.partsOfYard,
      moreOnTheLine: read.has('more-on-the-line'),
      spareOfLargest: read.has('spare-of-largest'),
    },
  };
  if ([...order.copies, ...order.mirrored].every((count) => count === 0))
    read.wrong('No block is sewn', 'Give --copies of 1 or more');
  if (order.layers < LAYERS.least || order.layers > LAYERS.most)
    read.wrong(
      `--layers ${order.layers} is not how fabric is cut`,
      `Choose from ${LAYERS.least} to ${LAYERS.most}`,
    );
  return read.problem ?? ok(order);
}
