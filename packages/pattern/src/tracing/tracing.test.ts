import { sentence } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { greyPng } from '../../test/png.ts';
import { demoPattern } from '../demo/demo-pattern.ts';
import { parsePattern } from '../parse-pattern.ts';
import type { Pattern } from '../pattern.ts';
import { writePattern } from '../write-pattern.ts';
import { pictureData, picturesOf, withPictures } from './pictures.ts';
import { newTracing, type Picture, type Tracing } from './tracing.ts';

const dataOf = (bytes: Uint8Array): string =>
  `data:image/png;base64,${Buffer.from(bytes).toString('base64')}`;

const pictureOf = (width: number, height: number, name = 'lighthouse.png'): Picture => ({
  name,
  width,
  height,
  data: dataOf(greyPng(width, height)),
});

const notZero = (v: number) => (v === 0 ? 0 : v);
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(notZero);

const picture = fc
  .record({
    width: fc.integer({ min: 1, max: 40 }),
    height: fc.integer({ min: 1, max: 40 }),
    name: fc.string(),
  })
  .map(({ width, height, name }) => pictureOf(width, height, name));

const tracing: fc.Arbitrary<Tracing> = fc.record({
  picture,
  x: number(-10_000, 10_000),
  y: number(-10_000, 10_000),
  width: number(1 / 16, 1200),
  turn: number(-179.999, 180),
  strength: number(0.05, 1),
  locked: fc.boolean(),
  shown: fc.boolean(),
});

/** The demo pattern with these tracings in its first blocks. */
const traced = (...tracings: readonly (Tracing | undefined)[]): Pattern => {
  const demo = demoPattern();
  const blocks = demo.blocks.map((block, i) => {
    const one = tracings[i];
    return one === undefined ? block : { ...block, tracing: one };
  });
  return { ...demo, blocks };
};

const read = (text: string): Pattern => {
  const parsed = parsePattern(text);
  if (!parsed.ok) throw new Error(sentence(parsed.problem));
  return parsed.value.pattern;
};

const PLACE = { x: 3, y: 3, width: 6, turn: 0 };

describe('pictures under drawings', () => {
  it('come back from a file as they were', () => {
    fc.assert(
      fc.property(fc.array(fc.option(tracing, { nil: undefined }), { maxLength: 4 }), (tracings) => {
        const pattern = traced(...tracings);
        const text = writePattern(pattern);
        expect(read(text)).toEqual(pattern);
        expect(writePattern(read(text))).toBe(text);
      }),
      { seed: 71 },
    );
  });

  it('are held once in a file, and in memory, by however many blocks show them', () => {
    const shared = pictureOf(30, 20);
    // The second is another object that holds the same, as after reading two files.
    const pattern = traced(newTracing(shared, PLACE), newTracing({ ...shared }, PLACE));
    const text = writePattern(pattern);
    expect(text.split(shared.data)).toHaveLength(2);
    const [one, other] = read(text).blocks;
    expect(one!.tracing!.picture).toBe(other!.tracing!.picture);
    expect(pictureData(read(text))).toBe(shared.data.length);
  });

  it('lie under blocks and show fabrics alike: held once, exchanged in both', () => {
    const shared = pictureOf(30, 20);
    const swatch = { picture: shared, width: 4.5 };
    const plain = traced(newTracing(shared, PLACE));
    const pattern: Pattern = {
      ...plain,
      fabrics: [{ id: 'oilskin', name: 'Oilskin', colour: '#e9b949', swatch }, ...plain.fabrics!],
    };
    const text = writePattern(pattern);
    expect(text.split(shared.data)).toHaveLength(2);
    expect(read(text)).toEqual(pattern);
    expect(picturesOf(read(text))).toHaveLength(1);
    const after = withPictures(pattern, (one) => ({ ...one, data: 'elsewhere' }));
    expect(after.fabrics![0]!.swatch!.picture.data).toBe('elsewhere');
    expect(after.fabrics![1]).toBe(pattern.fabrics![1]);
  });

  it('are exchanged without touching the blocks that have none', () => {
    const pattern = traced(undefined, newTracing(pictureOf(3, 2), PLACE));
    const [before] = picturesOf(pattern);
    const after = withPictures(pattern, (one) => ({ ...one, data: 'elsewhere' }));
    expect(after.blocks[0]).toBe(pattern.blocks[0]);
    expect(after.blocks[1]!.tracing!.picture.data).toBe('elsewhere');
    expect(withPictures(after, () => before!)).toEqual(pattern);
    expect(withPictures(pattern, (one) => one)).toBe(pattern);
  });
});

type Loose = Record<string, unknown>;

const refusal = (spoil: (document: Loose, tracing: Loose, picture: Loose) => void): string => {
  const document = JSON.parse(writePattern(traced(newTracing(pictureOf(30, 20), PLACE)))) as {
    blocks: { tracing: Loose }[];
    pictures: { picture1: Loose };
  };
  spoil(document as never, document.blocks[0]!.tracing, document.pictures.picture1);
  const result = parsePattern(JSON.stringify(document));
  if (result.ok) throw new Error('This was read');
  return sentence(result.problem);
};

const MEND = 'Open a saved copy of the pattern, or mend the file at that place.';
const TAKE_OUT = 'Open a saved copy of the pattern, or take the picture out of the file.';

it.each<[string, Parameters<typeof refusal>[0], string]>([
  [
    'a picture that is not there',
    (_, tracing) => {
      tracing.picture = 'picture7';
    },
    'No block or fabric has the picture "picture1" (pictures.picture1). Take it out, or name it in a block or a fabric.',
  ],
  [
    'a picture that is not there, among none',
    (document) => {
      delete document.pictures;
    },
    'There is no picture "picture1" (blocks[0].tracing). Add the picture, or take the tracing out of the block.',
  ],
  [
    'a fabric of a picture that is not there',
    (document) => {
      document.fabrics = [
        { id: 'oilskin', name: 'Oilskin', colour: '#e9b949', swatch: { picture: 'no1', width: 4 } },
      ];
    },
    'There is no picture "no1" (fabrics[0].swatch). Add the picture, or take the swatch off the fabric.',
  ],
  [
    'an address in place of a picture',
    (_, __, picture) => {
      picture.data = 'https://example.org/lighthouse.png';
    },
    `A field of the pattern file has to be a picture as data:image/png;base64,… (or jpeg, webp) (pictures.picture1.data). ${MEND}`,
  ],
  [
    'a picture of a kind that can hold scripts',
    (_, __, picture) => {
      picture.data = `data:image/svg+xml;base64,${Buffer.from('<svg/>').toString('base64')}`;
    },
    `A field of the pattern file has to be a picture as data:image/png;base64,… (or jpeg, webp) (pictures.picture1.data). ${MEND}`,
  ],
  [
    'a picture of more than the most characters',
    (_, __, picture) => {
      picture.data = `data:image/png;base64,${'A'.repeat(2_000_000)}`;
    },
    `A field of the pattern file has to have at most 2000000 characters (pictures.picture1.data). ${MEND}`,
  ],
  [
    'bytes that are no picture',
    (_, __, picture) => {
      picture.data = `data:image/png;base64,${Buffer.from('a letter').toString('base64')}`;
    },
    `A picture of the pattern file is broken (pictures.picture1). ${TAKE_OUT}`,
  ],
  [
    'a picture of another kind than it says',
    (_, __, picture) => {
      picture.data = String(picture.data).replace('image/png', 'image/jpeg');
    },
    `A picture of the pattern file is broken (pictures.picture1). ${TAKE_OUT}`,
  ],
  [
    'a picture of another size than it says',
    (_, __, picture) => {
      picture.data = dataOf(greyPng(31, 20));
    },
    `A picture has 31 × 20 pixels, and the pattern file says 30 × 20 (pictures.picture1). ${TAKE_OUT}`,
  ],
  [
    'a picture that would take the memory',
    (_, __, picture) => {
      Object.assign(picture, { width: 40_000, height: 1, data: dataOf(greyPng(40_000, 1)) });
    },
    `A picture of the pattern file has more than 2400 pixels a side (pictures.picture1). ${TAKE_OUT}`,
  ],
  [
    'half a pixel',
    (_, __, picture) => {
      picture.width = 30.5;
    },
    `A field of the pattern file has to be a whole number (pictures.picture1.width). ${MEND}`,
  ],
  [
    'no width',
    (_, tracing) => {
      tracing.width = 0;
    },
    `A field of the pattern file has to be at least 0.0625 (blocks[0].tracing.width). ${MEND}`,
  ],
  [
    'a turn of more than half',
    (_, tracing) => {
      tracing.turn = 181;
    },
    `A field of the pattern file has to be at most 180 (blocks[0].tracing.turn). ${MEND}`,
  ],
  [
    'a place beyond everything',
    (_, tracing) => {
      tracing.x = 20_000;
    },
    `A field of the pattern file has to be at most 10000 (blocks[0].tracing.x). ${MEND}`,
  ],
  [
    'a field that is not known',
    (_, tracing) => {
      tracing.frame = 'gold';
    },
    'The pattern file has a field that is not known, "frame" (blocks[0].tracing). Update Seamwright if a later version wrote the file, or take the field out.',
  ],
])('a pattern file with %s is refused', (_name, spoil, expected) => {
  expect(refusal(spoil)).toBe(expected);
});
