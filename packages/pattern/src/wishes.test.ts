import { describe, expect, it } from 'vitest';
import { demoPattern } from './demo/demo-pattern.ts';
import { parsePattern } from './parse-pattern.ts';
import type { Pattern } from './pattern.ts';
import { NO_WISHES, type PinRecord, resolvePins } from './wishes.ts';
import { writePattern } from './write-pattern.ts';

const PINS: readonly PinRecord[] = [
  { kind: 'first', patch: 'patch2' },
  { kind: 'before', patch: 'patch1', than: 'patch3' },
  { kind: 'together', patches: ['patch1', 'patch2'] },
  { kind: 'apart', patches: ['patch2', 'patch3'] },
  { kind: 'letter', patch: 'patch3', letter: 'C' },
];
const records = ['patch3', 'patch1', 'patch2'].map((id) => ({
  id,
  signature: '',
  at: { x: 0, y: 0 },
  note: '',
}));

const withPins = (pins: readonly unknown[]): Pattern => {
  const demo = demoPattern();
  const [first, ...rest] = demo.blocks;
  return {
    ...demo,
    blocks: [{ ...first!, sewing: { ...NO_WISHES, pins } } as Pattern['blocks'][number], ...rest],
  };
};

describe('what the maker wants of the sewing', () => {
  it('is kept with the pattern, byte for byte', () => {
    const pattern = withPins(PINS);
    const text = writePattern(pattern);
    const read = parsePattern(text);
    if (!read.ok) throw new Error(read.problem.what);
    expect(read.value.pattern.blocks[0]!.sewing).toEqual({ ...NO_WISHES, pins: PINS });
    expect(writePattern(read.value.pattern)).toBe(text);
  });

  it.each([
    [{ kind: 'last', patch: 'patch1' }],
    [{ kind: 'first' }],
    [{ kind: 'letter', patch: 'patch1', letter: 'a1' }],
    [{ kind: 'together', patches: ['patch1'] }],
  ])('a pin that makes no sense is refused, with its place: %j', (pin) => {
    const read = parsePattern(writePattern(withPins([pin])));
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.problem.where).toContain('blocks[0].sewing.pins[0]');
  });

  it('finds the patches again by their records', () => {
    expect(resolvePins(PINS, records)).toEqual({
      pins: [
        { kind: 'first', patch: 2 },
        { kind: 'before', patch: 1, than: 0 },
        { kind: 'together', patches: [1, 2] },
        { kind: 'apart', patches: [2, 0] },
        { kind: 'letter', patch: 0, letter: 'C' },
      ],
      lost: [],
    });
  });

  it('a pin whose patch is gone is lost, and the others hold', () => {
    const { pins, lost } = resolvePins(PINS, records.slice(1));
    expect(lost).toEqual([PINS[1], PINS[3], PINS[4]]);
    expect(pins).toHaveLength(2);
  });
});
