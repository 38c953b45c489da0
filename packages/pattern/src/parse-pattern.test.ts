import { arrange, carryPatches, drawingFromSegments } from '@seamwright/arrangement';
import { sentence } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoPattern } from './demo/demo-pattern.ts';
import { LARGEST_FILE } from './limits.ts';
import { parsePattern } from './parse-pattern.ts';
import type { Block, Fabric, Pattern } from './pattern.ts';
import { writePattern } from './write-pattern.ts';

const refusal = (text: string): string => {
  const result = parsePattern(text);
  if (result.ok) throw new Error('This text was read');
  return sentence(result.problem);
};

const notZero = (v: number) => (v === 0 ? 0 : v);
const coordinate = fc.double({ min: -20, max: 20, noNaN: true }).map(notZero);

const block: fc.Arbitrary<Omit<Block, 'id'>> = fc
  .record({
    name: fc.string({ unit: 'grapheme' }),
    size: fc.double({ min: 0.5, max: 119, noNaN: true }),
    grid: fc.double({ min: 0.01, max: 100, noNaN: true }),
    gridParts: fc.option(fc.integer({ min: 2, max: 64 }), { nil: undefined }),
    lines: fc.array(fc.tuple(coordinate, coordinate, coordinate, coordinate), { maxLength: 5 }),
    note: fc.string(),
    fabric: fc.option(fc.nat({ max: 3 }), { nil: undefined }),
  })
  .map(({ name, size, grid, gridParts, lines, note, fabric }) => {
    const corners = [
      [0, 0],
      [size, 0],
      [size, size],
      [0, size],
    ].map(([x, y]) => ({ x: x!, y: y! }));
    const segments = lines.map(([x, y, u, v]) => ({ a: { x, y }, b: { x: u, y: v } }));
    const drawn = drawingFromSegments(corners, segments);
    const drawing = { ...drawn, splits: drawn.splits.filter(({ from, to }) => from !== to) };
    const arranged = arrange(drawing);
    const patches = arranged.ok
      ? carryPatches([], arranged.value, []).map((record) => ({
          ...record,
          note,
          ...(fabric === undefined ? {} : { fabric: `f${fabric}` }),
        }))
      : [];
    return { name, drawing, grid, ...(gridParts !== undefined && { gridParts }), patches };
  });

/** What fabrics may say besides. */
const more: fc.Arbitrary<Partial<Fabric>> = fc.record(
  {
    width: fc.double({ min: 4, max: 130, noNaN: true }),
    grain: fc.constantFrom('straight' as const, 'one way' as const),
  },
  { requiredKeys: [] },
);

const pattern: fc.Arbitrary<Pattern> = fc.record({
  format: fc.constant('seamwright-pattern/1' as const),
  title: fc.string({ unit: 'grapheme' }),
  unit: fc.constantFrom('in' as const, 'cm' as const),
  fabrics: fc
    .array(fc.record({ name: fc.string({ unit: 'grapheme' }), colour: fc.nat({ max: 0xffffff }), more }), {
      minLength: 4,
      maxLength: 6,
    })
    .map((fabrics) =>
      fabrics.map(({ name, colour, more }, i) => ({
        id: `f${i}`,
        name,
        colour: `#${colour.toString(16).padStart(6, '0')}`,
        ...more,
      })),
    ),
  blocks: fc
    .array(block, { minLength: 1, maxLength: 3 })
    .map((blocks) => blocks.map((each, i) => ({ id: `b${i + 1}`, ...each }))),
});

/** The same value with the members of every object in the opposite order. */
const turnedRound = <T>(value: T): T => {
  if (Array.isArray(value)) return value.map(turnedRound) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, member]) => [key, turnedRound(member)]),
  ) as T;
};

describe('pattern files', () => {
  it('give back the pattern that was written', () => {
    fc.assert(
      fc.property(pattern, (written) => {
        expect(parsePattern(writePattern(written))).toEqual({
          ok: true,
          value: { pattern: written, notes: [] },
        });
      }),
      { seed: 47, numRuns: 200 },
    );
  });

  it('have the same bytes for the same pattern, and end with a line break', () => {
    fc.assert(
      fc.property(pattern, (written) => {
        const text = writePattern(written);
        expect(writePattern(turnedRound(written))).toBe(text);
        expect(text).toMatch(/}\n$/);
      }),
      { seed: 48, numRuns: 100 },
    );
  });

  it('open with a byte order mark, too', () => {
    expect(parsePattern(`\uFEFF${writePattern(demoPattern())}`).ok).toBe(true);
  });

  it('that are cut short anywhere are refused, and the end is named', () => {
    const whole = writePattern(demoPattern());
    for (let length = 1; length < whole.trimEnd().length; length += 97) {
      const lines = whole.slice(0, length).split('\n');
      expect(refusal(whole.slice(0, length))).toBe(
        `The pattern file is cut short (line ${lines.length}, column ${lines.at(-1)!.length + 1}). Open a saved copy of the pattern.`,
      );
    }
  });
});

type Loose = Record<string, unknown>;

/** The text of a small sound pattern file, changed by `edit`. */
function changed(
  edit: (document: Loose, block: Loose, drawing: Loose & { points: Record<string, Loose> }) => void,
): string {
  const drawing = {
    points: {
      a: { id: 'a', x: 0, y: 0 },
      b: { id: 'b', x: 6, y: 0 },
      c: { id: 'c', x: 6, y: 6 },
      d: { id: 'd', x: 0, y: 6 },
      e: { id: 'e', x: 3, y: 0, on: ['edge:a'] },
    },
    outline: ['a', 'b', 'c', 'd'],
    splits: [{ id: 's', from: 'e', to: 'c' }],
  };
  const patches = [{ id: 'p1', signature: 'x', at: { x: 1, y: 1 }, note: '' }];
  const only = { id: 'b1', name: 'Boat', drawing, grid: 0.5, patches };
  const document = { format: 'seamwright-pattern/1', title: 'Test', unit: 'in', blocks: [only] };
  edit(document, only, drawing as never);
  return JSON.stringify(document);
}

const MEND = 'Open a saved copy of the pattern, or mend the file at that place.';

describe('pattern files that cannot be used', () => {
  it('are sound before they are spoilt', () => {
    expect(parsePattern(changed(() => {})).ok).toBe(true);
  });

  it.each<[string, string, string]>([
    ['empty', ' \n', 'The file is empty. Open a saved copy of the pattern.'],
    [
      'other text',
      'a letter',
      'This is no pattern file of Seamwright (line 1). Choose a file that Seamwright saved, or an SVG drawing.',
    ],
    [
      'other JSON',
      '{"name": "x"}',
      'This is no pattern file of Seamwright. Choose a file that Seamwright saved, or an SVG drawing.',
    ],
    [
      'a list',
      '[1]',
      'This is no pattern file of Seamwright. Choose a file that Seamwright saved, or an SVG drawing.',
    ],
    [
      'unsound JSON',
      '{\n  "format": seamwright\n}',
      `The pattern file is not sound JSON (line 2, column 13). ${MEND}`,
    ],
    [
      'a later version',
      '{"format": "seamwright-pattern/2", "title": 3}',
      'The pattern was saved by a later version of Seamwright: its format is 2, and this version reads up to 1. Update Seamwright and open it again.',
    ],
    [
      'a version 0',
      '{"format": "seamwright-pattern/0"}',
      'This is no pattern file of Seamwright. Choose a file that Seamwright saved, or an SVG drawing.',
    ],
    [
      'an unknown field',
      changed((_, block) => {
        (block.patches as Loose[])[0]!.colour = 'red';
      }),
      'The pattern file has a field that is not known, "colour" (blocks[0].patches[0]). Update Seamwright if a later version wrote the file, or take the field out.',
    ],
    [
      'an unknown field at the top',
      changed((document) => {
        document.author = 'me';
      }),
      'The pattern file has a field that is not known, "author" (at the top). Update Seamwright if a later version wrote the file, or take the field out.',
    ],
    [
      'a fabric of no colour',
      changed((document) => {
        document.fabrics = [{ id: 'sky', name: 'Sky', colour: 'blue' }];
      }),
      `A field of the pattern file has to be a colour: # and six of 0 to 9 and a to f (fabrics[0].colour). ${MEND}`,
    ],
    [
      'two fabrics of one id',
      changed((document) => {
        const sky = { id: 'sky', name: 'Sky', colour: '#a3bcc0' };
        document.fabrics = [sky, sky];
      }),
      'Two fabrics have the id "sky" (fabrics). Give one of them another.',
    ],
    [
      'a patch of a fabric that is not there',
      changed((_, block) => {
        (block.patches as Loose[])[0]!.fabric = 'sky';
      }),
      'A patch is cut from a fabric that the pattern does not have, "sky" (blocks[0].patches, patch "p1"). Add the fabric, or take it off the patch.',
    ],
    [
      'a missing field',
      changed((document) => {
        delete document.title;
      }),
      `A field of the pattern file has to be a text (title). ${MEND}`,
    ],
    [
      'a wrong type',
      changed((_, __, { points }) => {
        points.a!.x = '0';
      }),
      `A field of the pattern file has to be a number (blocks[0].drawing.points.a.x). ${MEND}`,
    ],
    [
      'a list for an object',
      changed((_, block) => {
        block.drawing = [];
      }),
      `A field of the pattern file has to be an object (blocks[0].drawing). ${MEND}`,
    ],
    [
      'an unknown unit',
      changed((document) => {
        document.unit = 'mm';
      }),
      `A field of the pattern file has to be "in" or "cm" (unit). ${MEND}`,
    ],
    [
      'no blocks',
      changed((document) => {
        document.blocks = [];
      }),
      `A field of the pattern file has to hold a block (blocks). ${MEND}`,
    ],
    [
      'a grid of 0',
      changed((_, block) => {
        block.grid = 0;
      }),
      `A field of the pattern file has to be above 0 (blocks[0].grid). ${MEND}`,
    ],
    [
      'a negative grid',
      changed((_, block) => {
        block.grid = -1;
      }),
      `A field of the pattern file has to be above 0 (blocks[0].grid). ${MEND}`,
    ],
    ...[
      ['1', 'has to be at least 2'],
      ['65', 'has to be at most 64'],
      ['2.5', 'has to be a whole number'],
    ].map(([parts, says]): [string, string, string] => [
      `a grid of ${parts} parts`,
      changed((_, block) => {
        block.gridParts = Number(parts);
      }),
      `A field of the pattern file ${says} (blocks[0].gridParts). ${MEND}`,
    ]),
    [
      'a grid above 120 in',
      changed((_, block) => {
        block.grid = 121;
      }),
      `A field of the pattern file has to be at most 120 (blocks[0].grid). ${MEND}`,
    ],
    [
      'an id that is none',
      changed((_, __, { points }) => {
        points[''] = { id: '', x: 0, y: 0 };
      }),
      `A field of the pattern file has to be an id: a letter, then letters, digits and : . _ - (blocks[0].drawing.points.). ${MEND}`,
    ],
    [
      'a number too large for one',
      changed(() => {}).replace('"x":6', '"x":1e999'),
      `A field of the pattern file has to be a number (blocks[0].drawing.points.b.x). ${MEND}`,
    ],
    [
      'two blocks of one id',
      changed((document, block) => {
        document.blocks = [block, block];
      }),
      'Two blocks have the id "b1" (blocks). Give one of them another.',
    ],
    [
      'two patches of one id',
      changed((_, block) => {
        block.patches = [...(block.patches as Loose[]), ...(block.patches as Loose[])];
      }),
      'Two patches have the id "p1" (blocks[0].patches). Give one of them another.',
    ],
    [
      'a drawing that contradicts itself',
      changed((_, __, drawing) => {
        drawing.splits = [{ id: 's', from: 'e', to: 'nowhere' }];
      }),
      'There is no point "nowhere" (blocks[0].drawing, split "s"). Add the point, or name one that is there.',
    ],
  ])('%s', (_name, text, expected) => {
    expect(refusal(text)).toBe(expected);
  });

  it('50 MB', () => {
    const large = ' '.repeat(50_000_000);
    expect(refusal(large)).toMatch(/^The file is larger than 20 MB/);
    expect(refusal(writePattern(demoPattern()) + ' '.repeat(LARGEST_FILE))).toMatch(
      /^The file is larger than 20 MB/,
    );
  });

  it('whatever bytes a file has, there is a pattern or one sentence, never an exception', () => {
    const whole = changed(() => {});
    fc.assert(
      fc.property(fc.nat(whole.length), fc.nat(40), fc.string({ maxLength: 12 }), (at, drop, put) => {
        const result = parsePattern(whole.slice(0, at) + put + whole.slice(at + drop));
        if (!result.ok) expect(sentence(result.problem)).toMatch(/^[^\n]+\.$/);
      }),
      { seed: 49, numRuns: 3000 },
    );
  });
});
