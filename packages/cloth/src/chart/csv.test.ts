import { expect, it } from 'vitest';
import { half, piece } from '../../test/pieces.ts';
import type { Cloth } from '../types.ts';
import { cuttingChart } from './chart.ts';
import { chartCsv } from './csv.ts';

const cloth = (id: string, name: string): Cloth => ({ id, name, usableWidth: 40, directional: false });

// RFC 4180: CRLF after each line; quotes round what holds a comma, a quote or a line break, quotes inside doubled.
it('a chart as CSV is read the same by every spreadsheet', () => {
  const rows = cuttingChart(
    [
      piece('A1', 3.125, 2),
      piece('A2', 3.125, 2),
      half('B1', 2, 2, { cloth: 'sky' }),
      piece('A3', 50 / 25.4, 1, { cloth: 'formula' }),
      piece('A4', 1, 1, { cloth: null }),
    ],
    { bySection: true },
  );
  const cloths = [cloth('sea', 'Sea, "deep"\nblue'), cloth('sky', 'Sky'), cloth('formula', '=1+1')];
  expect(chartCsv(rows, cloths)).toBe(
    [
      'fabric,section,shape,width in,height in,cut,yields,patches',
      '"Sea, ""deep""\nblue",A,rectangle,3.125,2,2,2,A1 A2',
      'Sky,B,half-rectangle,2,2,1,1,B1',
      "'=1+1,A,rectangle,1.968504,1,1,1,A3",
      ',A,rectangle,1,1,1,1,A4',
      '',
    ].join('\r\n'),
  );
});
