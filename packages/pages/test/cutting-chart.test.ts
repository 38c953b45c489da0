import { CUTTING_CAUTIONS, stripTexts } from '@seamwright/cloth';
import { formatCutSize } from '@seamwright/geometry';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { type CuttingChartJob, layCuttingChart, type Mark, type PagePlan, writePdf } from '../src/index.ts';
import { boat, house, lantern, pinwheel, wharf } from './blocks.ts';
import { boxOf, overlap, ROUNDING } from './boxes.ts';
import { chartJob, chartLaid, cloth } from './charts.ts';
import { pageFonts } from './fonts.ts';
import { openPdf, type ReadPage } from './pdfjs.ts';

const BLOCKS = [
  ['Paper boat', boat()],
  ['Lantern', lantern(6)],
  ['Harbour house', house()],
  ['Pinwheel', pinwheel(6)],
  ['Wharf', wharf()],
] as const;

const LONG =
  'Sail white with a name that a shop gave it and that nobody says aloud, not even in the reading room';

const CLOTHS = [
  cloth('sea', 'Sea blue'),
  cloth('sail', LONG, { directional: true }),
  cloth('lamp', 'Lamp yellow', { straight: true, usableWidth: 42 }),
];

const all = await chartJob({ blocks: BLOCKS, cloths: CLOTHS, copies: 12 });

type TextMark = Mark & { kind: 'text' };

const textsOf = (plan: PagePlan): readonly (readonly TextMark[])[] =>
  plan.sheets.map(({ marks }) => marks.filter((mark) => mark.kind === 'text'));

/** The patches that stand in the lines, with the names of their blocks. */
function patchesIn(lines: readonly string[]): readonly string[] {
  return lines
    .join(' ')
    .split('; ')
    .flatMap((group) => {
      const [, block = '', patches = ''] = /^([^,]* )?(\S+(?:, \S+)*)$/.exec(group) ?? [];
      return patches.split(', ').map((patch) => `${block}${patch}`);
    });
}

describe('a cutting chart as pages', () => {
  test.each<[string, Partial<CuttingChartJob>]>([
    ['Letter, inches', {}],
    ['A4, centimetres', { paper: 'a4', unit: 'cm' }],
    ['a small sheet', { paper: { width: 4, height: 6 } }],
  ])('says for each row how many, what size and for which patches: %s', (_, more) => {
    const job = { ...all, ...more };
    const texts = textsOf(chartLaid(job)).flat();
    const unit = job.unit ?? 'in';
    // Sizes stand below each other in one column; a row's other words on the same base line, or below it up to the next.
    const shapes = texts.filter(({ content }) => /^(half-)?(rectangle|square)/.test(content));
    expect(shapes).toHaveLength(job.rows.length);
    const ordered = job.plans.flatMap(({ cloth: { id } }) => job.rows.filter((row) => row.cloth === id));
    const at = shapes.map((shape) => texts.indexOf(shape));
    for (const [i, row] of ordered.entries()) {
      const [count, size] = texts.slice(at[i]! - 2, at[i]!);
      expect([count!.content, size!.content]).toEqual([
        `${row.cut}`,
        formatCutSize(row.width, row.height, unit),
      ]);
      const whole = row.width === row.height ? 'square' : 'rectangle';
      expect(shapes[i]!.content).toBe(
        row.shape === 'rectangle' ? whole : `half-${whole}, ${row.yields} triangles`,
      );
      const names: string[] = [];
      for (let k = at[i]! + 1; texts[k]?.size === 9 && /\d[,;]?$/.test(texts[k]!.content); k++)
        names.push(texts[k]!.content);
      expect(patchesIn(names)).toEqual(row.pieces);
    }
  });

  test.each<[string, () => Promise<CuttingChartJob> | CuttingChartJob]>([
    ['several blocks', () => all],
    ['in centimetres', () => ({ ...all, unit: 'cm', paper: 'a4', pattern: LONG, layers: 4 })],
    ['on a small sheet', () => ({ ...all, paper: { width: 4, height: 5 } })],
    [
      'long names of blocks',
      () => chartJob({ blocks: BLOCKS.map(([name, of]) => [`${name} ${LONG}`, of]), cloths: CLOTHS }),
    ],
    [
      'pieces larger than their fabric',
      () =>
        chartJob({ blocks: BLOCKS, cloths: CLOTHS.map((each) => ({ ...each, usableWidth: 6 })), copies: 2 }),
    ],
  ])('keeps the margins and puts nothing on anything else: %s', async (_, make) => {
    expectTidy(chartLaid(await make()));
  });

  test('keeps the margins on any sheet', () => {
    const margin = fc.double({ min: 0.1, max: 0.7, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 4.7, max: 14, noNaN: true }),
        fc.double({ min: 6, max: 14, noNaN: true }),
        fc.record({ top: margin, right: margin, bottom: margin, left: margin }),
        fc.constantFrom('in' as const, 'cm' as const),
        (width, height, margins, unit) => {
          expectTidy(chartLaid({ ...all, paper: { width, height }, margins, unit }), margins);
        },
      ),
      { numRuns: 25, seed: 6 },
    );
  });

  test('keeps a fabric’s name with its rows, and says it again where they go on', async () => {
    const small = chartLaid({ ...all, paper: { width: 5, height: 6 } });
    for (const [i, texts] of textsOf(small).entries()) {
      const heads = texts.filter(({ content }) => content === 'size, width first');
      const counts = texts.filter(({ size, anchor }) => size === 10.5 && anchor === 'end');
      // Below the words over the columns there is a row, on the same sheet.
      for (const head of heads) expect(counts.some(({ at }) => at.y > head.at.y)).toBe(true);
      const first = texts[0]!.content;
      if (i > 0 && counts.length > 0 && counts[0]!.at.y < (heads[0]?.at.y ?? 0))
        expect(first).toMatch(/, continued$|…$/);
    }
    expect(small.outline.map(({ title }) => title)).toEqual(all.plans.map(({ cloth: { name } }) => name));
    for (const { title, sheet } of small.outline) {
      const found = textsOf(small)[sheet]!.filter(({ size }) => size === 13);
      expect(found.some(({ content }) => title.startsWith(content.replace(/…$/, '')))).toBe(true);
    }
  });

  test.each([5, 5.25, 5.5, 6, 7, 8, 9, 10, 11])(
    'says on every sheet %f in high of which fabric what is on it is',
    (height) => {
      const names = all.plans.map(({ cloth: { name } }) => name);
      const isOf = (words: string) =>
        names.some((name) => name.startsWith(words.replace(/(, continued|…)$/, ''))) ||
        words === 'With the cutter in your hand';
      const sheets = textsOf(chartLaid({ ...all, paper: { width: 6, height } }));
      expect(sheets.length).toBeGreaterThan(2);
      for (const texts of sheets.slice(1)) expect(isOf(texts[0]!.content), texts[0]!.content).toBe(true);
    },
  );

  test('lets a row for very many patches run over sheets', () => {
    const pieces = Array.from({ length: 2000 }, (_, i) => `A${i + 1}`);
    const [row] = all.rows;
    const plan = chartLaid({ ...all, rows: [{ ...row!, pieces }], plans: all.plans.slice(0, 1) });
    expectTidy(plan);
    expect(plan.sheets.length).toBeGreaterThan(1);
    const names = textsOf(plan)
      .flat()
      .filter(({ content, size }) => size === 9 && /^A\d+,? /.test(content));
    expect(patchesIn(names.map(({ content }) => content))).toEqual(pieces);
  });

  test('says by section when the rows do, and that no fabric is chosen', async () => {
    const job = await chartJob({ blocks: BLOCKS.slice(1, 2), cloths: [] });
    const rows = job.rows.map((row) => ({ ...row, section: 'A' }));
    const said = textsOf(chartLaid({ ...job, rows }))[0]!.map(({ content }) => content);
    expect(said).toEqual(expect.arrayContaining(['To cut for 1 of Lantern', 'Fabric', 'square, section A']));
  });

  test.each<[string, Partial<CuttingChartJob>, RegExp]>([
    ['no rows', { rows: [] }, /nothing to cut/],
    ['no layers', { layers: 0 }, /not cut in 0 layers/],
    ['no paper', { paper: { width: 1, height: 1 } }, /1 in/],
    ['no room', { margins: { top: 4, right: 4, bottom: 4, left: 4 } }, /sheet/],
  ])('refuses %s with a sentence', (_, more, what) => {
    const refused = layCuttingChart({ ...all, ...more });
    expect(refused.ok ? null : refused.problem.what).toMatch(what);
  });
});

describe('the saved file, read by pdf.js', () => {
  let pages: readonly ReadPage[];
  beforeAll(async () => {
    pages = (await openPdf(await writePdf(chartLaid(all), pageFonts))).pages;
  });

  test('has all sizes, strips, cautions and their sources', () => {
    const text = pages.map((page) => page.text).join('\n');
    for (const { width, height, cut } of all.rows)
      expect(text).toMatch(new RegExp(`^${cut}\\s+${formatCutSize(width, height, 'in')}$`, 'm'));
    for (const plan of all.plans)
      for (const { strips, cuts } of stripTexts(plan, all.layers, 'in'))
        for (const said of [strips, ...cuts]) expect(text).toContain(said);
    for (const caution of CUTTING_CAUTIONS)
      for (const said of [caution.text, caution.source]) expect(text).toContain(said);
    expect(text).toContain('folded fabric would give half of them mirrored');
    expect(pages.map((page) => /page \d+ of \d+/.exec(page.text)?.[0])).toEqual(
      pages.map((_, i) => `page ${i + 1} of ${pages.length}`),
    );
  });

  test('draws each piece in its proportions, halves with the cut from bottom left to top right', () => {
    const paths = pages.flatMap((page) => page.paths);
    const boxes = paths.filter(({ points, closed }) => closed && points.length === 4);
    const ratios = boxes.map(({ points: [a, b, c] }) => (b!.x - a!.x) / (c!.y - b!.y));
    for (const { width, height } of all.rows)
      expect(Math.min(...ratios.map((ratio) => Math.abs(ratio - width / height)))).toBeLessThan(0.01);
    const cuts = paths.filter(
      ({ points, closed }) =>
        !closed && points.length === 2 && points[0]!.x !== points[1]!.x && points[0]!.y !== points[1]!.y,
    );
    expect(cuts).toHaveLength(all.rows.filter(({ shape }) => shape === 'half-rectangle').length);
    for (const { points } of cuts) {
      const [low, high] = points[0]!.y > points[1]!.y ? points : [points[1]!, points[0]!];
      expect(low!.x).toBeLessThan(high!.x);
    }
  });
});

/** All keeps the margins and can be printed, no words lie on words or pictures. */
function expectTidy(plan: PagePlan, margins = { top: 0.25, right: 0.25, bottom: 0.25, left: 0.25 }): void {
  const { width, height } = plan.paper;
  for (const { marks } of plan.sheets) {
    const boxes = marks.map((mark) => ({ mark, box: boxOf(mark) }));
    for (const { mark, box } of boxes) {
      const line = mark.kind === 'text' ? mark.content : 'path';
      expect(box.minX - margins.left * 72, line).toBeGreaterThanOrEqual(-ROUNDING);
      expect(box.minY - margins.top * 72, line).toBeGreaterThanOrEqual(-ROUNDING);
      expect(width - margins.right * 72 - box.maxX, line).toBeGreaterThanOrEqual(-ROUNDING);
      expect(height - margins.bottom * 72 - box.maxY, line).toBeGreaterThanOrEqual(-ROUNDING);
    }
    const texts = boxes.filter(({ mark }) => mark.kind === 'text');
    for (const [i, one] of texts.entries())
      for (const other of boxes) {
        const isLater = other.mark.kind === 'path' || texts.indexOf(other) > i;
        if (!isLater || !overlap(one.box, other.box)) continue;
        const framed =
          other.mark.kind === 'path' && one.mark.kind === 'text' && one.mark.content === 'a scrap of it';
        expect(framed, `${JSON.stringify(one.mark)} on ${JSON.stringify(other.mark)}`).toBe(true);
      }
  }
}
