import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  ALLOWANCE_RANGE,
  checkLength,
  formatCutLength,
  formatCutSize,
  formatInches,
  formatLength,
  formatSize,
  type LengthRange,
  MM_PER_INCH,
  POINTS_PER_INCH,
  PX_PER_INCH,
  parseLength,
  SIZE_RANGE,
} from './length.ts';
import { sentence } from './result.ts';
import { LARGEST_SIZE, SAME_COORDINATE } from './tolerance.ts';

const inches = (text: string, unit: 'in' | 'cm' = 'in', range?: LengthRange): number | string => {
  const result = parseLength(text, unit, range);
  return result.ok ? result.value : sentence(result.problem);
};

test('the units agree: 96 px = 1 in = 2.54 cm = 72 pt (W3C CSS Values)', () => {
  expect([PX_PER_INCH, MM_PER_INCH, POINTS_PER_INCH]).toEqual([96, 25.4, 72]);
  expect(inches('2.54cm')).toBe(1);
  expect(inches('25.4mm')).toBe(1);
});

describe('parseLength reads', () => {
  test.each<[string, number]>([
    ['6', 6],
    ['6.5', 6.5],
    ['6,5', 6.5],
    ['.5', 0.5],
    ['6.', 6],
    ['  6  ', 6],
    ['1/4', 0.25],
    ['7/4', 1.75],
    ['6 1/2', 6.5],
    ['6  1 / 2', 6.5],
    ['6-1/2', 6.5],
    ['6–1/2', 6.5],
    ['6½', 6.5],
    ['½', 0.5],
    ['1 ¾"', 1.75],
    ['1¾″', 1.75],
    ['2⅜', 2.375],
    ['2\u00a0⅜ in', 2.375],
    ['2 3⁄8', 2.375],
    ['6in', 6],
    ['6 IN', 6],
    ['6 in.', 6],
    ['6 inches', 6],
    ['1 inch', 1],
    ["6''", 6],
    ['6”', 6],
    ['1/4in', 0.25],
    ['15cm', 15 / 2.54],
    ['152.4mm', 6],
    ['6,5 cm', 6.5 / 2.54],
    ['1½ cm', 1.5 / 2.54],
    ['0.1524 m', 6],
    ['1/8 yd', 4.5],
    ["5'", 60],
    ['5′ 6½″', 66.5],
    ['5 ft 6 in', 66],
    ['1ft 1/2', 12.5],
    ['0', 0],
  ])('%s', (text, expected) => {
    expect(inches(text)).toBe(expected);
  });

  test('a bare number in the default unit, a named one in its own', () => {
    expect(inches('15.24', 'cm')).toBe(6);
    expect(inches('6in', 'cm')).toBe(6);
    expect(inches("1' 6", 'cm')).toBe(18);
  });

  test('metric lengths to the last bit: n tenths of a millimetre that make whole 64ths come out whole', () => {
    // 127 tenths of a millimetre are half an inch.
    for (let n = 1; n <= 240; n++) expect(inches(`${(n * 127) / 10}mm`)).toBe(n / 2);
  });
});

describe('parseLength refuses, with one Problem', () => {
  test.each<[string, string]>([
    ['', 'No length is given. Type a length such as 2 3/8, 2.375 or 6cm.'],
    ['   ', 'No length is given. Type a length such as 2 3/8, 2.375 or 6cm.'],
    ['six', '“six” is not a length. Type a length such as 2 3/8, 2.375 or 6cm.'],
    ['-3', '“-3” is less than nothing. Type a length without a minus sign.'],
    ['−3½', '“−3½” is less than nothing. Type a length without a minus sign.'],
  ])('%j', (text, expected) => {
    expect(inches(text)).toBe(expected);
  });

  test.each([
    ...['NaN', 'Infinity', '1e3', '0x10', '1/0', '1 7/4', '1.5 1/2', '6 6', '1/2/3', '6px', '6 cm cm', '--3'],
    ...["5' 13", "5' 6cm", '1,234,567', '6 1/2 1/2', 'in', '"', '/', '1/', '/2', '½½', '6½.5', '١', '6\n7'],
    '9'.repeat(41),
  ])('%j is not a length', (text) => {
    expect(inches(text)).toContain('is not a length.');
  });

  test('a pasted page is quoted in part', () => {
    const result = parseLength('word '.repeat(1e6), 'in');
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.problem.what.length).toBeLessThan(80);
  });

  test('any text gives a finite length or one sentence', () => {
    const likely = fc.string({ unit: fc.constantFrom(...' 0123456789./,-½¾\'"incmftyd'), maxLength: 12 });
    let read = 0;
    fc.assert(
      fc.property(fc.oneof(likely, fc.string()), (text) => {
        const result = parseLength(text, 'in');
        if (result.ok) {
          read++;
          expect(Number.isFinite(result.value) && result.value >= 0).toBe(true);
        } else {
          expect(result.problem.what).not.toBe('');
          expect(result.problem.remedy).not.toBe('');
        }
      }),
      { seed: 41, numRuns: 5000 },
    );
    expect(read).toBeGreaterThan(100);
  });
});

/** A double as a whole number of parts of 2^-120, exact for those that occur here. */
const parts = (value: number): bigint => BigInt(value * 2 ** 120);

test('a length of up to 13 digits is the double nearest to the exact one, in every unit', () => {
  // 1 in = 25.4 mm: inches as numerator and denominator, worked out here by hand.
  const units = {
    in: [1n, 1n],
    ft: [12n, 1n],
    yd: [36n, 1n],
    mm: [5n, 127n],
    cm: [50n, 127n],
    m: [5000n, 127n],
  } as const;
  fc.assert(
    fc.property(
      fc.bigInt({ min: 1n, max: 10n ** 13n - 1n }),
      fc.nat({ max: 13 }),
      fc.constantFrom(...(Object.keys(units) as (keyof typeof units)[])),
      (digits, places, unit) => {
        const written = digits
          .toString()
          .padStart(places + 1, '0')
          .slice(-13 - 1);
        const text = `${written.slice(0, written.length - places)}.${written.slice(written.length - places)}${unit}`;
        const value = inches(text, 'in');
        if (typeof value !== 'number') throw new Error(value);
        const [n, d] = units[unit];
        const exact = 2n ** 120n * digits * n;
        const divisor = 10n ** BigInt(places) * d;
        const off = (near: number) => {
          const miss = parts(near) * divisor - exact;
          return miss < 0n ? -miss : miss;
        };
        const ulp = 2 ** (Math.floor(Math.log2(value)) - 52);
        expect(off(value) <= off(value + ulp) && off(value) <= off(value - ulp)).toBe(true);
      },
    ),
    { seed: 42, numRuns: 5000 },
  );
});

describe('ranges', () => {
  test('a finished size is more than nothing and at most 120 in', () => {
    expect(inches('0', 'in', SIZE_RANGE)).toBe('0 in is too small. Type at least 1/16 in.');
    expect(inches('120', 'in', SIZE_RANGE)).toBe(LARGEST_SIZE);
    expect(inches('121', 'in', SIZE_RANGE)).toBe('121 in is too large. Type at most 120 in.');
    expect(inches('400', 'cm', SIZE_RANGE)).toBe('400 cm is too large. Type at most 304.8 cm.');
    expect(inches('304.8', 'cm', SIZE_RANGE)).toBe(LARGEST_SIZE);
  });

  test('an allowance may be nothing', () => {
    expect(inches('0', 'in', ALLOWANCE_RANGE)).toBe(0);
    expect(inches('6', 'in', ALLOWANCE_RANGE)).toBe('6 in is too large. Type at most 2 in.');
  });

  test('a length that is out of the range by less than what counts as different is the bound itself', () => {
    const width = { least: 4, most: 130 };
    expect(inches('3.9999995', 'in', width)).toBe(4);
    expect(inches('130.0000005', 'in', width)).toBe(130);
    expect(inches('3.999998', 'in', width)).toMatch('too small');
    expect(checkLength(130.0000005, 'in', width)).toEqual({ ok: true, value: 130 });
  });

  test('checkLength refuses what a file may hold', () => {
    expect(checkLength(Number.NaN, 'in', SIZE_RANGE).ok).toBe(false);
    expect(checkLength(Infinity, 'in', SIZE_RANGE).ok).toBe(false);
    expect(checkLength(-1, 'in', SIZE_RANGE).ok).toBe(false);
    expect(checkLength(6, 'in', SIZE_RANGE)).toEqual({ ok: true, value: 6 });
  });
});

describe('formatInches writes', () => {
  test.each<[number, string]>([
    [0, '0'],
    [6, '6'],
    [0.5, '½'],
    [2.375, '2⅜'],
    [2.1875, '2 3/16'],
    [0.0625, '1/16'],
    [5.984375, '5 63/64'],
    [1 / 3, '0.3333'],
    [8.9853, '8.9853'],
    [10, '10'],
    [100, '100'],
    [0.999_999_9, '1'],
    [2.375_000_4, '2⅜'],
    [2.375_002, '2.375'],
    [-2.5, '−2½'],
    [-1e-7, '0'],
  ])('%d as %s', (value, expected) => {
    expect(formatInches(value)).toBe(expected);
  });

  test('only the denominators that are asked for', () => {
    expect(formatInches(2.1875, [2, 4, 8])).toBe('2.1875');
    expect(formatInches(1 / 3, [3])).toBe('⅓');
  });

  test('each unit', () => {
    expect(formatLength(2.375, 'in')).toBe('2⅜ in');
    expect(formatLength(2.375, 'cm')).toBe('6.03 cm');
    expect(formatLength(6, 'cm')).toBe('15.24 cm');
    expect(formatLength(100 / 2.54, 'cm')).toBe('100 cm');
    expect(formatLength(-0.0001, 'cm')).toBe('0 cm');
  });

  test('every 64th up to 120 in is read back as itself', () => {
    for (let n = 0; n <= 120 * 64; n++) expect(inches(formatLength(n / 64, 'in'), 'cm')).toBe(n / 64);
  });

  test('every length is read back within what was shown', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 120e6 }), (millionths) => {
        const value = millionths / 1e6;
        expect(Math.abs((inches(formatLength(value, 'in')) as number) - value)).toBeLessThanOrEqual(
          5e-5 + SAME_COORDINATE,
        );
        // Half of the last place shown, 0.005 cm.
        expect(Math.abs((inches(formatLength(value, 'cm')) as number) - value)).toBeLessThanOrEqual(
          0.005 / 2.54 + SAME_COORDINATE,
        );
      }),
      { seed: 42, numRuns: 1000 },
    );
  });
});

describe('a length that is to be cut', () => {
  // Exact: an inch is 2.54 cm, so 4¼ in are 10.795 cm and 2¼ in 5.715 cm, which doubles have a little too small.
  test('is written as any other where that is exact, and rounded up where it is not', () => {
    expect(formatCutLength(2.375, 'in')).toBe('2⅜ in');
    expect(formatCutLength(45 / 25.4, 'in')).toBe('1.7717 in');
    expect(formatCutLength(1.23412, 'in')).toBe('1.2342 in');
    expect([4.25, 2.25, 6].map((size) => formatCutLength(size, 'cm'))).toEqual([
      '10.8 cm',
      '5.72 cm',
      '15.24 cm',
    ]);
    expect(formatCutSize(4.25, 45 / 25.4, 'cm')).toBe('10.8 × 4.5 cm');
  });

  test('is never written smaller, nor larger by a whole step of its last place', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 120e6 }), (millionths) => {
        const value = millionths / 1e6;
        for (const [unit, step] of [
          ['in', 1e-4],
          ['cm', 0.01 / 2.54],
        ] as const) {
          const more = (inches(formatCutLength(value, unit)) as number) - value;
          expect(more).toBeGreaterThanOrEqual(-SAME_COORDINATE - 1e-12);
          expect(more).toBeLessThan(step + SAME_COORDINATE);
        }
      }),
      { seed: 43, numRuns: 1000 },
    );
  });

  test('in whole half centimetres is written as such', () => {
    for (let halves = 1; halves <= 600; halves++)
      expect(formatCutLength((halves * 5) / MM_PER_INCH, 'cm')).toBe(`${halves / 2} cm`);
  });
});

test('sizes have their unit once, after both sides', () => {
  expect(formatSize(6, 7.5, 'in')).toBe('6 × 7½ in');
  expect(formatSize(6, 7.5, 'cm')).toBe('15.24 × 19.05 cm');
});
