import { boundingBox } from '@seamwright/geometry';
import { describe, expect, test } from 'vitest';
import {
  type FoundationJob,
  type Mark,
  PAPERS,
  type PagePlan,
  printsOf,
  writePdf,
  writeSvg,
} from '../src/index.ts';
import { house, lantern, pinwheel, usual } from './blocks.ts';
import { pageFonts } from './fonts.ts';
import { laid } from './laid.ts';
import { openPdf } from './pdfjs.ts';

const outlineWidth = (marks: readonly Mark[], key: string, role: string): number => {
  const mark = marks.find((one) => one.section === key && one.role === role)!;
  const { minX, maxX } = boundingBox(mark.kind === 'path' ? mark.points : []);
  return (maxX - minX) / 72;
};

const several = (more: Partial<FoundationJob> = {}): FoundationJob =>
  usual(lantern(3), 'Lantern', {
    sizes: [
      { scale: 1, copies: 2 },
      { scale: 1.5, copies: 3, mirrored: 1 },
      { scale: 2, copies: 1 },
    ],
    ...more,
  });

describe('several finished sizes in one go', () => {
  test('each has its size, the same allowance, and a key of its own', () => {
    const plan = laid(several());
    const marks = plan.sheets.flatMap((sheet) => sheet.marks);
    const wanted = { A: 3, 'A-4.5in': 4.5, 'A-4.5in-mirrored': 4.5, 'A-6in': 6 };
    expect(plan.prints.map(({ key }) => key)).toEqual(Object.keys(wanted));
    for (const [key, size] of Object.entries(wanted)) {
      expect(outlineWidth(marks, key, 'finished-outline')).toBeCloseTo(size, 9);
      expect(outlineWidth(marks, key, 'cutting-line')).toBeCloseTo(size + 0.5, 9);
    }
    expect(plan.prints.map(({ size, count }) => [size.width, size.height, count])).toEqual([
      [3, 3, 2],
      [4.5, 4.5, 3],
      [4.5, 4.5, 1],
      [6, 6, 1],
    ]);
    const said = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.content] : []));
    for (const words of ['3 × 3 in finished', '4½ × 4½ in finished', '6 × 6 in finished', 'mirrored block'])
      expect(said).toContain(words);
  });

  test('they may share a sheet, and the ids of a file are unique', () => {
    const plan = laid(several());
    expect(plan.sheets.some(({ sections }) => sections.length > 1)).toBe(true);
    plan.sheets.forEach(({ sections }, i) => {
      const svg = writeSvg(plan, i);
      const ids = [...svg.matchAll(/<g id="(section-[^"]*)"/g)].map(([, id]) => id);
      expect(ids).toEqual(sections.map((key) => `section-${key}`));
      expect(new Set(ids).size).toBe(ids.length);
    });
  });

  test('the outline goes by size, and only where there are several', () => {
    const sizes = laid(several()).outline;
    expect(sizes.map(({ title }) => title)).toEqual(['3 × 3 in', '4½ × 4½ in', '6 × 6 in']);
    expect(sizes[1]!.children.map(({ title }) => title)).toEqual([
      'Foundation A',
      'Foundation A, mirrored block',
    ]);
    expect(laid(usual(pinwheel(4), 'Pinwheel')).outline.map(({ title }) => title)).toEqual([
      'Foundation A',
      'Foundation B',
    ]);
  });

  test('one size asked for twice is one size', () => {
    const sizes = [
      { scale: 1, copies: 2 },
      { scale: 1, copies: 3, mirrored: 4 },
    ];
    expect(laid(several({ sizes })).prints.map(({ key, count }) => [key, count])).toEqual([
      ['A', 5],
      ['A-mirrored', 4],
    ]);
  });

  test('sizes that are written alike, and sizes in centimetres, have keys that can be told apart', () => {
    const sizes = [1, 1.5, 1.50001].map((scale) => ({ scale, copies: 1 }));
    expect(laid(several({ sizes })).prints.map(({ key }) => key)).toEqual(['A', 'A-4.5in', 'A-4.5in-2']);
    expect(laid(several({ sizes, unit: 'cm' })).prints[1]!.key).toBe('A-11.43cm');
    expect(laid(usual(house(), 'House', { sizes })).prints[1]!.key).toBe('A-9x10.5in');
  });
});

describe('papers', () => {
  // ANSI/ASME Y14.1: A 8.5 × 11 in, B 11 × 17 in. ISO 216: A4 210 × 297 mm, A3 297 × 420 mm. Legal: common practice.
  test.each([
    ['letter', 8.5, 11],
    ['legal', 8.5, 14],
    ['tabloid', 11, 17],
    ['a4', 210 / 25.4, 297 / 25.4],
    ['a3', 297 / 25.4, 420 / 25.4],
    [{ width: 13, height: 19 }, 13, 19],
    [{ width: 17, height: 11 }, 17, 11],
  ] as const)('%o', async (paper, width, height) => {
    const { pages } = await openPdf(await writePdf(laid(usual(lantern(3), 'Lantern', { paper })), pageFonts));
    const [, , right, top] = pages[0]!.view;
    expect(Math.abs(right! - width * 72)).toBeLessThanOrEqual(0.00005);
    expect(Math.abs(top! - height * 72)).toBeLessThanOrEqual(0.00005);
  });

  test('margins of one’s own are kept', () => {
    const margins = { top: 0.5, right: 0.75, bottom: 1, left: 0.4 };
    const { sheets, paper } = laid(usual(pinwheel(4), 'Pinwheel', { margins }));
    const { width, height } = PAPERS.letter;
    expect(paper).toEqual(PAPERS.letter);
    for (const mark of sheets.flatMap(({ marks }) => marks))
      if (mark.kind === 'path')
        for (const { x, y } of mark.points) {
          expect(x).toBeGreaterThanOrEqual(0.4 * 72 - 1e-9);
          expect(x).toBeLessThanOrEqual(width - 0.75 * 72 + 1e-9);
          expect(y).toBeGreaterThanOrEqual(0.5 * 72 - 1e-9);
          expect(y).toBeLessThanOrEqual(height - 72 + 1e-9);
        }
  });
});

describe('several prints on a sheet', () => {
  const filled = (more: Partial<FoundationJob> = {}) =>
    laid(usual(lantern(3), 'Lantern', { sizes: [{ scale: 1, copies: 25 }], fillSheets: true, ...more }));

  const MANY = [
    { scale: 0.7, copies: 18 },
    { scale: 1, copies: 27, mirrored: 1 },
    { scale: 1.2, copies: 9 },
  ];

  test('enough are printed of each foundation, on less paper', () => {
    const plan = filled({ sizes: MANY });
    for (const { key, count, sheets } of plan.prints) {
      const own = new RegExp(`^${key}(-copy-\\d+)?$`);
      const on = plan.sheets.map(({ sections }) => sections.filter((one) => own.test(one)).length);
      expect(sheets).toEqual(on.flatMap((number, i) => (number > 0 ? [i] : [])));
      const printed = on.reduce((sum, number, i) => sum + number * (plan.sheets[i]!.times ?? 1), 0);
      expect(printed).toBeGreaterThanOrEqual(count);
    }
    const paper = (one: PagePlan) => printsOf(one).sheets;
    expect(paper(plan)).toBeLessThan(paper(filled({ sizes: MANY, fillSheets: false })));
    expect(plan.packing).toMatchObject({ sheets: paper(plan) });
    expect(plan.packing!.atLeast).toBeLessThanOrEqual(paper(plan));
  });

  test('all of one kind are alike but for where they stand, each with a key of its own', () => {
    const [sheet] = filled().sheets;
    const shapeOf = (key: string) => {
      const line = sheet!.marks.find((mark) => mark.section === key && mark.role === 'cutting-line')!;
      const points = line.kind === 'path' ? line.points : [];
      const { minX, minY } = boundingBox(points);
      return points
        .map(({ x, y }) => [Math.round(1e6 * (x - minX)), Math.round(1e6 * (y - minY))].join())
        .sort();
    };
    expect(sheet!.sections.length).toBeGreaterThan(3);
    expect(new Set(sheet!.sections).size).toBe(sheet!.sections.length);
    for (const key of sheet!.sections) expect(shapeOf(key)).toEqual(shapeOf('A'));
    const ids = [...writeSvg(filled(), 0).matchAll(/<g id="(section-[^"]*)"/g)].map(([, id]) => id);
    expect(ids).toEqual(sheet!.sections.map((key) => `section-${key}`));
  });

  test('the caption says how many there are in all, the foot of the sheet how often it is printed', () => {
    const plan = filled();
    for (const { marks, times } of plan.sheets) {
      const said = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.content] : []));
      expect(said).toContain('25 in all');
      expect(said.filter((words) => words.startsWith('Print ') && !words.includes('%'))).toEqual([]);
      expect(said.some((words) => words.includes(`print ${times} times`))).toBe((times ?? 1) > 1);
    }
  });

  test('what stands alone on its sheet, or is cut into tiles, is there once, and its sheets as often as it is wanted', () => {
    for (const scale of [2.2, 6]) {
      const plan = filled({ sizes: [{ scale, copies: 3 }] });
      expect(plan.sheets.map(({ sections, times }) => [sections, times])).toEqual(
        plan.sheets.map(() => [['A'], 3]),
      );
    }
  });
});
