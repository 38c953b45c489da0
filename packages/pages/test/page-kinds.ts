import { sentence } from '@seamwright/geometry';
import type { DrawnPage, Spot } from '../../../e2e/support/pdf.ts';
import { type CheckPageJob, checkPage, type PagePlan, type PaperChoice, type Printer } from '../src/index.ts';
import { boat, lantern, pinwheel, type Unusual, usual, wharf, windmill } from './blocks.ts';
import { chartJob, chartLaid, cloth } from './charts.ts';
import { laid } from './laid.ts';
import { templateJob, templatesLaid } from './templates-laid.ts';

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

/** A printer that shrinks, and not alike in both directions. */
const HARBOUR: Printer = { name: 'Harbour inkjet', across: 0.973, down: 0.989 };

/** One kind of page. */
export interface PageKind {
  readonly kind: string;
  readonly lay: () => PagePlan | Promise<PagePlan>;
  /** What is true once this printer has made it; left out where it is true in the file. */
  readonly printer?: Printer;
  /** Whether there are foundations or templates on it, each with its outline and its cutting line. */
  readonly outlines: boolean;
  /** Whether anything on it is of true size, so that it has the check squares. */
  readonly squares: boolean;
}

/** Each kind of page; on the papers that are used most, all that can stand on one, and all that is printed beside foundations. */
export function pageKinds({ name, paper, width, height }: KnownPaper): readonly PageKind[] {
  const of = (kind: string, lay: PageKind['lay'], more: Partial<PageKind> = {}): PageKind => ({
    kind,
    lay,
    outlines: true,
    squares: true,
    ...more,
  });
  const job = (more: Unusual): Unusual => ({ paper, ...more });
  const shorter = Math.min(width, height) / 72;
  const margins = { top: 0.5, right: 0.3, bottom: 0.4, left: 0.6 };
  const kinds = [
    of('several foundations', () => laid(usual(pinwheel(2.5), 'Pinwheel', job({ copies: 4 })))),
    of('slanting lines', () =>
      laid(usual(boat(), 'Paper boat', job({ scale: 0.5, allowance: 0.375, margins }))),
    ),
    of('one foundation, lying or in parts', () =>
      laid(usual(wharf(), 'Wharf', job({ scale: (shorter - 0.2) / 9 }))),
    ),
    of('a foundation in parts', () =>
      laid(usual(lantern(shorter + 3), 'Lantern', job({ margins, overlap: 0.75 }))),
    ),
  ];
  if (name !== 'Letter' && name !== 'A4') return kinds;
  const unit = name === 'A4' ? 'cm' : 'in';
  const checkPageOf = (more: Partial<CheckPageJob>) => () => {
    const made = checkPage({ paper, unit, ...more });
    if (!made.ok) throw new Error(sentence(made.problem));
    return made.value.plan;
  };
  const cloths = [
    cloth('sea', 'Sea blue'),
    cloth('sail', 'Sail white', { directional: true }),
    cloth('lamp', 'Lamp yellow', { straight: true }),
  ];
  const blocks = [
    ['Paper boat', boat()],
    ['Pinwheel', pinwheel(6)],
    ['Wharf', wharf()],
  ] as const;
  return [
    ...kinds,
    of('all that can be said, in light ink, mirrored too, in two sizes', () =>
      laid(usual(pinwheel(3), 'Pinwheel', job(everything))),
    ),
    of('partial seams', () => laid(usual(windmill(4.5), 'Windmill', job({ seamLengths: true })))),
    of(
      'foundations corrected for a printer, whole and in parts',
      () => laid(usual(lantern(2), 'Lantern', { paper, unit, sizes: CORRECTED, printer: HARBOUR })),
      { printer: HARBOUR },
    ),
    of('the check page', checkPageOf({}), { outlines: false }),
    of('the check page, corrected', checkPageOf({ printer: HARBOUR }), {
      printer: HARBOUR,
      outlines: false,
    }),
    of('templates, one in parts', () => templatesLaid(templateJob(boat(), { paper, unit, scale: 2.2 }))),
    of(
      'windows, corrected',
      () => templatesLaid(templateJob(pinwheel(4), { kind: 'window', paper, unit, printer: HARBOUR })),
      { printer: HARBOUR },
    ),
    of(
      'a cutting chart',
      async () => chartLaid(await chartJob({ blocks, cloths, copies: 12 }, { paper, unit })),
      {
        outlines: false,
        squares: false,
      },
    ),
  ];
}

/** One size that fits on a sheet, one that does not. */
const CORRECTED = [
  { scale: 1, copies: 1 },
  { scale: 5, copies: 1 },
];

/** What the printer makes of a page that is corrected for it. */
export const printedBy =
  ({ across, down }: Pick<Printer, 'across' | 'down'> = { across: 1, down: 1 }) =>
  ({ x, y }: Spot): Spot => ({ x: x * across, y: y * down });

/** A page as it comes out of the printer that it is corrected for. */
export const onPaper = (page: DrawnPage, printer: Printer | undefined): DrawnPage => ({
  ...page,
  paths: page.paths.map((path) => ({ ...path, points: path.points.map(printedBy(printer)) })),
});
