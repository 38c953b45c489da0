import { MM_PER_INCH, POINTS_PER_INCH } from '@seamwright/geometry';
import type { PaperName } from './model.ts';

export const POINTS_PER_MM = POINTS_PER_INCH / MM_PER_INCH;

export interface Paper {
  readonly name: PaperName;
  /** As people call it. */
  readonly label: string;
  /** Points. */
  readonly width: number;
  readonly height: number;
  /** The same in the unit by which the paper is defined, as SVG's `width` and `height` take it. */
  readonly trueWidth: string;
  readonly trueHeight: string;
}

/** Letter: ANSI/ASME Y14.1, 8.5 × 11 in. A4: ISO 216, 210 × 297 mm. */
export const PAPERS: Readonly<Record<PaperName, Paper>> = {
  letter: {
    name: 'letter',
    label: 'Letter',
    width: 8.5 * POINTS_PER_INCH,
    height: 11 * POINTS_PER_INCH,
    trueWidth: '8.5in',
    trueHeight: '11in',
  },
  a4: {
    name: 'a4',
    label: 'A4',
    width: 210 * POINTS_PER_MM,
    height: 297 * POINTS_PER_MM,
    trueWidth: '210mm',
    trueHeight: '297mm',
  },
};
