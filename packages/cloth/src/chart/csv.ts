import type { ChartRow, Cloth } from '../types.ts';
import { clothNames, tidy } from './report.ts';

const HEAD = ['fabric', 'section', 'shape', 'width in', 'height in', 'cut', 'yields', 'patches'];

/**
 * A chart as comma-separated values (RFC 4180: lines end with CRLF, what holds commas, quotes or line breaks is quoted),
 * a line for each row under one of names. Sizes are inches as decimals.
 *
 * Words that a spreadsheet would take for a formula get an apostrophe before them, as names come from other people's files.
 */
export function chartCsv(rows: readonly ChartRow[], cloths: readonly Cloth[]): string {
  const nameOf = clothNames(cloths);
  const lines = rows.map(({ cloth, section = '', shape, width, height, cut, yields, pieces }) => [
    harmless(nameOf(cloth)),
    harmless(section),
    shape,
    decimal(width),
    decimal(height),
    `${cut}`,
    `${yields}`,
    harmless(pieces.join(' ')),
  ]);
  return [HEAD, ...lines].map((cells) => `${cells.map(quoted).join(',')}\r\n`).join('');
}

const quoted = (cell: string): string => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

const harmless = (words: string): string => (/^[=+\-@\t\r]/.test(words) ? `'${words}` : words);

const decimal = (inches: number): string => `${tidy(inches)}`;
