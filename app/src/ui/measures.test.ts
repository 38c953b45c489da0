import { square } from '@seamwright/drafting';
import { describe, expect, it } from 'vitest';
import { lengthWords, originOf, placeWords } from './measures.ts';

const ORIGIN = { x: 0, y: 0 };

describe('lengths and places as one reads them off a ruler', () => {
  it.each([
    [4.25, 'in', '4¼ in'],
    [6.0208, 'in', 'about 6 1/32 in'],
    [2.71875, 'in', '2 23/32 in'],
    [1 / 2.54, 'cm', '1 cm'],
    [6.0208, 'cm', '15.29 cm'],
  ] as const)('%d in, shown in %s', (inches, unit, words) => {
    expect(lengthWords(inches, unit)).toBe(words);
  });

  it('measures places from the block, wherever it lies', () => {
    expect(placeWords({ x: 3.5, y: 0 }, ORIGIN, 'in')).toBe('3½, 0 in');
    expect(placeWords({ x: 3.5, y: 0 }, { x: 1, y: -2 }, 'in')).toBe('2½, 2 in');
    expect(placeWords({ x: 1.01, y: 2 }, ORIGIN, 'in')).toBe('about 1, 2 in');
    expect(placeWords({ x: 1, y: 2.01 }, ORIGIN, 'in')).toBe('1, about 2 in');
    expect(placeWords({ x: 1.01, y: 2.01 }, ORIGIN, 'in')).toBe('about 1, 2 in');
    expect(placeWords({ x: -0.5, y: 2 }, ORIGIN, 'in')).toBe('−½, 2 in');
    expect(placeWords({ x: 1 / 2.54, y: 2 / 2.54 }, ORIGIN, 'cm')).toBe('1, 2 cm');
  });

  it("finds the block's own corner", () => {
    const block = square(6);
    expect(block.ok && originOf(block.value)).toEqual(ORIGIN);
  });
});
