import { readFileSync } from 'node:fs';
import type { CuttingReport } from '@seamwright/cloth';
import { describe, expect, it } from 'vitest';
import { hasPoppler, readPdf } from '../../../e2e/support/pdf.ts';
import { ATTIC, CHASE, Folder, HORIZON, PANES, ran } from './harness.ts';

const folder = new Folder();
const horizon = folder.file('horizon.svg', HORIZON);
const panes = folder.file('panes.svg', PANES);
const demo = folder.file('demo.json');
await ran('demo', '--out', demo);

async function reportOf(...argv: string[]): Promise<CuttingReport> {
  const { status, out, complaints } = await ran('cutting', ...argv, '--json');
  expect([status, complaints]).toEqual([0, []]);
  return JSON.parse(out);
}

/** Pieces and strips of a report add up: shares nothing with the planner. */
function expectSound({ pieces, rows, cloths }: CuttingReport, blocks: number): void {
  expect(rows.reduce((sum, { yields }) => sum + yields, 0)).toBe(pieces.length * blocks);
  for (const { name, shape, cloth } of pieces) {
    const [row, ...others] = rows.filter(({ pieces: names }) => names.includes(name));
    expect([row?.shape, row?.cloth, others.length]).toEqual([shape, cloth, 0]);
  }
  for (const { cloth, usableWidth, strips, lengthInches, buyYards, buyMetres } of cloths) {
    const sizes = strips.flatMap(({ height, count, cuts }) =>
      cuts.flatMap(({ width, count: each, height: own = height }) =>
        Array.from({ length: each * count }, () => String([width, own].sort((a, b) => a - b))),
      ),
    );
    const wanted = rows
      .filter((row) => row.cloth === cloth)
      .flatMap(({ width, height, cut }) =>
        Array.from({ length: cut }, () => String([width, height].sort((a, b) => a - b))),
      );
    expect(sizes.sort()).toEqual(wanted.sort());
    for (const { cuts } of strips)
      expect(cuts.reduce((sum, { width, count }) => sum + width * count, 0)).toBeLessThanOrEqual(usableWidth);
    expect(strips.reduce((sum, { height, count }) => sum + height * count, 0)).toBeCloseTo(lengthInches, 6);
    expect(buyYards * 36).toBeGreaterThanOrEqual(lengthInches);
    expect(buyMetres * 1000).toBeGreaterThanOrEqual(lengthInches * 25.4);
  }
}

describe('cutting', () => {
  it('says what to cut, from which strips, and what to buy', async () => {
    const { status, out, complaints } = await ran('cutting', horizon, '--copies', '8');
    expect([status, complaints]).toEqual([0, []]);
    // By hand: 6 × 2 and 6 × 4 in, an allowance and a spare of 1/4 in all round: 7 × 3 and 7 × 5. A strip of 7 holds 8 of 3
    // and 3 of 5 (39 in), one of 5 the other five (35 in): 12 in. The pieces are 448 sq in, 11.2 in of fabric, and strips
    // of 3, 5 and 7 add up to 12 above that at the least.
    expect(out.split('\n')).toEqual([
      'To cut for 8 of horizon',
      'Seam allowance ¼ in. Pieces still cover when laid ¼ in off true; sizes are rounded up to ¼ in.',
      'Nothing is added for the wash or for slips: --shrinkage and --safety do.',
      '',
      'Fabric, usable width 40 in',
      '  cut  size      shape      for',
      '  8    7 × 5 in  rectangle  A2',
      '  8    7 × 3 in  rectangle  A1',
      '  Strips across the fabric, cut in 2 layers at a time:',
      '    1 strip of 7 in',
      '      3 of 5 in, 8 of 3 in; 1 in left over; 11 cuts',
      '    1 strip of 5 in',
      '      5 of 7 in; 5 in left over; 5 cuts',
      '  The strips, each as high as all its pieces, take 12 in of fabric, the least for such strips; 7 % of it is waste.',
      '  Buy ⅜ yd (0.4 m), 2 fat quarters or 3 fat eighths.',
      '',
      'With the cutter in your hand',
      '  Close the rotary cutter whenever you lay it down.',
      '  Keep your fingers back from the edge of the ruler, and cut away from yourself.',
      '  Keep the cutter away from children.',
      '  Take fewer layers when the cutter does not go through at one stroke: pressing harder makes it slip.',
      '',
    ]);
  });

  it('tells how half-squares are cut, and how many triangles they give', async () => {
    const corner = folder.file('corner.svg', HORIZON.replace('y1="4" x2="6" y2="4"', 'y1="6" x2="6" y2="0"'));
    const { out } = await ran('cutting', corner, '--copies', '3', '--mirrored', '1', '--shrinkage', '4%');
    expect(out).toMatch(/^To cut for 3 and 1 mirrored of corner$/m);
    expect(out).toMatch(/^A half-square is a square cut corner to corner\.$/m);
    // 2 triangles of 4 blocks, of one size: exact.
    expect(out).toMatch(/^ {2}4 {4}.* half-square {2}A1, A2 \(8 triangles\)$/m);
    expect(out).not.toContain('--shrinkage');
  });

  it('prints the report as JSON, which adds up, for a drawing and for all blocks of a pattern', async () => {
    const report = await reportOf(panes, '--copies', '3');
    expect(report).toMatchObject({
      format: 'seamwright-cutting/1',
      unit: 'in',
      allowance: 0.25,
      spare: 0.25,
    });
    expect(report.cloths).toHaveLength(1);
    expectSound(report, 3);
    const all = await reportOf(demo, '--copies', '2');
    expectSound(all, 2);
    expect(all.pieces.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['Paper boat A1', 'Lantern A1']),
    );
    const one = await reportOf(demo, '--block', 'lantern', '--trim', '--usable-width', '42');
    expectSound(one, 1);
    expect(one.pieces.map(({ name }) => name)).toContain('A1');
  });

  it('cuts of each block as many as are asked for, and leaves out those of which there are none', async () => {
    const { out } = await ran('cutting', demo, '--copies', '2,3,0,0,1', '--mirrored', '0,0,0,0,2');
    expect(out).toMatch(/^To cut for 2 of Paper boat, 3 of Lantern, 1 and 2 mirrored of Window panes$/m);
    const some = await reportOf(demo, '--copies', '2,3,0,0,0');
    const names = some.pieces.map(({ name }) => name.replace(/ \w+$/, ''));
    expect([...new Set(names)]).toEqual(['Paper boat', 'Lantern']);
    // What is cut of two blocks is what is cut of each: pieces of any size and fabric add up.
    const yields = ({ rows }: CuttingReport) => rows.reduce((sum, row) => sum + row.yields, 0);
    const boats = await reportOf(demo, '--block', 'paper boat', '--copies', '2');
    const lanterns = await reportOf(demo, '--block', 'lantern', '--copies', '3');
    expect(yields(some)).toBe(yields(boats) + yields(lanterns));
    // Of one block alone, patches go by their own names.
    expect(await reportOf(demo, '--copies', '0,3,0,0,0')).toEqual(lanterns);
  });

  it('names the same pieces as the sewing report', async () => {
    const sewn = JSON.parse((await ran('sewing', demo, '--block', 'lighthouse', '--json')).out);
    const report = await reportOf(demo, '--block', 'lighthouse');
    expect(report.pieces.map(({ name }) => name).sort()).toEqual(
      sewn.pieces.map(({ name }: { name: string }) => name).sort(),
    );
  });

  it('prints the chart as CSV, by section when asked for', async () => {
    const { out } = await ran('cutting', panes, '--csv', '--by-section');
    expect(out.split('\r\n')).toEqual([
      'fabric,section,shape,width in,height in,cut,yields,patches',
      ',A,rectangle,4,4,2,2,A1 A2',
      ',B,rectangle,4,4,2,2,B1 B2',
      '',
    ]);
  });

  it.skipIf(!hasPoppler)(
    'writes the chart as pages: what the text says, under the same fabrics',
    async () => {
      const out = folder.file('chart.pdf');
      const asked = [demo, '--copies', '3', '--by-section', '--layers', '4'];
      const text = (await ran('cutting', ...asked)).out;
      const { status, out: said, complaints } = await ran('cutting', ...asked, '--out', out, '--paper', 'a4');
      expect([status, complaints]).toEqual([0, []]);
      const pages = readPdf(readFileSync(out));
      expect(said).toBe(`Wrote ${out}: ${pages.length} pages, A4.\n`);
      for (const page of pages) {
        expect(page.width).toBeCloseTo((210 / 25.4) * 72, 2);
        expect(page.height).toBeCloseTo((297 / 25.4) * 72, 2);
      }
      const words = pages
        .map((page) => page.text)
        .join(' ')
        .replace(/\s+/g, ' ');
      expect(words).toContain('To cut for 3 of each: ');
      const sayings = [
        /^ +(\d+ strips? of .*)$/gm,
        /^ +((?:each: |\d+ of ).*)$/gm,
        /^ +(The strips, .*)$/gm,
        /^ +(Buy .*)$/gm,
      ].flatMap((saying) => [...text.matchAll(saying)].map((found) => found[1]!));
      expect(sayings.length).toBeGreaterThan(6);
      for (const saying of sayings) expect(words).toContain(saying);
      const rows = [...text.matchAll(/^ +[A-Z].*? +(\d+) +(\S+ × \S+ in) +(?:half-)?rectangle/gm)];
      expect(rows.length).toBeGreaterThan(6);
      for (const [, cut, size] of rows) expect(words).toMatch(new RegExp(`(^| )${cut} ${size}( |$)`));
    },
  );

  it.skipIf(!hasPoppler)(
    'writes no pages where a block cannot be sewn, and all that can be planned where a piece is too large',
    async () => {
      const attic = folder.file('attic-2.svg', ATTIC);
      const out = folder.file('none.pdf');
      const before = folder.listing();
      expect((await ran('cutting', attic, '--out', out)).status).toBe(1);
      expect(folder.listing()).toEqual(before);
      const { status } = await ran('cutting', horizon, '--usable-width', '4.5', '--out', out);
      expect(status).toBe(1);
      expect(readPdf(readFileSync(out))[0]!.text.replace(/\s+/g, ' ')).toContain('nothing is planned for it');
    },
  );

  it('cuts in the size, allowance, spare and rounding that are asked for', async () => {
    const report = await reportOf(
      ...[horizon, '--width', '12', '--allowance', '3/8', '--spare', '0', '--round-up-to', '1/8'],
    );
    expect(report).toMatchObject({ allowance: 0.375, spare: 0, roundUpTo: 0.125 });
    expect(report.pieces.map(({ width, height }) => [width, height])).toEqual([
      [12.75, 4.75],
      [12.75, 8.75],
    ]);
  });

  it('rounds sizes up to half centimetres where the pattern is in centimetres, unless another step is asked for', async () => {
    const metric = folder.file(
      'metric.json',
      folder.read('demo.json').replace('"unit": "in"', '"unit": "cm"'),
    );
    const inHalves = await reportOf(metric);
    expect(inHalves.roundUpTo).toBeCloseTo(5 / 25.4, 6);
    for (const { width, height } of inHalves.pieces)
      for (const halves of [width, height].map((size) => size * 5.08))
        expect(halves).toBeCloseTo(Math.round(halves), 4);
    const { out } = await ran('cutting', metric);
    expect(out).toMatch(/^ +\d+ +\d+(\.5)? × \d+(\.5)? cm +rectangle/m);
    expect(out).not.toMatch(/\.\d\d cm +(half-)?rectangle/);
    expect((await reportOf(metric, '--round-up-to', '1/4')).roundUpTo).toBe(0.25);
    expect((await reportOf(demo)).roundUpTo).toBe(0.25);
  });

  it('follows the rules of the house', async () => {
    const buy = async (...rules: string[]) =>
      (await reportOf(horizon, '--copies', '8', ...rules)).cloths[0]!.buyYards;
    // 12 in, as above; 12 × 1.1 ÷ 0.95 = 13.9. With one more of 7 × 5, 13 in are strips of 3, 5, 5, which hold five of 7 × 3,
    // or of 3, 3, 7, which hold eight of 7 × 5: too few each, so more than 13.
    expect(await buy()).toBe(0.375);
    expect(await buy('--quarter-yards')).toBe(0.5);
    expect(await buy('--shrinkage', '5%', '--safety', '10')).toBe(0.5);
    expect(await buy('--spare-of-largest')).toBe(0.5);
    expect(await buy('--usable-width', '42')).toBe(0.375);
  });

  it('cuts each fabric of a colourway at its own width', async () => {
    const pattern = JSON.parse(folder.read('demo.json'));
    pattern.fabrics = [
      { id: 'sea', name: 'Sea', colour: '#123456', width: 42 },
      { id: 'print', name: 'Print', colour: '#abcdef', grain: 'one way' },
    ];
    pattern.colourways = [
      { id: 'day', name: 'Day' },
      { id: 'night', name: 'Night' },
    ];
    pattern.blocks = [pattern.blocks[0]];
    for (const patch of pattern.blocks[0].patches)
      Object.assign(patch, { fabric: 'sea', fabrics: { night: 'print' } });
    const dressed = folder.file('dressed.json', JSON.stringify(pattern));
    const day = await reportOf(dressed);
    expect(day.cloths.map(({ cloth, usableWidth }) => [cloth, usableWidth])).toEqual([['Sea', 42]]);
    const night = await reportOf(dressed, '--colourway', 'NIGHT');
    // On paper nothing else says which colourway and which size a chart is for.
    const larger = await ran('cutting', dressed, '--colourway', 'NIGHT', '--width', '9');
    expect(larger.out).toMatch(/^To cut for 1 of Paper boat at 9 × 9 in, from the fabrics of “Night”$/m);
    expect((await ran('cutting', dressed)).out).toMatch(
      /^To cut for 1 of Paper boat, from the fabrics of “Day”$/m,
    );
    expect(night.cloths.map(({ cloth, usableWidth }) => [cloth, usableWidth])).toEqual([['Print', 40]]);
    expect(night.pieces.map(({ angle }) => angle)).toEqual(night.pieces.map(() => 0));
    expect((await ran('cutting', dressed, '--colourway', 'dusk')).complaints).toEqual([
      `${dressed}: There is no colourway "dusk". Choose one of: Day, Night.`,
    ]);
  });

  it('ends with 1 and cuts nothing where a block cannot be sewn', async () => {
    const attic = folder.file('attic.svg', ATTIC);
    const { status, out } = await ran('cutting', attic);
    expect(status).toBe(1);
    expect(out).toMatch(/^attic, .* cannot be sewn .*Nothing is cut for what cannot be sewn\.\n$/s);
    expect(await ran('cutting', attic, '--json')).toEqual({
      status: 1,
      out: '',
      complaints: ['"attic" cannot be sewn with straight seams, so nothing is cut; "sewing" says why'],
    });
    // With partial seams it can.
    expect((await ran('cutting', folder.file('chase.svg', CHASE))).status).toBe(0);
  });

  it('ends with 1 where a piece is larger than its fabric, and plans the rest', async () => {
    const { status, out } = await ran('cutting', horizon, '--usable-width', '4.5');
    expect(status).toBe(1);
    expect(out).toContain(
      'To know: A2: cut 7 × 5 in, and the fabric is 4½ in wide: choose a wider fabric, or divide the patch; nothing is planned for it.',
    );
    expect(out).toContain('1 strip of 7 in\n      1 of 3 in; 1½ in left over; 1 cut\n');
  });

  it.each<[string[], string]>([
    [[], 'No FILE is given. See "seamwright cutting --help".'],
    [[horizon, panes], 'More than one FILE is given. Give one at a time.'],
    [[horizon, '--json', '--csv'], 'Both --json and --csv are given. Choose one.'],
    [[horizon, '--csv', '--out', 'x.pdf'], 'Both --csv and --out are given. Choose one.'],
    [[horizon, '--out', 'x.txt'], '--out x.txt does not end in .pdf. Name it so.'],
    [
      [horizon, '--paper', 'a4'],
      '--paper is for pages, and none are written. Name the file of the pages by --out.',
    ],
    [
      [horizon, '--out', 'x.pdf', '--paper', 'b9'],
      'There is no paper "b9". Choose letter, legal, tabloid, a4, a3 or a size such as 13x19.',
    ],
    [
      [horizon, '--out', folder.file('nowhere/x.pdf')],
      `${folder.file('nowhere/x.pdf')}: There is no folder to put the file in. Make the folder, or choose another.`,
    ],
    [[horizon, '--copies', 'many'], '--copies many is no whole number up to 10000. Give one, such as 4.'],
    [
      [horizon, '--copies', '1,2'],
      '--copies has 2 numbers, and the blocks are 1. Give one number for all, or one for each of: horizon.',
    ],
    [[horizon, '--copies', '1,'], '--copies  is no whole number up to 10000. Give one, such as 4.'],
    [[horizon, '--copies', '0'], 'No block is sewn. Give --copies of 1 or more.'],
    [[horizon, '--layers', '9'], '--layers 9 is not how fabric is cut. Choose from 1 to 8.'],
    [[horizon, '--turn', 'left'], '--turn left is no number. Give one, such as 3.'],
    [
      [horizon, '--turn', '60'],
      `${horizon}: A piece cannot be turned by 60° and still cover. Give 0 to 45°.`,
    ],
    [
      [horizon, '--usable-width', '0'],
      `${horizon}: The usable width of the fabric is no length above 0. Give it, such as 40.`,
    ],
    [
      [horizon, '--usable-width', 'NaN'],
      '--usable-width: “NaN” is not a length. Type a length such as 2 3/8, 2.375 or 6cm.',
    ],
    [[horizon, '--shrinkage', 'NaN'], '--shrinkage NaN is no percentage. Give one, such as 5%.'],
    [
      [horizon, '--shrinkage=-5%'],
      `${horizon}: The shrinkage is no part from 0 % to below 100 %. Give it, such as 5 %.`,
    ],
    [
      [horizon, '--shrinkage', '100'],
      `${horizon}: The shrinkage is no part from 0 % to below 100 %. Give it, such as 5 %.`,
    ],
    [[horizon, '--round-up-to', '0'], `${horizon}: Sizes cannot be rounded up to 0 in. Give 1/64 to 1 in.`],
    [
      [horizon, '--colourway', 'day'],
      `${horizon}: There is no colourway "day". Leave --colourway out: there is one only.`,
    ],
    [[demo, '--width', '6'], '--width is the width of one block. Choose it by --block NAME.'],
    [['missing.svg'], 'missing.svg: There is no such file. Check its name.'],
  ])('refuses %j with a sentence', async (argv, complaint) => {
    expect(await ran('cutting', ...argv)).toEqual({ status: 2, out: '', complaints: [complaint] });
  });
});
