import { describe, expect, it } from 'vitest';
import { halvedText, wasteText } from './words.ts';

describe('how half-rectangles are cut', () => {
  const row = { shape: 'half-rectangle', width: 4, height: 2, cut: 3, yields: 6 } as const;

  it('says which side is up, which way it lies and which way it is cut', () => {
    expect(halvedText(row, 'in')).toBe('right side up, 4 in across: halved from bottom left to top right');
    expect(halvedText({ ...row, width: 2, height: 4 }, 'in')).toMatch(/^right side up, 2 in across/);
  });

  it('of squares says only that they are halved, of an odd count that one is over', () => {
    expect(halvedText({ ...row, width: 2 }, 'in')).toBe('halved corner to corner');
    expect(halvedText({ ...row, width: 2, yields: 5 }, 'in')).toBe(
      'halved corner to corner; one half is left over',
    );
    expect(halvedText({ ...row, shape: 'rectangle' }, 'in')).toBeNull();
  });
});

it('waste is told in whole per cent', () => {
  expect(wasteText({ cut: 4, needed: 3, wastePercent: 25, chunks: 6, chunkWastePercent: 50 })).toBe(
    '25 % of the pieces is trimmed off; of plain chunks, 1 in larger than each patch both ways, it would be 50 %.',
  );
  expect(wasteText({ cut: 6, needed: 3, wastePercent: 50, chunks: 5, chunkWastePercent: 40 })).toMatch(
    /40 %, but some would not be sure to cover\.$/,
  );
});
