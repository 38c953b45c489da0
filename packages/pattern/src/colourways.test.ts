import { sentence } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addColourway,
  type ColourwayKey,
  colourwayKey,
  cutFrom,
  exchangeFabrics,
  fabricIn,
  removeColourway,
  removeFabric,
  renameColourway,
} from './colourways.ts';
import { demoPattern } from './demo/demo-pattern.ts';
import { parsePattern } from './parse-pattern.ts';
import type { Pattern } from './pattern.ts';
import { writePattern } from './write-pattern.ts';

const BY_DAY = { id: 'day', name: 'By day' };
const BY_NIGHT = { id: 'night', name: 'By night' };
const IN_FOG = { id: 'fog', name: 'In fog' };

const two = (): Pattern => addColourway(demoPattern(), BY_NIGHT, null, BY_DAY);

/** From which fabrics all patches of all blocks are cut. */
const worn = ({ blocks }: Pattern, colourway: ColourwayKey) =>
  blocks.flatMap(({ patches }) => patches.map((record) => fabricIn(record, colourway)));

const kept = (pattern: Pattern): Pattern => {
  const read = parsePattern(writePattern(pattern));
  if (!read.ok) throw new Error(sentence(read.problem));
  return read.value.pattern;
};

describe('colourways', () => {
  it('begin as a copy, and then go their own way', () => {
    const pattern = two();
    expect(worn(pattern, 'night')).toEqual(worn(demoPattern(), null));
    expect(pattern.colourways).toEqual([BY_DAY, BY_NIGHT]);
    const dark = exchangeFabrics(pattern, 'night', new Map([['sailcloth', 'slate']]));
    expect(worn(dark, null)).toEqual(worn(pattern, null));
    expect(worn(dark, 'night')).not.toContain('sailcloth');
    expect(kept(dark)).toEqual(dark);
  });

  it('are found by their ids; the first, and one that is not there, is the first', () => {
    expect(['day', 'night', 'fog', null].map((id) => colourwayKey(two(), id))).toEqual([
      null,
      'night',
      null,
      null,
    ]);
  });

  it('take a name', () => {
    expect(renameColourway(two(), 'night', 'Night').colourways?.[1]).toEqual({ id: 'night', name: 'Night' });
    const pattern = two();
    expect(renameColourway(pattern, 'night', 'By night')).toBe(pattern);
    expect(renameColourway(pattern, 'fog', 'Fog')).toBe(pattern);
  });

  it('go without a trace, and leave the pattern as it was before they came', () => {
    expect(removeColourway(two(), 'night')).toEqual(demoPattern());
    const pattern = two();
    expect(removeColourway(pattern, 'fog')).toBe(pattern);
  });

  it('follow when the first goes', () => {
    const dark = exchangeFabrics(two(), 'night', new Map([['sailcloth', 'slate']]));
    const three = addColourway(dark, IN_FOG, null, BY_DAY);
    const rest = removeColourway(three, 'day');
    expect(rest.colourways).toEqual([BY_NIGHT, IN_FOG]);
    expect(worn(rest, null)).toEqual(worn(three, 'night'));
    expect(worn(rest, 'fog')).toEqual(worn(three, 'fog'));
    expect(kept(rest)).toEqual(rest);
  });

  it('have fabrics swapped, twice back to where they were', () => {
    const swapped = new Map([
      ['sailcloth', 'slate'],
      ['slate', 'sailcloth'],
    ]);
    const pattern = two();
    const once = exchangeFabrics(pattern, 'night', swapped);
    expect(worn(once, 'night')).not.toEqual(worn(pattern, 'night'));
    expect(exchangeFabrics(once, 'night', swapped)).toEqual(pattern);
  });

  it('lose a fabric in all of them', () => {
    const pattern = removeFabric(two(), 'sailcloth');
    expect([...worn(pattern, null), ...worn(pattern, 'night')]).not.toContain('sailcloth');
    expect(kept(pattern)).toEqual(pattern);
  });

  it('are told of each patch alone', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(null, 'night', 'fog'), fc.constantFrom(null, 'a', 'b'))),
        (steps) => {
          const [record] = demoPattern().blocks[0]!.patches;
          const expected = new Map<ColourwayKey, string | undefined>([[null, record!.fabric]]);
          let cut = record!;
          for (const [colourway, fabric] of steps) {
            cut = cutFrom(cut, colourway, fabric);
            expected.set(colourway, fabric ?? undefined);
          }
          for (const key of [null, 'night', 'fog']) expect(fabricIn(cut, key)).toBe(expected.get(key));
          expect(cut.fabrics).not.toEqual({});
        },
      ),
      { seed: 83 },
    );
  });
});

type Loose = { colourways: unknown; blocks: { patches: { id: string; fabrics?: unknown }[] }[] };

it.each<[string, (document: Loose) => void, string]>([
  [
    'one colourway in the list',
    (document) => {
      document.colourways = [BY_DAY];
    },
    'A field of the pattern file has to hold two or more (colourways). Open a saved copy of the pattern, or mend the file at that place.',
  ],
  [
    'two of one id',
    (document) => {
      document.colourways = [BY_DAY, BY_DAY, BY_NIGHT];
    },
    'Two colourways have the id "day" (colourways). Give one of them another.',
  ],
  [
    'a patch in a colourway that is not there',
    (document) => {
      document.blocks[0]!.patches[0]!.fabrics = { fog: 'slate' };
    },
    'A patch has a fabric in a colourway that the pattern does not have, "fog" (blocks[0].patches, patch "patch1"). Add the colourway after the first, or take it off the patch.',
  ],
  [
    'a patch of a fabric that is not there',
    (document) => {
      document.blocks[0]!.patches[0]!.fabrics = { night: 'fog' };
    },
    'A patch is cut from a fabric that the pattern does not have, "fog" (blocks[0].patches, patch "patch1"). Add the fabric, or take it off the patch.',
  ],
])('a pattern file with %s is refused', (_, spoil, expected) => {
  const document = JSON.parse(writePattern(two())) as Loose;
  spoil(document);
  const read = parsePattern(JSON.stringify(document));
  if (read.ok) throw new Error('This was read');
  expect(sentence(read.problem)).toBe(expected);
});
