import { extname } from 'node:path';
import { type Margins, PAPERS, type PaperChoice, type PaperName } from '@seamwright/pages';
import type { Option } from './call.ts';
import type { OptionReader } from './option-reader.ts';
import { isSameFile } from './write-files.ts';

/** What every command that makes pages takes. */
export const PAGE_OPTIONS: readonly Option[] = [
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
];

/** The file of true-size pages. */
export const OUT_OPTION: Option = {
  name: 'out',
  value: 'F',
  says: 'the file to write: F.pdf, or F.svg for one SVG file a page\n(F.svg, F-2.svg, F-3.svg …)',
};

export interface PageOrder {
  readonly paper: PaperChoice;
  readonly margins?: Margins;
}

/** Where true-size pages go, and as what. */
export interface OutOrder {
  readonly out: string;
  readonly form: 'pdf' | 'svg';
}

export function readPage(read: OptionReader): PageOrder {
  const paper = paperOf(read);
  const margins = marginsOf(read);
  return { paper, ...(margins !== undefined && { margins }) };
}

/** @param input the file that is read, which no page may take the place of */
export function readOut(read: OptionReader, input?: string): OutOrder {
  const out = read.text('out');
  const form = extname(out ?? '')
    .toLowerCase()
    .slice(1);
  if (out === undefined) read.wrong('No --out is given', 'Name the file to write, such as --out block.pdf');
  else if (form !== 'pdf' && form !== 'svg')
    read.wrong(`--out ${out} ends neither in .pdf nor in .svg`, 'Name it so');
  else if (input !== undefined && isSameFile(out, input))
    read.wrong('--out is the FILE itself', 'Choose another name');
  return { out: out ?? '', form: form === 'svg' ? 'svg' : 'pdf' };
}

function paperOf(read: OptionReader): PaperChoice {
  const name = read.text('paper')?.toLowerCase() ?? 'letter';
  if (isPaper(name)) return name;
  const [, width, height] = /^(.*\d.*)[x×](.*\d.*)$/.exec(name) ?? [];
  if (width !== undefined && height !== undefined)
    return { width: read.lengthIn('paper', width), height: read.lengthIn('paper', height) };
  const names = Object.keys(PAPERS).join(', ');
  read.wrong(`There is no paper "${name}"`, `Choose ${names} or a size such as 13x19`);
  return 'letter';
}

const isPaper = (name: string): name is PaperName => Object.hasOwn(PAPERS, name);

function marginsOf(read: OptionReader): Margins | undefined {
  const text = read.text('margins');
  if (text === undefined) return undefined;
  const lengths = text.split(',').map((part) => read.lengthIn('margins', part));
  const [top, right = top, bottom = top, left = top] = lengths as [number, number?, number?, number?];
  if (lengths.length !== 1 && lengths.length !== 4)
    read.wrong(
      `--margins ${text} is neither one length nor four`,
      'Give one for all edges, or top, right, bottom, left with commas between',
    );
  return { top, right, bottom, left };
}
