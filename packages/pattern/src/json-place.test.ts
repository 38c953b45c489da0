import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeOfJsonError } from './json-place.ts';

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

const indexOf = (text: string, place: { line: number; column: number }): number => {
  const lines = text.split('\n');
  return lines.slice(0, place.line - 1).reduce((sum, line) => sum + line.length + 1, 0) + place.column - 1;
};

/** Objects and lists, whose texts are no JSON before their last bracket. */
const container = fc.jsonValue({ maxDepth: 4 }).map((value) => ({ value }));

describe('the place of a JSON error', () => {
  it('is the end wherever a text is cut off', () => {
    fc.assert(
      fc.property(
        container,
        fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }),
        (value, share) => {
          const whole = JSON.stringify(value, null, 2);
          const cut = whole.slice(0, Math.floor(share * whole.length));
          expect(isJson(cut)).toBe(false);
          const place = placeOfJsonError(cut);
          expect(place.atEnd).toBe(true);
          expect(indexOf(cut, place)).toBe(cut.length);
        },
      ),
      { seed: 44, numRuns: 1000 },
    );
  });

  it('comes after sound text only, and not before the number, word or sign that is wrong', () => {
    fc.assert(
      fc.property(
        container,
        fc.nat(),
        fc.constantFrom('x', ',', '"', '}', ']', ':', '\\', '1', '\t', '{'),
        (value, n, sign) => {
          const whole = JSON.stringify(value, null, 2);
          const at = n % (whole.length + 1);
          const broken = whole.slice(0, at) + sign + whole.slice(at);
          fc.pre(!isJson(broken));
          const place = placeOfJsonError(broken);
          const found = indexOf(broken, place);
          const startOfWord = at - /[\\\w.+-]*$/.exec(whole.slice(0, at))![0].length;
          expect(found).toBeGreaterThanOrEqual(startOfWord);
          expect(placeOfJsonError(broken.slice(0, found)).atEnd).toBe(true);
        },
      ),
      { seed: 45, numRuns: 2000 },
    );
  });

  it.each([
    ['{"a": x}', 1, 7],
    ['{"a": 1,}', 1, 9],
    ['{\n  "a": 1\n  "b": 2\n}', 3, 3],
    ['[1, 2}', 1, 6],
    ['{"a": NaN}', 1, 7],
    ['{"a": 01}', 1, 8],
    ['{"a": "tab\there"}', 1, 11],
    [String.raw`{"a": "\q"}`, 1, 8],
    ['{} {}', 1, 4],
    ["{'a': 1}", 1, 2],
  ])('of %j is line %i, column %i', (text, line, column) => {
    expect(isJson(text)).toBe(false);
    expect(placeOfJsonError(text)).toEqual({ line, column, atEnd: false });
  });

  it('is found where a string is longer than a regular expression would hold', () => {
    expect(placeOfJsonError(`{"a": "${'long \\n '.repeat(500_000)}", }`).column).toBe(4_000_011);
  });
});
