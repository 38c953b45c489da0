import { describe, expect, test } from 'vitest';
import { hasPoppler } from '../../../e2e/support/pdf.ts';
import { writePdf } from '../src/index.ts';
import { house, usual } from './blocks.ts';
import { pageFonts } from './fonts.ts';
import { laid } from './laid.ts';
import { KNOWN_PAPERS } from './page-kinds.ts';
import { rasterOf, squaresIn } from './raster.ts';

const PER_INCH = 600;

describe.skipIf(!hasPoppler)('a page in dots, 600 to the inch', () => {
  test.each(KNOWN_PAPERS)(
    'on $name: its check squares measure 1 in and 50 mm to one dot',
    async ({ paper, width, height }) => {
      // A house has no square in it.
      const pdf = await writePdf(laid(usual(house(), 'Harbour house', { paper, scale: 0.5 })), pageFonts);
      const raster = rasterOf(pdf, 1, PER_INCH);
      // A page that ends within a dot has that dot.
      expect(Math.abs(raster.width - (width / 72) * PER_INCH)).toBeLessThanOrEqual(1);
      expect(Math.abs(raster.height - (height / 72) * PER_INCH)).toBeLessThanOrEqual(1);
      const squares = squaresIn(raster, PER_INCH / 2).toSorted((p, q) => p.width - q.width);
      expect(squares).toHaveLength(2);
      // 1 in = 25.4 mm: addendum to NBS Circular 572.
      [PER_INCH, (50 / 25.4) * PER_INCH].forEach((side, i) => {
        expect(Math.abs(squares[i]!.width - side)).toBeLessThanOrEqual(1);
        expect(Math.abs(squares[i]!.height - side)).toBeLessThanOrEqual(1);
      });
    },
  );
});
