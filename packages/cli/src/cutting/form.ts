import { extname } from 'node:path';
import { ok, type Result } from '@seamwright/geometry';
import type { Margins, PaperChoice } from '@seamwright/pages';
import type { Call, Option } from '../call.ts';
import { badCall } from '../complaint.ts';
import { readSheet, SHEET_OPTIONS } from '../sheet-options.ts';
import { isSameFile } from '../write-files.ts';

export const FORM_OPTIONS: readonly Option[] = [
  { name: 'json', says: 'print the cutting report as JSON' },
  { name: 'csv', says: 'print the chart as comma-separated values' },
  { name: 'out', value: 'F.pdf', says: 'write the chart as pages to print' },
  ...SHEET_OPTIONS.filter(({ name }) => name === 'paper' || name === 'margins'),
];

/** In which form the answer is wanted. */
export interface AnswerForm {
  readonly form: 'text' | 'json' | 'csv' | 'pdf';
  /** The file of pages that is written, of the form `pdf`. */
  readonly out: string | undefined;
  readonly paper: PaperChoice;
  readonly margins: Margins | undefined;
}

/** Options that say in which form the answer is wanted: one of them, or none for text. */
const FORMS = ['json', 'csv', 'out'] as const;

export function readForm(call: Call, file: string): Result<AnswerForm> {
  const bad = (what: string, remedy?: string) => badCall('cutting', what, remedy);
  const out = call.text('out');
  const forms = FORMS.filter((name) => (name === 'out' ? out !== undefined : call.has(name)));
  if (forms.length > 1) return bad(`Both --${forms[0]} and --${forms[1]} are given`, 'Choose one');
  const [form] = forms;
  if (out !== undefined && extname(out).toLowerCase() !== '.pdf')
    return bad(`--out ${out} does not end in .pdf`, 'Name it so');
  if (out !== undefined && isSameFile(out, file))
    return bad('--out is the FILE itself', 'Choose another name');
  const stray = ['paper', 'margins'].find((name) => call.text(name) !== undefined);
  if (out === undefined && stray !== undefined)
    return bad(`--${stray} is for pages, and none are written`, 'Name the file of the pages by --out');
  const sheet = readSheet(call, 'cutting');
  if (!sheet.ok) return sheet;
  return ok({ form: form === undefined ? 'text' : form === 'out' ? 'pdf' : form, out, ...sheet.value });
}
