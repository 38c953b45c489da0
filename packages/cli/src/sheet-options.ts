import {
  ALLOWANCE_RANGE,
  fail,
  type LengthRange,
  ok,
  parseLength,
  type Result,
  SIZE_RANGE,
} from '@seamwright/geometry';
import { type Margins, PAPERS, type PaperChoice, type PaperName, type Printer } from '@seamwright/pages';
import type { Call, Option } from './call.ts';
import { badCall } from './complaint.ts';

/** What is asked of the sheets, the sizes and the counts. */
export interface SheetOrder {
  readonly paper: PaperChoice;
  readonly margins: Margins | undefined;
  readonly printer: Printer | undefined;
  /** One or more. */
  readonly sizes: readonly WantedSize[];
  readonly allowance: number | undefined;
  readonly copies: number;
  readonly mirrored: number;
}

/** A finished width, inches, or how many times as large as drawn. */
export type WantedSize =
  | { readonly width: number; readonly scale?: never }
  | { readonly scale: number; readonly width?: never };

export const SHEET_OPTIONS: readonly Option[] = [
  {
    name: 'paper',
    value: 'PAPER',
    says: 'letter (unless you say otherwise), legal, tabloid, a4, a3, or a size\nsuch as 13x19',
  },
  {
    name: 'margins',
    value: 'M',
    says: 'what is left blank at the edges: one length, or top, right, bottom,\nleft with commas between; 1/4in unless you say otherwise',
  },
  {
    name: 'printer',
    value: 'AxD',
    says: 'what the printer makes of a page across and down, such as\n97.3%x98.9%: the pages are corrected for it',
  },
  { name: 'width', value: 'W', says: 'the finished width of the block; as drawn unless you say otherwise' },
  {
    name: 'sizes',
    value: 'LIST',
    says: 'several finished widths in one go, such as "3,4 1/2,6", or from\n25% to 400% of the drawing',
  },
  { name: 'allowance', value: 'A', says: 'the seam allowance; 1/4in unless you say otherwise' },
  {
    name: 'copies',
    value: 'N',
    says: 'how many of the block are to be sewn, printed on each foundation;\n1 unless you say otherwise',
  },
  { name: 'mirrored', value: 'N', says: 'how many are to be sewn as its mirror image, beside the copies' },
];

/** The paper and the margins that are asked for, of a command that makes pages. */
export function readSheet(call: Call, command: string): Result<Pick<SheetOrder, 'paper' | 'margins'>> {
  const paper = paperOf(call.text('paper') ?? 'letter', command);
  if (!paper.ok) return paper;
  const margins = marginsOf(call.text('margins'), command);
  return margins.ok ? ok({ paper: paper.value, margins: margins.value }) : margins;
}

export function readSheetOrder(call: Call): Result<SheetOrder> {
  const sheet = readSheet(call, 'foundations');
  if (!sheet.ok) return sheet;
  const printer = printerOf(call.text('printer'));
  if (!printer.ok) return printer;
  const sizes = sizesOf(call);
  if (!sizes.ok) return sizes;
  const allowance = call.text('allowance');
  const seam = allowance === undefined ? ok(undefined) : lengthOf('allowance', allowance, ALLOWANCE_RANGE);
  if (!seam.ok) return seam;
  const copies = countOf(call, 'copies', 1, 'Give how many of the block are to be sewn');
  if (!copies.ok) return copies;
  const mirrored = countOf(call, 'mirrored', 0, 'Give how many of its mirror image are to be sewn');
  if (!mirrored.ok) return mirrored;
  return ok({
    ...sheet.value,
    printer: printer.value,
    sizes: sizes.value,
    allowance: seam.value,
    copies: copies.value,
    mirrored: mirrored.value,
  });
}

function paperOf(text: string, command: string): Result<PaperChoice> {
  const name = text.toLowerCase();
  if (isPaper(name)) return ok(name);
  const sides = /^(.*\d.*)[x×](.*\d.*)$/.exec(name);
  if (sides === null) {
    const names = Object.keys(PAPERS).join(', ');
    return badCall(command, `There is no paper "${name}"`, `Choose ${names} or a size such as 13x19`);
  }
  const width = lengthOf('paper', sides[1]!);
  if (!width.ok) return width;
  const height = lengthOf('paper', sides[2]!);
  return height.ok ? ok({ width: width.value, height: height.value }) : height;
}

const isPaper = (name: string): name is PaperName => Object.hasOwn(PAPERS, name);

function marginsOf(text: string | undefined, command: string): Result<Margins | undefined> {
  if (text === undefined) return ok(undefined);
  const lengths: number[] = [];
  for (const part of text.split(',')) {
    const length = lengthOf('margins', part);
    if (!length.ok) return length;
    lengths.push(length.value);
  }
  const [top, right = top, bottom = top, left = top] = lengths as [number, number?, number?, number?];
  if (lengths.length !== 1 && lengths.length !== 4)
    return badCall(
      command,
      `--margins ${text} is neither one length nor four`,
      'Give one for all edges, or top, right, bottom, left with commas between',
    );
  return ok({ top, right, bottom, left });
}

function printerOf(text: string | undefined): Result<Printer | undefined> {
  if (text === undefined) return ok(undefined);
  const found = /^\s*(\d+(?:\.\d+)?)\s*%?\s*[x×]\s*(\d+(?:\.\d+)?)\s*%?\s*$/i.exec(text);
  if (found === null)
    return badCall(
      'foundations',
      `--printer ${text} is not two percentages`,
      'Give what the printer makes of a page across and down, such as 97.3%x98.9%',
    );
  return ok({ name: '', across: Number(found[1]) / 100, down: Number(found[2]) / 100 });
}

/** Percentages of the drawing that are asked for; larger and smaller blocks are asked for by their width. */
const PERCENTAGES = { least: 25, most: 400 };

function sizesOf(call: Call): Result<readonly WantedSize[]> {
  const [width, list] = [call.text('width'), call.text('sizes')];
  if (width !== undefined && list !== undefined)
    return badCall('foundations', '--width and --sizes are both given', 'Give one of them');
  if (width !== undefined) {
    const one = lengthOf('width', width, SIZE_RANGE);
    return one.ok ? ok([{ width: one.value }]) : one;
  }
  if (list === undefined) return ok([{ scale: 1 }]);
  const sizes: WantedSize[] = [];
  for (const part of list.split(',')) {
    const percentage = /^\s*(\d+(?:\.\d+)?)\s*%\s*$/.exec(part)?.[1];
    if (percentage === undefined) {
      const one = lengthOf('sizes', part, SIZE_RANGE);
      if (!one.ok) return one;
      sizes.push({ width: one.value });
      continue;
    }
    const { least, most } = PERCENTAGES;
    if (Number(percentage) < least || Number(percentage) > most)
      return badCall(
        'foundations',
        `--sizes: ${percentage} % is out of bounds`,
        `Give ${least} to ${most} %, or a finished width`,
      );
    sizes.push({ scale: Number(percentage) / 100 });
  }
  return ok(sizes);
}

function countOf(call: Call, name: string, usual: number, remedy: string): Result<number> {
  const text = call.text(name) ?? `${usual}`;
  return /^\d+$/.test(text)
    ? ok(Number(text))
    : badCall('foundations', `--${name} ${text} is no whole number`, remedy);
}

function lengthOf(name: string, text: string, range?: LengthRange): Result<number> {
  const length = parseLength(text, 'in', range);
  return length.ok ? length : fail(`--${name}: ${length.problem.what}`, '', length.problem.remedy);
}
