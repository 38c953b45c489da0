import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DECIMALS, Operators } from './operators.ts';

const textOf = (operators: Operators): string => new TextDecoder().decode(operators.bytes());

const written = (value: number): string => textOf(new Operators().number(value));

/** ISO 32000-1, 7.3.3: digits with a sign and a point, no exponent. */
const REAL = /^-?\d+(\.\d+)? $/;

test('numbers are read back to half of the last decimal', () => {
  // No page is wider than 200 in, 14,400 points (ISO 32000-1, annex C).
  fc.assert(
    fc.property(fc.double({ min: -14_400, max: 14_400, noNaN: true }), (value) => {
      const text = written(value);
      expect(text).toMatch(REAL);
      expect(text).not.toMatch(/[.]\d*0 $|^-0 $/);
      expect(Math.abs(Number(text) - value)).toBeLessThan(0.5 * 10 ** -DECIMALS + Number.EPSILON * 14_400);
    }),
    { seed: 1 },
  );
});

test.each([
  [0, '0 '],
  [-0, '0 '],
  [1, '1 '],
  [612, '612 '],
  [1000, '1000 '],
  [0.5, '0.5 '],
  [-0.25, '-0.25 '],
  [10.0304, '10.0304 '],
  [0.000049, '0 '],
  [-0.000049, '0 '],
  [9.99996, '10 '],
  // ISO 216: A4 is 210 mm wide; 210 / 25.4 · 72.
  [(210 / 25.4) * 72, '595.2756 '],
])('%d is written %o', (value, text) => expect(written(value)).toBe(text));

test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('%d is refused', (value) =>
  expect(() => written(value)).toThrow('no number'),
);

test('a stream of any length is all there', () => {
  const operators = new Operators();
  for (let i = 0; i < 20_000; i++) operators.number(i).text('m\n');
  const lines = textOf(operators).split('\n');
  expect(lines).toHaveLength(20_001);
  expect(lines[19_999]).toBe('19999 m');
});
