import { mkdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Folder, HORIZON, PANES, ran } from './harness.ts';

const folder = new Folder();
const horizon = folder.file('horizon.svg', HORIZON);
const demo = folder.file('demo.json');
await ran('demo', '--out', demo);

/** The corners of the first path of a group of an SVG page, in points. */
function corners(svg: string, group: string): [number, number][] {
  const d = new RegExp(`<g id="${group}">[\\s\\S]*? d="([^"]*)"`).exec(svg)![1]!;
  const numbers = d.match(/-?[\d.]+/g)!.map(Number);
  return numbers.flatMap((x, i) => (i % 2 === 0 ? [[x, numbers[i + 1]!] as [number, number]] : []));
}

/** Width and height of a group's first path, inches. */
function extent(svg: string, group: string): [number, number] {
  const points = corners(svg, group);
  const span = (axis: 0 | 1) =>
    Math.max(...points.map((p) => p[axis])) - Math.min(...points.map((p) => p[axis]));
  return [span(0) / 72, span(1) / 72];
}

async function svgOf(...options: string[]): Promise<string> {
  const out = folder.file('page.svg');
  const { status, complaints } = await ran('foundations', horizon, '--out', out, ...options);
  expect([status, complaints]).toEqual([0, []]);
  return readFileSync(out, 'utf8');
}

const close = ([w, h]: [number, number], width: number, height: number) => {
  expect(w).toBeCloseTo(width, 4);
  expect(h).toBeCloseTo(height, 4);
};

describe('foundations', () => {
  it('are pages of true size, a quarter inch of allowance round the finished block', async () => {
    const svg = await svgOf();
    expect(svg).toMatch(/<svg [^>]*width="8\.5in" height="11in"/);
    close(extent(svg, 'finished-outline'), 6, 6);
    close(extent(svg, 'cutting-line'), 6.5, 6.5);
  });

  it('are as wide as --width says, in any unit, with the same allowance', async () => {
    const svg = await svgOf('--width', '10cm', '--paper', 'A4');
    expect(svg).toMatch(/<svg [^>]*width="210mm" height="297mm"/);
    close(extent(svg, 'finished-outline'), 10 / 2.54, 10 / 2.54);
    close(extent(svg, 'cutting-line'), 10 / 2.54 + 0.5, 10 / 2.54 + 0.5);
    close(extent(await svgOf('--width', '152.4mm', '--allowance', '3/8in'), 'cutting-line'), 6.75, 6.75);
  });

  it('come in several sizes in one go, mirrored ones beside them', async () => {
    const svg = await svgOf('--sizes', '2,2 1/2,50%', '--mirrored', '2', '--copies', '3');
    const groups = [...svg.matchAll(/<g id="section-([^"]+)">/g)].map(([, key]) => key!);
    const sizes = {
      A: 2,
      'A-mirrored': 2,
      'A-2.5in': 2.5,
      'A-2.5in-mirrored': 2.5,
      'A-3in': 3,
      'A-3in-mirrored': 3,
    };
    const own = (key: string) =>
      extent(svg.slice(svg.indexOf(`<g id="section-${key}">`)), 'finished-outline');
    // As many as there is room for on the first sheet.
    expect(groups.length).toBeGreaterThanOrEqual(4);
    expect(Object.keys(sizes)).toEqual(expect.arrayContaining(groups));
    for (const key of groups) close(own(key), sizes[key as 'A'], sizes[key as 'A']);
    const prints = [...svg.matchAll(/>(Print \d+)</g)].map(([, words]) => words);
    expect(new Set(prints)).toEqual(new Set(['Print 3', 'Print 2']));
  });

  it('come on any paper, with margins, corrected for a printer', async () => {
    const svg = await svgOf('--paper', '13 x 19in', '--margins', '1/2', '--printer', '97.3%x98.9%');
    expect(svg).toMatch(/<svg [^>]*width="13in" height="19in"/);
    // What such a printer makes of it is 6 in again.
    close(extent(svg, 'finished-outline'), 6 / 0.973, 6 / 0.989);
    close(extent(svg, 'check-squares'), 50 / 25.4 / 0.973, 50 / 25.4 / 0.989);
    expect(svg).toContain('97.3 % across and 98.9 % down');
    for (const paper of ['legal', 'tabloid', 'A3']) await svgOf('--paper', paper);
  });

  it('are written in thousands where that is meant', async () => {
    const out = folder.file('many.pdf');
    const { status, out: text } = await ran(
      'foundations',
      horizon,
      '--out',
      out,
      '--copies',
      '10000',
      '--yes',
    );
    expect(status).toBe(0);
    expect(text).toContain('1 page, Letter, 10000 sheets to print in all.');
  });

  it('say how many to print', async () => {
    const [one, seven] = [await svgOf(), await svgOf('--copies', '7')];
    expect(seven).not.toBe(one);
    expect(seven).toMatch(/>[^<]*\b7\b[^<]*</);
  });

  it('are one for each section, or shared by those that are alike where that is asked for', async () => {
    const panes = folder.file('panes.svg', PANES);
    const sections = async (...options: string[]) => {
      // Small enough for one sheet.
      const out = folder.file('panes-page.svg');
      const call = ['foundations', panes, '--out', out, '--width', '4', '--copies', '3', ...options];
      const { status, complaints } = await ran(...call);
      expect([status, complaints]).toEqual([0, []]);
      const svg = readFileSync(out, 'utf8');
      const groups = [...svg.matchAll(/<g id="section-(\w+)">/g)].map(([, letter]) => letter);
      return { groups, prints: [...svg.matchAll(/>(Print \d+)</g)].map(([, words]) => words) };
    };
    expect(await sections()).toEqual({ groups: ['A', 'B'], prints: ['Print 3', 'Print 3'] });
    expect(await sections('--share-templates')).toEqual({ groups: ['A'], prints: ['Print 6'] });
  });

  it('come as one PDF with the pages of every block, the same bytes every time', async () => {
    const out = folder.file('pages.pdf');
    const first = await ran('foundations', demo, '--out', out);
    expect([first.status, first.complaints]).toEqual([0, []]);
    const lines = first.out.trimEnd().split('\n');
    expect(lines.slice(0, -1)).toEqual([
      'Paper boat sews on 2 foundations, and no fewer will do.',
      'Lantern sews on one foundation.',
      'Lighthouse sews on 5 foundations, and no fewer will do.',
      'Reading lamp sews on one foundation.',
      'Window panes sews on 2 foundations, and no fewer will do.',
    ]);
    const bytes = readFileSync(out);
    const pages = bytes.toString('latin1').match(/\/Type \/Page\n/g)!.length;
    expect(lines.at(-1)).toBe(`Wrote ${out}: ${pages} pages, Letter. Print at 100 %, no scaling.`);
    expect(pages).toBeGreaterThanOrEqual(5);
    await ran('foundations', demo, '--out', out);
    expect(readFileSync(out).equals(bytes)).toBe(true);
  });

  it('are fewer pages when one block is chosen', async () => {
    const out = folder.file('lantern.pdf');
    const { status, out: text } = await ran('foundations', demo, '--out', out, '--block', 'lantern');
    expect([status, text.split('\n')[0]]).toEqual([0, 'Lantern sews on one foundation.']);
  });

  it('come as one SVG file a page, the first under the very name', async () => {
    const out = folder.file('large.svg');
    const { status, out: text } = await ran('foundations', horizon, '--out', out, '--width', '12');
    expect(status).toBe(0);
    const written = folder.listing().flatMap((file) => /^large.*svg/.exec(file) ?? []);
    expect(written.length).toBeGreaterThan(1);
    const names = written.map((_, i) => (i === 0 ? out : folder.file(`large-${i + 1}.svg`)));
    expect(written.map((name) => folder.file(name)).sort()).toEqual([...names].sort());
    expect(text).toContain(`Wrote ${names.join(', ')}: ${names.length} pages, Letter.`);
  });

  it('tell of what was not read of the drawing', async () => {
    const curved = folder.file(
      'curved.svg',
      HORIZON.replace('</svg>', '<circle cx="3" cy="2" r="1"/></svg>'),
    );
    const { status, out } = await ran('foundations', curved, '--out', folder.file('curved.pdf'));
    expect(status).toBe(0);
    expect(out).toMatch(
      /^curved sews on one foundation\.\n {2}To know: In the SVG, line 1, 1 curve is not read\./,
    );
  });

  it('tell of characters that the pages’ font does not have', async () => {
    const titled = folder.file('boat.svg', HORIZON.replace('<rect', '<title>灯台</title><rect'));
    const { status, out } = await ran('foundations', titled, '--out', folder.file('boat.pdf'));
    expect([status, out.split('\n')[0]]).toEqual([0, expect.stringContaining('灯 台')]);
  });
});

describe('what was there before', () => {
  it('stays when a page cannot take its place, and nothing else is left behind', async () => {
    folder.file('kept.svg', 'the page of another day');
    mkdirSync(folder.file('kept-2.svg'));
    const before = folder.listing();
    const { status, complaints } = await ran(
      'foundations',
      horizon,
      '--out',
      folder.file('kept.svg'),
      '--width',
      '12',
    );
    expect([status, complaints]).toEqual([
      2,
      [`${folder.file('kept-2.svg')}: There is a folder of that name. Choose another name for the file.`],
    ]);
    expect(folder.listing()).toEqual(before);
    expect(folder.read('kept.svg')).toBe('the page of another day');
  });

  it('is not the drawing itself, under any page’s name', async () => {
    const drawing = folder.file('own-2.svg', HORIZON);
    const { status, complaints } = await ran(
      'foundations',
      drawing,
      '--out',
      folder.file('own.svg'),
      '--width',
      '12',
    );
    expect([status, complaints]).toEqual([
      2,
      [`${drawing}: A page would take the place of the FILE. Choose another --out.`],
    ]);
    expect(folder.read('own-2.svg')).toBe(HORIZON);
  });
});
