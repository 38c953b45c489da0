import { extname } from 'node:path';
import type { Option } from '../call.ts';
import type { OptionReader } from '../option-reader.ts';
import { PAGE_OPTIONS, type PageOrder, readPage } from '../page-options.ts';
import { isSameFile } from '../write-files.ts';

export const FORM_OPTIONS: readonly Option[] = [
  { name: 'json', says: 'print the cutting report as JSON' },
  { name: 'csv', says: 'print the chart as comma-separated values' },
  { name: 'out', value: 'F.pdf', says: 'write the chart as pages to print' },
  ...PAGE_OPTIONS,
];

/** In which form the answer is wanted. */
export interface AnswerForm extends PageOrder {
  readonly form: 'text' | 'json' | 'csv' | 'pdf';
  /** The file of pages that is written, of the form `pdf`. */
  readonly out: string | undefined;
}

/** Options that say in which form the answer is wanted: one of them, or none for text. */
const FORMS = ['json', 'csv', 'out'] as const;

export function readForm(read: OptionReader, file: string): AnswerForm {
  const out = read.text('out');
  const forms = FORMS.filter((name) => (name === 'out' ? out !== undefined : read.has(name)));
  if (forms.length > 1) read.wrong(`Both --${forms[0]} and --${forms[1]} are given`, 'Choose one');
  const [form] = forms;
  if (out !== undefined && extname(out).toLowerCase() !== '.pdf')
    read.wrong(`--out ${out} does not end in .pdf`, 'Name it so');
  if (out !== undefined && isSameFile(out, file))
    read.wrong('--out is the FILE itself', 'Choose another name');
  const stray = PAGE_OPTIONS.find(({ name }) => read.text(name) !== undefined);
  if (out === undefined && stray !== undefined)
    read.wrong(`--${stray.name} is for pages, and none are written`, 'Name the file of the pages by --out');
  return { form: form === undefined ? 'text' : form === 'out' ? 'pdf' : form, out, ...readPage(read) };
}
