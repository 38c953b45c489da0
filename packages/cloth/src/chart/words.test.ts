import { describe, expect, it } from 'vitest';
import type { ClothPlan } from '../buying/plan-cloths.ts';
import { buyText, halvedText, stripTexts, takesText, wasteText } from './words.ts';

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
  expect(wasteText({ cut: 4, needed: 3, wastePercent: 25, chunks: 6, chunkWastePercent: 50 }, 'in')).toBe(
    '25 % of the pieces is trimmed off; of plain chunks, 1 in larger than each patch both ways, it would be 50 %.',
  );
  expect(wasteText({ cut: 6, needed: 3, wastePercent: 50, chunks: 5, chunkWastePercent: 40 }, 'cm')).toMatch(
    /of plain chunks, 2\.54 cm larger than each patch both ways, it would be 40 %, but some would not be sure to cover\.$/,
  );
});

describe('strips', () => {
  const strips = (count: number) =>
    ({
      plan: { strips: [{ height: 3, count, cuts: [{ width: 7, count: 3 }], leftover: 19 }] },
      cloth: { usableWidth: 40 },
    }) as unknown as ClothPlan;

  // By hand: 5 strips lie in 3 stacks of 2 at most, each cut three times.
  it('say how often is cut for all of them together, and how many lie on each other', () => {
    expect(stripTexts(strips(5), 2, 'in')).toEqual([
      {
        strips: '5 strips of 3 in',
        cuts: ['each: 3 of 7 in; 19 in left over; 9 cuts in all, 2 layers at a time'],
      },
    ]);
    expect(stripTexts(strips(2), 4, 'in')[0]!.cuts[0]).toMatch(/; 3 cuts in all, 2 layers at a time$/);
    expect(stripTexts(strips(5), 1, 'in')[0]!.cuts[0]).toMatch(/; 15 cuts in all$/);
    expect(stripTexts(strips(1), 2, 'in')[0]!.cuts[0]).toMatch(/; 3 cuts$/);
  });
});

describe('what strips take', () => {
  const plan = (more: object) =>
    ({
      plan: { trim: false, lengthInches: 4.75, atLeast: 4.75, provenLeast: true, ...more },
      wastePercent: 91.6,
    }) as ClothPlan;

  it('says for strips of which kind it is the least', () => {
    expect(takesText(plan({}), 'in')).toBe(
      'The strips, each as high as all its pieces, take 4¾ in of fabric, the least for such strips; 92 % of it is waste.',
    );
    expect(takesText(plan({ trim: true, lengthInches: 2.5, atLeast: 2.5 }), 'cm')).toMatch(
      /^The strips, with their pieces side by side, take 6\.35 cm of fabric, the least for such strips;/,
    );
  });

  it('says what is proved where less may do', () => {
    expect(takesText(plan({ provenLeast: false, atLeast: 4.5 }), 'in')).toMatch(
      / of fabric, and no such strips less than 4½ in;/,
    );
  });
});

describe('what is bought', () => {
  const plan = (sheets: readonly object[]) =>
    ({ purchase: { takeInches: 10, buyYards: 0.375, buyMetres: 0.4 }, sheets }) as unknown as ClothPlan;
  const sheet = (name: string, count: number, more = {}) => ({
    ...{
      sheet: { name },
      sheets: new Array(count),
      atLeast: count,
      provenLeast: true,
      tooLarge: [],
      ...more,
    },
  });

  it('is told with what may be bought instead, and in metres first where lengths are', () => {
    expect(buyText(plan([]), 'in')).toBe('Buy ⅜ yd (0.4 m).');
    expect(buyText(plan([]), 'cm')).toBe('Buy 0.4 m (⅜ yd).');
    expect(buyText(plan([sheet('fat quarter', 1), sheet('fat eighth', 3)]), 'in')).toBe(
      'Buy ⅜ yd (0.4 m), 1 fat quarter or 3 fat eighths.',
    );
  });

  // Exact: ⅜ yd is 13½ in, 40 cm 15.75 in.
  it.each([
    [0, 'in', ''],
    [12.5, 'in', ''],
    [12.6, 'in', ' Of ⅜ yd, less than 1 in is left to straighten a crooked cut.'],
    [13.5, 'in', ' ⅜ yd is just what the strips take: nothing is left to straighten a crooked cut.'],
    [13.5, 'cm', ''],
    [15, 'cm', ' Of 0.4 m, less than 2.5 cm is left to straighten a crooked cut.'],
  ] as const)(
    'says where hardly any is left to straighten a cut: strips of %f in, %s',
    (takeInches, unit, words) => {
      const bought = {
        ...plan([]),
        purchase: { needInches: takeInches, takeInches, buyYards: 0.375, buyMetres: 0.4 },
      };
      const first = unit === 'in' ? 'Buy ⅜ yd (0.4 m).' : 'Buy 0.4 m (⅜ yd).';
      expect(buyText(bought, unit)).toBe(`${first}${words}`);
    },
  );

  it('says where fewer may do, and names no sheet that a piece is larger than', () => {
    const fewer = sheet('fat eighth', 2, { provenLeast: false, atLeast: 1 });
    expect(buyText(plan([fewer]), 'in')).toBe('Buy ⅜ yd (0.4 m) or 2 fat eighths (1 might do).');
    expect(buyText(plan([sheet('fat quarter', 0, { tooLarge: [{}] })]), 'in')).toBe('Buy ⅜ yd (0.4 m).');
  });
});
