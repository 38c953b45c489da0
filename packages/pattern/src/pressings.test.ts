import type { PatchRecord } from '@seamwright/arrangement';
import { expect, test } from 'vitest';
import { demoPattern } from './demo/demo-pattern.ts';
import { parsePattern } from './parse-pattern.ts';
import { type PressingRecord, pressingOf, withPressing } from './pressings.ts';
import { writePattern } from './write-pattern.ts';

const records = ['keel', 'sail', 'mast', 'flag'].map(
  (id): PatchRecord => ({ id, signature: '', at: { x: 0, y: 0 }, note: '' }),
);
const under = (pressings: readonly PressingRecord[], ...pairs: [number, number][]) =>
  pressingOf(pressings, pairs, records);

test('a pressing holds for its join whichever unit comes first, and for no other', () => {
  const said = withPressing([], [[0, 1]], records, 'first');
  expect(said).toEqual([{ patches: ['keel', 'sail'], under: 'first' }]);
  expect(under(said, [0, 1])).toBe('first');
  // The units have changed places: the keel's side is the second now.
  expect(under(said, [2, 3], [1, 0])).toBe('second');
  expect(under(said, [0, 2])).toBeUndefined();
  expect(under(withPressing(said, [[1, 0]], records, 'open'), [0, 1])).toBe('open');
});

test('what is said of a join takes the place of what was said of it by other patches', () => {
  const before = withPressing([], [[0, 1]], records, 'first');
  const other = withPressing(before, [[2, 3]], records, 'open');
  const after = withPressing(
    other,
    [
      [2, 1],
      [0, 1],
    ],
    records,
    'second',
  );
  expect(after).toEqual([
    { patches: ['mast', 'flag'], under: 'open' },
    { patches: ['mast', 'sail'], under: 'second' },
  ]);
});

test('pressings are in the file; files without them open as ever', () => {
  const plain = demoPattern();
  const [first, ...rest] = plain.blocks;
  const pressings = [{ patches: ['a', 'b'], under: 'second' }] as const;
  const pattern = { ...plain, blocks: [{ ...first!, pressings }, ...rest] };
  for (const one of [plain, pattern]) {
    const read = parsePattern(writePattern(one));
    expect(read.ok && read.value.pattern.blocks[0]!.pressings).toEqual(one.blocks[0]!.pressings);
  }
  const spoilt = parsePattern(writePattern(pattern).replace('"second"', '"upwards"'));
  expect(spoilt.ok ? '' : `${spoilt.problem.where}`).toBe('blocks[0].pressings[0].under');
});
