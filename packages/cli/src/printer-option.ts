import type { Printer } from '@seamwright/pages';
import type { Option } from './call.ts';
import type { OptionReader } from './option-reader.ts';

export const PRINTER_OPTION: Option = {
  name: 'printer',
  value: 'AxD',
  says: 'what the printer makes of a page across and down, such as\n97.3%x98.9%: the pages are corrected for it',
};

export function readPrinter(read: OptionReader): { readonly printer?: Printer } {
  const text = read.text('printer');
  if (text === undefined) return {};
  const found = /^\s*(\d+(?:\.\d+)?)\s*%?\s*[x×]\s*(\d+(?:\.\d+)?)\s*%?\s*$/i.exec(text);
  if (found !== null)
    return { printer: { name: '', across: Number(found[1]) / 100, down: Number(found[2]) / 100 } };
  read.wrong(
    `--printer ${text} is not two percentages`,
    'Give what the printer makes of a page across and down, such as 97.3%x98.9%',
  );
  return {};
}
