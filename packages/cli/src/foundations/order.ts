import { ALLOWANCE_RANGE, ok, type Result } from '@seamwright/geometry';
import {
  type FoundationJob,
  GAP_RANGE,
  OVERLAP_RANGE,
  USUAL_ALLOWANCE,
  USUAL_GAP,
  USUAL_OVERLAP,
} from '@seamwright/pages';
import type { Call, Option } from '../call.ts';
import { type CutSizes, PIECE_OPTIONS, readPieces } from '../cutting/piece-options.ts';
import { OptionReader } from '../option-reader.ts';
import { OUT_OPTION, type OutOrder, PAGE_OPTIONS, readOut, readPage } from '../page-options.ts';
import { PRINTER_OPTION, readPrinter } from '../printer-option.ts';
import { readSizes, SIZE_OPTIONS, type SizeOrder } from '../size-options.ts';

/** Sheets of paper that nobody prints without having been asked: two packs. */
export const MANY_SHEETS = 1000;

export const FOUNDATION_OPTIONS: readonly Option[] = [
  OUT_OPTION,
  { name: 'block', value: 'NAME', says: 'only the block of that name; all blocks unless you say otherwise' },
  ...SIZE_OPTIONS,
  { name: 'allowance', value: 'A', says: 'the seam allowance; 1/4in unless you say otherwise' },
  ...PAGE_OPTIONS,
  PRINTER_OPTION,
  {
    name: 'gap',
    value: 'G',
    says: 'room between foundations, for scissors; 1/4in unless you say\notherwise',
  },
  { name: 'keep-upright', says: 'turn no foundation: all lie along the grain of what they are\nprinted on' },
  {
    name: 'fill-sheets',
    says: 'where several are to be printed of a foundation, put several on a\nsheet, so that less paper is printed',
  },
  { name: 'fewest-sheets', says: 'look longer for fewer sheets: up to half a minute where\nthere are many' },
  {
    name: 'overlap',
    value: 'O',
    says: 'by how much the parts of a foundation larger than a sheet show the\nsame; 1/2in unless you say otherwise',
  },
  {
    name: 'ink',
    value: 'INK',
    says: 'dark, or light for sheets that are sewn in, washed away or\ntranslucent',
  },
  { name: 'seam-lengths', says: 'write the lengths of seam lines beside them' },
  { name: 'fabrics', says: 'name the fabric of each patch; a print with an up has an arrow' },
  { name: 'colourway', value: 'NAME', says: 'whose fabrics these are; the first unless you say otherwise' },
  {
    name: 'cut-sizes',
    says: 'say beside each patch what to cut for it, as "cutting" does with the\nsame three options:',
  },
  ...PIECE_OPTIONS,
  {
    name: 'partial-seams',
    says: 'allow partial seams where straight ones do not suffice; a pattern may\nallow them itself',
  },
  {
    name: 'share-templates',
    says: 'one foundation for sections that are turned copies of one another,\nwhich says how many to print; mirrored copies share one of their own',
  },
  { name: 'yes', says: `write them even if that is more than ${MANY_SHEETS} sheets to print` },
];

/** What is asked of the pages, whichever block is on them; what is left out is as pages have it usually. */
type PageWishes = Pick<
  FoundationJob,
  | 'paper'
  | 'margins'
  | 'printer'
  | 'allowance'
  | 'gap'
  | 'overlap'
  | 'keepUpright'
  | 'effort'
  | 'fillSheets'
  | 'ink'
  | 'seamLengths'
  | 'shareTemplates'
>;

/** What was asked for, read and checked. */
export interface FoundationOrder extends OutOrder, SizeOrder {
  readonly file: string;
  readonly block: string | undefined;
  readonly pages: PageWishes;
  /** Whether patches say from which fabric they are. */
  readonly fabrics: boolean;
  readonly colourway: string | undefined;
  /** By what is cut, where that is said. */
  readonly cutSizes: CutSizes | null;
  readonly partialSeams: boolean;
  /** Whether any number of sheets is all right. */
  readonly yes: boolean;
}

export function readFoundationOrder(call: Call): Result<FoundationOrder> {
  const read = new OptionReader(call, 'foundations');
  const file = read.oneFile();
  const [fabrics, cutSizes] = [read.has('fabrics'), read.has('cut-sizes')];
  const order: FoundationOrder = {
    file,
    ...readOut(read, file),
    block: read.text('block'),
    pages: {
      ...readPage(read),
      ...readPrinter(read),
      allowance: read.length('allowance', USUAL_ALLOWANCE, ALLOWANCE_RANGE),
      gap: read.length('gap', USUAL_GAP, GAP_RANGE),
      overlap: read.length('overlap', USUAL_OVERLAP, OVERLAP_RANGE),
      keepUpright: read.has('keep-upright'),
      fillSheets: read.has('fill-sheets'),
      effort: read.has('fewest-sheets') ? 'thorough' : 'quick',
      ink: read.word('ink', ['dark', 'light']),
      seamLengths: read.has('seam-lengths'),
      shareTemplates: read.has('share-templates'),
    },
    ...readSizes(read),
    fabrics,
    colourway: read.text('colourway'),
    cutSizes: cutSizes ? readPieces(read) : null,
    partialSeams: read.has('partial-seams'),
    yes: read.has('yes'),
  };
  const stray = cutSizes ? undefined : PIECE_OPTIONS.find(({ name }) => read.text(name) !== undefined);
  if (stray !== undefined)
    read.wrong(`--${stray.name} is for sizes to cut, and none are written`, 'Give --cut-sizes, too');
  if (order.colourway !== undefined && !fabrics && !cutSizes)
    read.wrong(
      '--colourway is for fabrics, and nothing is said of them',
      'Give --fabrics or --cut-sizes, too',
    );
  return read.problem ?? ok(order);
}
