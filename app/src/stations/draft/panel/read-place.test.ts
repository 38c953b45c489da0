import { describe, expect, it } from 'vitest';
import { readPlace } from './read-place.ts';

describe('readPlace', () => {
  it.each([
    ['2 3/8', 2.375],
    ['0', 0],
    ['-1/2', -0.5],
    ['− 1½', -1.5],
    ['–3', -3],
    ['-0', 0],
    ['2.54cm', 1],
    ['-2.54 cm', -1],
  ])('%j is %d in', (typed, inches) => {
    expect(readPlace(typed, 'in')).toEqual({ ok: true, value: inches });
  });

  it('takes a bare number for the unit that lengths are shown in', () => {
    expect(readPlace('-5.08', 'cm')).toEqual({ ok: true, value: -2 });
  });

  it.each(['', '-', '--1', 'left', '121', '-500', 'NaN'])('%j is refused in one sentence', (typed) => {
    expect(readPlace(typed, 'in')).toMatchObject({
      ok: false,
      problem: { remedy: expect.stringMatching(/./) },
    });
  });
});
