import { sentence } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Measured, printerFrom } from './printer-measures.ts';

const said = (measured: Measured): string => {
  const result = printerFrom(measured);
  return result.ok ? 'ok' : sentence(result.problem);
};

const TRUE_DOWN = { oneInchDown: 1, fiftyMmDown: 50 };

describe('what a printer makes of 1', () => {
  test('is found from any of the lengths, as long as each direction has one', () => {
    for (const measured of [
      { oneInchAcross: 0.973, oneInchDown: 0.989 },
      { fiftyMmAcross: 50 * 0.973, fiftyMmDown: 50 * 0.989 },
      { oneInchAcross: 0.973, fiftyMmDown: 50 * 0.989 },
      {
        rulerAcross: { printed: 7, measured: 7 * 0.973 },
        rulerDown: { printed: 27 / 2.54, measured: (27 / 2.54) * 0.989 },
      },
    ]) {
      const result = printerFrom(measured);
      if (!result.ok) throw new Error(sentence(result.problem));
      expect(result.value.across).toBeCloseTo(0.973, 12);
      expect(result.value.down).toBeCloseTo(0.989, 12);
    }
  });

  test('comes out within what an eye misreads, divided by the longest length', () => {
    const misread = fc.double({ min: -0.009, max: 0.009, noNaN: true });
    const factor = fc.double({ min: 0.91, max: 1.09, noNaN: true });
    fc.assert(
      fc.property(factor, misread, misread, misread, (across, a, b, c) => {
        const result = printerFrom({
          oneInchAcross: across + a,
          fiftyMmAcross: ((50 / 25.4) * across + b) * 25.4,
          rulerAcross: { printed: 7, measured: 7 * across + c },
          ...TRUE_DOWN,
        });
        if (!result.ok) throw new Error(sentence(result.problem));
        // Least squares: the sum of printed × misread over the sum of printed², at most.
        const bound = (0.009 * (1 + 50 / 25.4 + 7)) / (1 + (50 / 25.4) ** 2 + 49);
        expect(Math.abs(result.value.across - across)).toBeLessThanOrEqual(bound + 1e-12);
        expect(result.value.down).toBeCloseTo(1, 12);
      }),
      { seed: 5 },
    );
  });
});

describe('measures of which nothing can be made get one clear sentence', () => {
  test.each<[Measured, string]>([
    [
      { oneInchAcross: 0, ...TRUE_DOWN },
      '0 in is no measure of the square of 1 in (across). Measure from the middle of one line to the middle of the line opposite, and type what the ruler shows.',
    ],
    [
      { oneInchAcross: 1, oneInchDown: 5 },
      '5 in is no measure of the square of 1 in (down). Measure from the middle of one line to the middle of the line opposite, and type what the ruler shows.',
    ],
    [
      { fiftyMmAcross: 1.97, ...TRUE_DOWN },
      '1.97 mm is no measure of the square of 50 mm (across). Measure from the middle of one line to the middle of the line opposite, and type what the ruler shows.',
    ],
    [
      { oneInchAcross: Number.NaN, ...TRUE_DOWN },
      'That is no measure of the square of 1 in (across). Measure from the middle of one line to the middle of the line opposite, and type what the ruler shows.',
    ],
    [
      TRUE_DOWN,
      'Nothing was measured across the sheet (across). Measure a check square in both directions: printers are not off alike across and down.',
    ],
    [
      { oneInchAcross: 1, fiftyMmAcross: 46, ...TRUE_DOWN },
      'Two lengths disagree: the square of 1 in came out at 100 %, the square of 50 mm at 92 % (across). Measure both once more.',
    ],
    [
      // 7/8 for 1 in: a page fitted to the paper (Pat's Pattering, paper piecing tutorial).
      { oneInchAcross: 7 / 8, ...TRUE_DOWN },
      'The page came out at 87.5 % (across). Look in the print dialog for “fit to page” or “scale”, set it to 100 % or “actual size”, and print the check page again.',
    ],
    [{ oneInchAcross: 0.99, fiftyMmAcross: 48.2, ...TRUE_DOWN }, 'ok'],
  ])('%o', (measured, wanted) => {
    expect(said(measured)).toBe(wanted);
  });
});
