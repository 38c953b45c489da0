import { type CutRules, LAYERS, PLAIN_RULES, type PlanRules, USUAL_CUTS } from '@seamwright/cloth';
import {
  ALLOWANCE_RANGE,
  fail,
  type LengthRange,
  ok,
  parseLength,
  type Result,
  SIZE_RANGE,
} from '@seamwright/geometry';
import type { Call, Option } from '../call.ts';
import { badCall } from '../complaint.ts';
import { type AnswerForm, FORM_OPTIONS, readForm } from './form.ts';

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
  {
    name: 'spare',
    value: 'S',
    says: 'how far off a piece may be laid and still cover; 1/4in unless\nyou say otherwise',
  },
  {
    name: 'turn',
    value: 'T',
    says: 'degrees by which it may be turned at the same time; 0 unless you say\notherwise',
  },
  {
    name: 'round-up-to',
    value: 'R',
    says: 'what sizes are rounded up to, such as 1/8in or 5mm; 1/4in unless you\nsay otherwise',
  },
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

/** Pieces of more blocks than this are a slip of the finger. */
const MOST_COPIES = 10_000;

/** Any length at all: what uses it says what is wrong with 0. */
const ANY: LengthRange = { least: 0, most: 1000 };

export function readCuttingOrder(call: Call): Result<CuttingOrder> {
  const bad = (what: string, remedy?: string) => badCall('cutting', what, remedy);
  const [file, ...others] = call.files;
  if (file === undefined) return bad('No FILE is given');
  if (others.length > 0) return bad('More than one FILE is given', 'Give one at a time');
  const answer = readForm(call, file);
  if (!answer.ok) return answer;

  const read = new Options(call);
  const order: CuttingOrder = {
    file,
    ...answer.value,
    block: call.text('block'),
    colourway: call.text('colourway'),
    copies: read.counts('copies', 1),
    mirrored: read.counts('mirrored', 0),
    width: call.text('width') === undefined ? undefined : read.length('width', 0, SIZE_RANGE),
    bySection: call.has('by-section'),
    layers: read.count('layers', LAYERS.usual),
    cut: {
      allowance: read.length('allowance', USUAL_CUTS.allowance, ALLOWANCE_RANGE),
      spare: read.length('spare', USUAL_CUTS.spare, ALLOWANCE_RANGE),
      turn: read.number('turn', USUAL_CUTS.turn),
      roundUpTo: read.length('round-up-to', USUAL_CUTS.roundUpTo, ANY),
    },
    plan: {
      ...PLAIN_RULES,
      usableWidth: read.length('usable-width', PLAIN_RULES.usableWidth, ANY),
      trim: call.has('trim'),
      shrinkage: read.part('shrinkage'),
      safety: read.part('safety'),
      partsOfYard: call.has('quarter-yards') ? 4 : PLAIN_RULES.partsOfYard,
      moreOnTheLine: call.has('more-on-the-line'),
      spareOfLargest: call.has('spare-of-largest'),
    },
  };
  if (read.problem !== null) return read.problem;
  if ([...order.copies, ...order.mirrored].every((count) => count === 0))
    return bad('No block is sewn', 'Give --copies of 1 or more');
  if (order.layers < LAYERS.least || order.layers > LAYERS.most)
    return bad(
      `--layers ${order.layers} is not how fabric is cut`,
      `Choose from ${LAYERS.least} to ${LAYERS.most}`,
    );
  return ok(order);
}

/** Reads the values of options one after the other and keeps the first thing that is wrong. */
class Options {
  problem: ReturnType<typeof fail> | null = null;

  constructor(private readonly call: Call) {}

  length(name: string, usual: number, range: LengthRange): number {
    const text = this.call.text(name);
    if (text === undefined) return usual;
    const read = parseLength(text, 'in', range);
    if (read.ok) return read.value;
    return this.wrong(fail(`--${name}: ${read.problem.what}`, '', read.problem.remedy));
  }

  count(name: string, usual: number): number {
    const text = this.call.text(name);
    return text === undefined ? usual : this.countOf(name, text);
  }

  /** `4`, or `4,0,2`. */
  counts(name: string, usual: number): readonly number[] {
    const texts = this.call.text(name)?.split(',');
    return texts?.map((text) => this.countOf(name, text.trim())) ?? [usual];
  }

  private countOf(name: string, text: string): number {
    if (/^\d+$/.test(text) && Number(text) <= MOST_COPIES) return Number(text);
    return this.wrong(
      fail(`--${name} ${text} is no whole number up to ${MOST_COPIES}`, '', 'Give one, such as 4'),
    );
  }

  number(name: string, usual: number): number {
    const text = this.call.text(name);
    if (text === undefined) return usual;
    if (/^\d+(\.\d+)?$/.test(text)) return Number(text);
    return this.wrong(fail(`--${name} ${text} is no number`, '', 'Give one, such as 3'));
  }

  /** A part of the whole: `5%`, `5` and `5 %` are 0.05. */
  part(name: string): number {
    const text = this.call.text(name);
    if (text === undefined) return 0;
    const percent = /^(-?\d+(?:\.\d+)?) ?%?$/.exec(text)?.[1];
    if (percent !== undefined) return Number(percent) / 100;
    return this.wrong(fail(`--${name} ${text} is no percentage`, '', 'Give one, such as 5%'));
  }

  private wrong(problem: ReturnType<typeof fail>): number {
    this.problem ??= problem;
    return Number.NaN;
  }
}
