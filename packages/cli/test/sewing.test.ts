import { mkdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { area } from '@seamwright/geometry';
import { replay, type SewingReport } from '@seamwright/sewing';
import { describe, expect, it } from 'vitest';
import { ATTIC, CHASE, Folder, HORIZON, PANES, ran } from './harness.ts';

const folder = new Folder();
const horizon = folder.file('horizon.svg', HORIZON);
const panes = folder.file('panes.svg', PANES);
const chase = folder.file('chase.svg', CHASE);
const attic = folder.file('attic.svg', ATTIC);
const demo = folder.file('demo.json');
await ran('demo', '--out', demo);

const polygonArea = (polygon: readonly (readonly [number, number])[]) =>
  area(polygon.map(([x, y]) => ({ x, y })));

/** What holds of every report; whether a sewable block is sewn soundly is for {@link replay} to say. */
function checkReport(report: SewingReport): void {
  expect([report.format, report.unit]).toEqual(['seamwright-sewing/1', 'in']);
  expect(Math.min(...report.outline.map(([x]) => x))).toBe(0);
  expect(Math.min(...report.outline.map(([, y]) => y))).toBe(0);
  for (const { order, outline } of report.foundations) {
    const pieces = report.pieces.filter(({ name }) => order.includes(name));
    expect(pieces.reduce((sum, { polygon }) => sum + polygonArea(polygon), 0)).toBeCloseTo(
      polygonArea(outline),
      9,
    );
  }
  if (report.verdict !== 'not sewable') expect(replay(report)).toEqual([]);
}

/** The drawings on which the solver is held, with what is known of each. */
const drawings = fileURLToPath(new URL('../../sewing/test/fixtures/drawings/', import.meta.url));
const known: [string, Known][] = Object.entries(JSON.parse(readFileSync(`${drawings}expected.json`, 'utf8')));

interface Known {
  readonly patches: number;
  readonly straightSeams: boolean;
  readonly fewestFoundations: number | null;
}

describe('sewing', () => {
  it('says in words whether and how a block is sewn', async () => {
    expect(await ran('sewing', horizon, panes)).toEqual({
      status: 0,
      out: [
        'horizon, 6 × 6 in, 2 patches: sews on one foundation.',
        '  Foundation A, in this order: A1, A2',
        'panes, 6 × 6 in, 4 patches: sews on 2 foundations, and no fewer will do.',
        '  Foundation A, in this order: A1, A2',
        '  Foundation B, in this order: B1, B2',
        '  Join A to B along a seam of 6 in',
        '',
      ].join('\n'),
      complaints: [],
    });
  });

  it('names the patches of a pattern by their notes, in its unit', async () => {
    const metric = folder.file(
      'metric.json',
      folder.read('demo.json').replace('"unit": "in"', '"unit": "cm"'),
    );
    const { status, out } = await ran('sewing', metric, '--block', 'window PANES');
    expect(status).toBe(0);
    expect(out).toMatch(/^Window panes, 15.24 cm × 15.24 cm, 4 patches: sews on 2 foundations/);
    expect(out).toMatch(/A1 \((dusk|lamplight)\)/);
    expect(out).toContain('along a seam of 15.24 cm');
  });

  it('says what is to be mended and what is to be known', async () => {
    const loose = folder.file(
      'loose.svg',
      HORIZON.replace('</svg>', '<line x1="3" y1="4" x2="3" y2="5"/><text>sea</text></svg>'),
    );
    const { status, out } = await ran('sewing', loose);
    expect(status).toBe(0);
    expect(out).toMatch(/^ {2}To know: In the SVG, line 1, 1 text is not read\./m);
    expect(out).toMatch(/^ {2}To mend: .*loose.*\n {2}One way: Extend/m);
  });

  it('prints the report of one file as JSON', async () => {
    const { status, out, complaints } = await ran('sewing', panes, '--json');
    expect([status, complaints]).toEqual([0, []]);
    const report = JSON.parse(out) as SewingReport;
    checkReport(report);
    expect(report.verdict).toBe('several foundations');
    expect(report.foundations).toHaveLength(2);
    expect(report.findings).toEqual([]);
  });

  it('prints a report for a block that cannot be sewn, too, and ends with 1', async () => {
    const { status, out } = await ran('sewing', attic, '--json');
    expect(status).toBe(1);
    const report = JSON.parse(out) as SewingReport;
    checkReport(report);
    expect(report).toMatchObject({ verdict: 'not sewable', foundations: [], joins: [] });
    expect(report.pieces.map(({ name }) => name[0])).toEqual(['?', '?', '?']);
    expect(report.findings.map(({ severity }) => severity)).toContain('error');
  });

  it('reports a block that takes a partial seam with it: what stays open, what closes it, and what would do without', async () => {
    const { status, out } = await ran('sewing', chase, '--json');
    expect(status).toBe(0);
    const report = JSON.parse(out) as SewingReport;
    checkReport(report);
    expect(report.verdict).toBe('partial seams');
    const [partial, ...others] = report.joins.map(({ open }) => open);
    expect(others).toEqual([undefined, undefined, undefined]);
    expect(partial!.closedAfter).toBe(3);
    // Three inches wide, the ring’s seams 2 in long, of which half of the last inch is sewn.
    const [[x1, y1], [x2, y2]] = partial!.seam;
    expect(Math.hypot(x2 - x1, y2 - y1)).toBeCloseTo(1.5, 9);
    expect(report.findings).toMatchObject([{ kind: 'interlocked', severity: 'caution' }]);
    expect(report.findings[0]!.repairs.length).toBeGreaterThan(0);
    for (const { splits } of report.findings[0]!.repairs) {
      const [[[a, b], [c, d]]] = splits as [[[number, number], [number, number]]];
      const mended = folder.file(
        'mended.svg',
        CHASE.replace('</svg>', `<path d="M${a} ${b}L${c} ${d}"/></svg>`),
      );
      const again = JSON.parse((await ran('sewing', mended, '--json')).out) as SewingReport;
      checkReport(again);
      expect(again.verdict).toBe('several foundations');
      expect(again.findings).toEqual([]);
    }
  });

  it('tells a partial seam in words', async () => {
    const { status, out } = await ran('sewing', chase);
    expect(status).toBe(0);
    expect(out).toMatch(/^chase, 3 × 3 in, 5 patches: sews with partial seams only, on 5 foundations/);
    expect(out).toMatch(
      /^ {2}Join [A-E] to [A-E] along ½ in of a partial seam; leave the other 1½ in open$/m,
    );
    expect(out).toMatch(
      /^ {2}Join \w+ to \w+ along a seam of 2 in; then close the 1½ in that [A-E] and [A-E] left open$/m,
    );
    expect(out).toMatch(/^ {2}To know: 4 seams chase each other .*\n {2}One way: /m);
    expect(out).not.toContain('To mend');
  });

  it('sews a pattern’s block as its maker wants it', async () => {
    const wanting = folder.file(
      'wanting.json',
      folder
        .read('demo.json')
        .replace(/("name": "Window panes",[\s\S]*?"patches": \[[\s\S]*?\])(\s*\})/, (_, block, end) => {
          const sewing = { pins: [], choice: 'small sections', mostPatches: 1, partialSeams: false };
          return `${block}, "sewing": ${JSON.stringify(sewing)}${end}`;
        }),
    );
    const { out } = await ran('sewing', wanting, '--json', '--block', 'Window panes');
    expect((JSON.parse(out) as SewingReport).foundations.map(({ order }) => order.length)).toEqual([
      1, 1, 1, 1,
    ]);
  });

  it('prints the first block of several and says so', async () => {
    const { status, out, complaints } = await ran('sewing', demo, '--json');
    expect(status).toBe(0);
    expect((JSON.parse(out) as SewingReport).pieces).toHaveLength(10);
    expect(complaints).toEqual([
      'This is the report of "Paper boat", the first of 5 blocks; --block NAME chooses another',
    ]);
    const lantern = await ran('sewing', demo, '--json', '--block', 'Lantern');
    expect([lantern.status, lantern.complaints]).toEqual([0, []]);
    expect((JSON.parse(lantern.out) as SewingReport).pieces).toHaveLength(15);
  });

  it.each(known)(
    'says of %s what is known of it',
    async (name, { patches, straightSeams, fewestFoundations }) => {
      const { status, out, complaints } = await ran('sewing', `${drawings}${name}.svg`, '--json');
      // What straight seams do not sew here is a ring, which a partial seam does.
      expect([status, complaints]).toEqual([0, []]);
      const report = JSON.parse(out) as SewingReport;
      checkReport(report);
      expect(['one foundation', 'several foundations'].includes(report.verdict)).toBe(straightSeams);
      expect(report.pieces).toHaveLength(patches);
      if (fewestFoundations !== null) expect(report.foundations).toHaveLength(fewestFoundations);
    },
  );

  it.each([
    ['Paper boat', 10, 2],
    ['Lantern', 15, 1],
    ['Lighthouse', 21, 5],
    ['Reading lamp', 13, 1],
    ['Window panes', 4, 2],
  ])('finds that the demo’s %s, %i patches, sews on %i foundations', async (name, patches, foundations) => {
    const report = JSON.parse((await ran('sewing', demo, '--json', '--block', name)).out) as SewingReport;
    checkReport(report);
    expect(report.pieces).toHaveLength(patches);
    expect(report.foundations).toHaveLength(foundations);
    expect([report.provenLeast, report.findings]).toEqual([true, []]);
  });

  describe('with --out', () => {
    it('makes the folder and writes a report for each drawing', async () => {
      const reports = folder.file('new/reports');
      const { status } = await ran('sewing', horizon, chase, attic, demo, '--out', reports);
      expect(status).toBe(1);
      const names = [
        'horizon',
        'chase',
        'attic',
        ...['paper-boat', 'lantern', 'lighthouse', 'reading-lamp', 'window-panes'].map((b) => `demo-${b}`),
      ];
      expect(
        folder
          .listing()
          .filter((file) => file.startsWith('new/'))
          .map((file) => file.split(' ')[0]),
      ).toEqual(names.map((name) => `new/reports/${name}.json`).sort());
      for (const name of names) checkReport(JSON.parse(folder.read(`new/reports/${name}.json`)));
    });

    it('writes what the good files give, names the bad one, and ends with 2', async () => {
      const missing = folder.file('missing.svg');
      const { status, out, complaints } = await ran(
        'sewing',
        horizon,
        missing,
        panes,
        '--out',
        folder.file('some'),
      );
      expect(status).toBe(2);
      expect(complaints).toEqual([`${missing}: There is no such file. Check its name.`]);
      expect(out).toMatch(/^horizon.*[\s\S]*^panes/m);
      expect(folder.listing().filter((file) => file.startsWith('some/'))).toHaveLength(2);
    });

    it('does not put a report in the place of a file that it reads', async () => {
      const block = folder.file('block.json', folder.read('demo.json'));
      const before = folder.listing();
      const { status, complaints } = await ran('sewing', block, '--block', 'Lantern', '--out', folder.path);
      expect([status, complaints]).toEqual([
        2,
        [`${block}: Its report would take the place of this file. Choose another DIR.`],
      ]);
      expect(folder.listing()).toEqual(before);
    });

    it('does not put two reports in one place', async () => {
      mkdirSync(folder.file('other'));
      const twin = folder.file('other/horizon.svg', PANES);
      const { status, complaints } = await ran('sewing', horizon, twin, '--out', folder.file('twins'));
      expect([status, complaints]).toEqual([
        2,
        [
          `${twin}: Its report would take the place of that of ${horizon}. Report one of them into another DIR.`,
        ],
      ]);
      expect(JSON.parse(folder.read('twins/horizon.json')).verdict).toBe('one foundation');
    });

    it('says so when the folder cannot be made', async () => {
      const { status, complaints } = await ran('sewing', panes, '--out', horizon);
      expect([status, complaints]).toEqual([
        2,
        [`${horizon}: This folder cannot be made. Choose another DIR.`],
      ]);
    });
  });
});
