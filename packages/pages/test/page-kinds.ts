import type { FoundationJob, PaperChoice } from '../src/index.ts';
import { boat, lantern, pinwheel, type Unusual, usual, wharf, windmill } from './blocks.ts';

/** A paper and its sides in points, by whoever defines it. */
export interface KnownPaper {
  readonly name: string;
  readonly paper: PaperChoice;
  readonly width: number;
  readonly height: number;
}

/** ISO 32000-1, table 30: 72 points are an inch. Addendum to NBS Circular 572: an inch is 25.4 mm. */
const inches = (size: number): number => size * 72;
const millimetres = (size: number): number => (size / 25.4) * 72;

export const KNOWN_PAPERS: readonly KnownPaper[] = [
  // ANSI/ASME Y14.1, size A: 8.5 × 11 in; size B: 11 × 17 in.
  { name: 'Letter', paper: 'letter', width: inches(8.5), height: inches(11) },
  { name: 'Tabloid', paper: 'tabloid', width: inches(11), height: inches(17) },
  // No standard for drawings has it: common practice.
  { name: 'Legal', paper: 'legal', width: inches(8.5), height: inches(14) },
  // ISO 216: 210 × 297 and 297 × 420 mm.
  { name: 'A4', paper: 'a4', width: millimetres(210), height: millimetres(297) },
  { name: 'A3', paper: 'a3', width: millimetres(297), height: millimetres(420) },
  // As was asked for.
  {
    name: 'a sheet of 7.3 × 9.13 in',
    paper: { width: 7.3, height: 9.13 },
    width: inches(7.3),
    height: inches(9.13),
  },
  { name: 'a sheet of 14 × 8 in', paper: { width: 14, height: 8 }, width: inches(14), height: inches(8) },
];

const everything: Unusual = {
  sizes: [
    { scale: 1, copies: 2, mirrored: 1 },
    { scale: 1.4, copies: 1 },
  ],
  fabrics: Array.from({ length: 8 }, (_, i) => ({ letter: 'ab'[i % 2]!, name: 'Sail', upright: i > 1 })),
  cutting: {
    rules: { spare: 1 / 4, turn: 0, roundUpTo: 1 / 4 },
    cloths: Array.from({ length: 8 }, () => null),
  },
  seamLengths: true,
  ink: 'light',
};

/** A job for each kind of page; on the papers that are used most, for all that can stand on one, too. */
export function pageKinds({
  name,
  paper,
  width,
  height,
}: KnownPaper): readonly (readonly [kind: string, job: FoundationJob])[] {
  const job = (more: Unusual): Unusual => ({ paper, ...more });
  const shorter = Math.min(width, height) / 72;
  const margins = { top: 0.5, right: 0.3, bottom: 0.4, left: 0.6 };
  return [
    ['several foundations', usual(pinwheel(2.5), 'Pinwheel', job({ copies: 4 }))],
    ['slanting lines', usual(boat(), 'Paper boat', job({ scale: 0.5, allowance: 0.375, margins }))],
    ['one foundation, lying or in parts', usual(wharf(), 'Wharf', job({ scale: (shorter - 0.2) / 9 }))],
    ['a foundation in parts', usual(lantern(shorter + 3), 'Lantern', job({ margins, overlap: 0.75 }))],
    ...(name === 'Letter' || name === 'A4'
      ? ([
          [
            'all that can be said, in light ink, mirrored too, in two sizes',
            usual(pinwheel(3), 'Pinwheel', job(everything)),
          ],
          ['partial seams', usual(windmill(4.5), 'Windmill', job({ seamLengths: true }))],
        ] as const)
      : []),
  ];
}
