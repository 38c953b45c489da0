import { describe, expect, it } from 'vitest';
import { ATTIC, CHASE, Folder, HORIZON, ran } from './harness.ts';

const folder = new Folder();
const horizon = folder.file('horizon.svg', HORIZON);
const pattern = folder.file('demo.json');
await ran('demo', '--out', pattern);

describe('help', () => {
  it.each([['--help'], ['-h'], ['help']])('%s lists the commands that are there', async (...argv) => {
    const { status, out, complaints } = await ran(...argv);
    expect([status, complaints]).toEqual([0, []]);
    expect(out).toMatch(
      /^ {2}sewing .*\n {2}foundations .*\n {2}check-page .*\n {2}cutting .*\n {2}demo .*$/m,
    );
    expect(out).not.toMatch(/booklet/);
  });

  it.each([
    ['sewing', ['--json', '--out DIR', '--block NAME']],
    [
      'foundations',
      [
        '--out F',
        '--paper PAPER',
        '--width W',
        '--allowance A',
        '--copies N',
        '--share-templates',
        '--sizes LIST',
        '--mirrored N',
        '--margins M',
        '--printer AxD',
        '--gap G',
        '--keep-upright',
        '--fill-sheets',
        '--fewest-sheets',
        '--overlap O',
        '--ink INK',
        '--seam-lengths',
        '--fabrics',
        '--colourway NAME',
        '--cut-sizes',
        '--spare S',
        '--turn T',
        '--round-up-to R',
        '--partial-seams',
        '--yes',
      ],
    ],
    [
      'cutting',
      ['--json', '--csv', '--block NAME', '--copies N', '--usable-width U', '--trim', '--shrinkage P'],
    ],
    ['check-page', ['--out F', '--paper PAPER', '--margins M', '--unit UNIT', '--printer AxD']],
    ['demo', ['--out FILE']],
  ])('%s --help names its options, whatever else the call holds', async (command, options) => {
    const { status, out, complaints } = await ran(command, 'no-such-file', '--nonsense', '--help');
    expect([status, complaints]).toEqual([0, []]);
    for (const option of [...options, '--help']) expect(out).toContain(`  ${option} `);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(90);
  });
});

describe('calls that are unusable', () => {
  const out = folder.file('out.pdf');
  const to = ['--out', out];
  it.each<[string[], string]>([
    [[], 'No command is given. See "seamwright --help".'],
    [['sew'], 'There is no command "sew". See "seamwright --help".'],
    [['booklet', pattern, ...to], 'The command "booklet" is not in this version. See "seamwright --help".'],
    [['sewing'], 'No FILE is given. See "seamwright sewing --help".'],
    [['sewing', horizon, '--quick'], 'There is no option --quick. See "seamwright sewing --help".'],
    [['sewing', horizon, '-q'], 'There is no option -q. See "seamwright sewing --help".'],
    [['sewing', horizon, '--json=yes'], '--json takes no value. See "seamwright sewing --help".'],
    [['sewing', horizon, '--out'], '--out needs a value. See "seamwright sewing --help".'],
    [['sewing', horizon, horizon, '--json'], '--json prints the report of one FILE. Give one, or --out DIR.'],
    [['sewing', horizon, '--block', 'sail'], `${horizon}: There is no block "sail". Choose one of: horizon.`],
    [
      ['sewing', pattern, '--block', 'sail'],
      `${pattern}: There is no block "sail". Choose one of: Paper boat, Lantern, Lighthouse, Reading lamp, Window panes.`,
    ],
    [
      ['foundations', horizon, ...to, '--share-templates=yes'],
      '--share-templates takes no value. See "seamwright foundations --help".',
    ],
    [['foundations', ...to], 'No FILE is given. See "seamwright foundations --help".'],
    [['foundations', horizon, horizon, ...to], 'More than one FILE is given. Give one at a time.'],
    [['foundations', horizon], 'No --out is given. Name the file to write, such as --out block.pdf.'],
    [
      ['foundations', horizon, '--out', 'block.png'],
      '--out block.png ends neither in .pdf nor in .svg. Name it so.',
    ],
    [['foundations', horizon, '--out', horizon], '--out is the FILE itself. Choose another name.'],
    [
      ['foundations', horizon, ...to, '--paper', 'a5'],
      'There is no paper "a5". Choose letter, legal, tabloid, a4, a3 or a size such as 13x19.',
    ],
    [
      ['foundations', horizon, ...to, '--paper', 'toString'],
      'There is no paper "tostring". Choose letter, legal, tabloid, a4, a3 or a size such as 13x19.',
    ],
    [['foundations', horizon, ...to, '--width', '0'], '--width: 0 in is too small. Type at least 1/16 in.'],
    [
      ['foundations', horizon, ...to, '--width', '-6'],
      'A value that begins with a dash is written --width=-…. See "seamwright foundations --help".',
    ],
    [
      ['foundations', horizon, ...to, '--width=-6'],
      '--width: “-6” is less than nothing. Type a length without a minus sign.',
    ],
    [
      ['foundations', horizon, ...to, '--width', 'NaN'],
      '--width: “NaN” is not a length. Type a length such as 2 3/8, 2.375 or 6cm.',
    ],
    [['foundations', horizon, ...to, '--width', '121'], '--width: 121 in is too large. Type at most 120 in.'],
    [
      ['foundations', horizon, ...to, '--allowance', '3in'],
      '--allowance: 3 in is too large. Type at most 2 in.',
    ],
    [
      ['foundations', horizon, ...to, '--allowance=-1/4in'],
      '--allowance: “-1/4in” is less than nothing. Type a length without a minus sign.',
    ],
    [
      ['foundations', horizon, ...to, '--copies', '1.5'],
      '--copies 1.5 is no whole number. Give one, such as 4.',
    ],
    [
      ['foundations', horizon, ...to, '--copies', '0'],
      `${horizon}: 0 is no number of blocks (copies). Give a whole number from 1 to 99999.`,
    ],
    [
      ['foundations', horizon, ...to, '--copies', '0', '--mirrored', 'two'],
      '--mirrored two is no whole number. Give one, such as 4.',
    ],
    [
      ['foundations', horizon, ...to, '--copies', '10000'],
      `${horizon}: That is 10000 sheets to print. Give --yes if they are wanted, or ask for fewer copies.`,
    ],
    [
      ['foundations', horizon, ...to, '--width', '3', '--sizes', '4'],
      '--width and --sizes are both given. Give one of them.',
    ],
    [
      ['foundations', horizon, ...to, '--sizes', '3,,6'],
      '--sizes: No length is given. Type a length such as 2 3/8, 2.375 or 6cm.',
    ],
    [
      ['foundations', horizon, ...to, '--sizes', '3,500%'],
      '--sizes: 500 % is out of bounds. Give 25 to 400 %, or a finished width.',
    ],
    [
      ['foundations', pattern, ...to, '--sizes', '3,50%'],
      '--sizes has widths of one block. Choose it by --block NAME.',
    ],
    [
      ['foundations', horizon, ...to, '--paper', '3x19'],
      `${horizon}: 3 in is too small (width of the paper). Type at least 4 in.`,
    ],
    [
      ['foundations', horizon, ...to, '--margins', '6'],
      `${horizon}: The margins leave nothing of the sheet (margins). Make them smaller, or choose a larger paper.`,
    ],
    [
      ['foundations', horizon, ...to, '--margins', '1/4,1/2'],
      '--margins 1/4,1/2 is neither one length nor four. Give one for all edges, or top, right, bottom, left with commas between.',
    ],
    [
      ['foundations', horizon, ...to, '--printer', 'true'],
      '--printer true is not two percentages. Give what the printer makes of a page across and down, such as 97.3%x98.9%.',
    ],
    [
      ['foundations', horizon, ...to, '--printer', '87.5%x100%'],
      `${horizon}: A printer that prints 87.5 % is not off by itself: pages are corrected within 90 and 110 % (across). Look in the print dialog for “fit to page” or “scale”, set it to 100 % or “actual size”, and print the check page again.`,
    ],
    [
      ['foundations', pattern, ...to, '--width', '6'],
      '--width is the width of one block. Choose it by --block NAME.',
    ],
    [
      ['foundations', pattern, ...to, '--block', 'lighthouse', '--width', '110in'],
      `${pattern}: 165 in is too large (finished height). Type at most 120 in.`,
    ],
    [
      ['foundations', horizon, '--out', folder.file('nowhere/out.pdf')],
      `${folder.file('nowhere/out.pdf')}: There is no folder to put the file in. Make the folder, or choose another.`,
    ],
    [
      ['foundations', horizon, ...to, '--margins', '1/4,wide,1/4,1/4'],
      '--margins: “wide” is not a length. Type a length such as 2 3/8, 2.375 or 6cm.',
    ],
    [['foundations', horizon, ...to, '--gap', '1/16'], '--gap: 1/16 in is too small. Type at least 0.2 in.'],
    [['foundations', horizon, ...to, '--overlap', '3'], '--overlap: 3 in is too large. Type at most 2 in.'],
    [['foundations', horizon, ...to, '--ink', 'pale'], 'There is no ink "pale". Choose dark or light.'],
    [
      ['foundations', horizon, ...to, '--turn', '5'],
      '--turn is for sizes to cut, and none are written. Give --cut-sizes, too.',
    ],
    [
      ['foundations', horizon, ...to, '--cut-sizes', '--turn', '60'],
      `${horizon}: A piece cannot be turned by 60° and still cover. Give 0 to 45°.`,
    ],
    [
      ['foundations', horizon, ...to, '--colourway', 'Day'],
      '--colourway is for fabrics, and nothing is said of them. Give --fabrics or --cut-sizes, too.',
    ],
    [
      ['foundations', horizon, ...to, '--fabrics', '--colourway', 'Day'],
      `${horizon}: There is no colourway "Day". Leave --colourway out: there is one only.`,
    ],
    [
      ['foundations', horizon, ...to, '--seam-lengths=no'],
      '--seam-lengths takes no value. See "seamwright foundations --help".',
    ],
    [['check-page', horizon, ...to], 'The command takes no FILE. Name the file to write by --out.'],
    [['check-page'], 'No --out is given. Name the file to write, such as --out block.pdf.'],
    [['check-page', ...to, '--unit', 'ell'], 'There is no unit "ell". Choose in or cm.'],
    [
      ['check-page', ...to, '--copies', '2'],
      'There is no option --copies. See "seamwright check-page --help".',
    ],
    [
      ['check-page', ...to, '--paper', '4x4'],
      'Only 3½ × 3½ in of the sheet can be printed on (paper and margins). Choose a larger paper or smaller margins: the check squares and a foundation need 3¼ × 4½ in.',
    ],
    [['demo', horizon], 'The command takes no FILE. Name the file to write by --out.'],
    [
      ['demo', '--out', folder.path],
      `${folder.path}: There is a folder of that name. Choose another name for the file.`,
    ],
  ])('%j', async (argv, complaint) => {
    const before = folder.listing();
    expect(await ran(...argv)).toEqual({ status: 2, out: '', complaints: [complaint] });
    expect(folder.listing()).toEqual(before);
  });

  it('take names with line breaks without making more than one line of them', async () => {
    const { complaints } = await ran('sewing', folder.file('no\nsuch\u001b[2J.svg'));
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).not.toMatch(/\p{Cc}/u);
  });
});

describe('a block that cannot be sewn', () => {
  it('has a report and no foundations', async () => {
    const attic = folder.file('attic.svg', ATTIC);
    const before = folder.listing();
    const report = await ran('sewing', attic);
    expect([report.status, report.complaints]).toEqual([1, []]);
    expect(report.out).toMatch(/^attic, 3 × 3 in, 3 patches: cannot be sewn with straight seams\.\n/);
    expect(await ran('foundations', attic, '--out', folder.file('attic.pdf'))).toEqual(report);
    expect(await ran('foundations', attic, '--out', folder.file('attic.pdf'), '--partial-seams')).toEqual(
      report,
    );
    expect(folder.listing()).toEqual(before);
  });
});

describe('a block that takes a partial seam', () => {
  it('has foundations only where partial seams are allowed', async () => {
    const chase = folder.file('chase.svg', CHASE);
    const before = folder.listing();
    const report = await ran('sewing', chase);
    const out = folder.file('chase.pdf');
    expect(await ran('foundations', chase, '--out', out)).toEqual({
      status: 1,
      out: `${report.out}Nothing is written: --partial-seams allows partial seams.\n`,
      complaints: [],
    });
    expect(folder.listing()).toEqual(before);
    const { status, out: words } = await ran('foundations', chase, '--out', out, '--partial-seams');
    expect([status, words.split('\n')[0]]).toEqual([
      0,
      expect.stringMatching(/^chase sews with partial seams only, on 5 foundations/),
    ]);
    expect(folder.listing()).toHaveLength(before.length + 1);
  });
});
