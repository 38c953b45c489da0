import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { Folder, HORIZON, ran } from './harness.ts';

/** The pattern package's drawings that cannot be used, each with its sentence. */
const refused = fileURLToPath(new URL('../../pattern/test/fixtures/svg-refused/', import.meta.url));
const sentences: Record<string, string> = JSON.parse(readFileSync(`${refused}sentences.json`, 'utf8'));

const folder = new Folder();
const pattern = (await ran('demo')).out;

/** A file with a pattern that is changed by `edit`. */
function edited(
  name: string,
  edit: (document: { blocks: { [field: string]: unknown }[]; [field: string]: unknown }) => void,
) {
  const document = JSON.parse(pattern);
  edit(document);
  return folder.file(name, JSON.stringify(document));
}

const files: [string, string][] = [
  ...readdirSync(refused)
    .filter((file) => file.endsWith('.svg') && file !== 'empty.svg' && file !== 'not-xml.svg')
    .map((file): [string, string] => [`${refused}${file}`, sentences[file.replace('.svg', '')]!]),
  // These two begin with no "<", so they are taken for pattern files.
  [`${refused}empty.svg`, 'The file is empty. Open a saved copy of the pattern.'],
  [
    `${refused}not-xml.svg`,
    'This is no pattern file of Seamwright (line 1). Choose a file that Seamwright saved, or an SVG drawing.',
  ],
  [folder.file('missing.svg'), 'There is no such file. Check its name.'],
  [folder.path, 'This is a folder. Name a file in it.'],
  [
    folder.file('large.svg', `${HORIZON}${' '.repeat(50_000_000)}`),
    'The file is larger than 20 MB. Check that this is the right file; take pictures out of it and save it again.',
  ],
  [
    '/dev/zero',
    'The file is larger than 20 MB. Check that this is the right file; take pictures out of it and save it again.',
  ],
  [
    folder.file('picture.png', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe)),
    'The file is not a text in UTF-8. Choose a pattern file or an SVG drawing.',
  ],
  [
    folder.file('cut.json', pattern.slice(0, 5000)),
    expect.stringMatching(
      /^The pattern file is cut short \(line \d+, column \d+\)\. Open a saved copy of the pattern\.$/,
    ) as never,
  ],
  [
    edited('later.json', (document) => {
      document.format = 'seamwright-pattern/2';
    }),
    'The pattern was saved by a later version of Seamwright: its format is 2, and this version reads up to 1. Update Seamwright and open it again.',
  ],
  [
    edited('field.json', (document) => {
      document.blocks[1]!.batting = 'wool';
    }),
    'The pattern file has a field that is not known, "batting" (blocks[1]). Update Seamwright if a later version wrote the file, or take the field out.',
  ],
  [
    edited('bow-tie.json', (document) => {
      const { outline } = document.blocks[0]!.drawing as { outline: string[] };
      outline.splice(0, 4, 'nw', 'se', 'ne', 'sw');
      document.blocks[0]!.drawing = { ...(document.blocks[0]!.drawing as object), outline };
    }),
    'The outline crosses itself (blocks[0].drawing, the edge from corner 1 to corner 2 crosses the edge from corner 3 to corner 4). Move one of these corners.',
  ],
];

describe.each(files)('%s', (file, sentence) => {
  const complaints = typeof sentence === 'string' ? [`${file}: ${sentence}`] : null;

  it.each<[string, string[]]>([
    ['sewing', []],
    ['sewing', ['--json']],
    ['sewing', ['--out', folder.file('reports')]],
    ['foundations', ['--out', folder.file('pages.pdf')]],
    ['foundations', ['--out', folder.file('pages.svg')]],
  ])('gives one sentence to %s %j, and nothing is written', async (command, options) => {
    const before = folder.listing();
    const { status, out, complaints: lines } = await ran(command, file, ...options);
    expect([status, out, lines.length]).toEqual([2, '', 1]);
    if (complaints !== null) expect(lines).toEqual(complaints);
    else expect(lines[0]!.slice(`${file}: `.length)).toEqual(sentence);
    expect(folder.listing()).toEqual(before);
  });
});
