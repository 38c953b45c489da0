import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prettyJson } from './pretty-json.ts';

describe('prettyJson', () => {
  it('is JSON for the same value', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(JSON.parse(prettyJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
      { seed: 43, numRuns: 500 },
    );
  });

  it('keeps a point on one line and breaks what is longer', () => {
    const points = Object.fromEntries(
      Array.from({ length: 5 }, (_, i) => [`p${i}`, { id: `p${i}`, x: i, y: 0.5 }]),
    );
    expect(prettyJson({ points, empty: {}, list: [1, 2] })).toBe(
      [
        '{',
        '  "points": {',
        ...[0, 1, 2, 3].map((i) => `    "p${i}": { "id": "p${i}", "x": ${i}, "y": 0.5 },`),
        '    "p4": { "id": "p4", "x": 4, "y": 0.5 }',
        '  },',
        '  "empty": {},',
        '  "list": [1, 2]',
        '}',
      ].join('\n'),
    );
  });

  it('leaves undefined members out', () => {
    expect(prettyJson({ a: undefined, b: 1 })).toBe('{ "b": 1 }');
  });
});
