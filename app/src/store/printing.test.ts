import { describe, expect, test } from 'vitest';
import { keptPrinting } from './printing.ts';

describe('what was asked of the sheets, as it was kept', () => {
  test('one size, as the first versions kept it, becomes a list of one', () => {
    expect(keptPrinting({ 'b-1': { copies: 4, scale: 1.5 } })).toEqual({
      'b-1': { sizes: [{ scale: 1.5, copies: 4 }] },
    });
  });

  test('lists of sizes come back as they were', () => {
    const printing = {
      'b-1': {
        sizes: [
          { scale: 0.5, copies: 2 },
          { scale: 1, copies: 0, mirrored: 3 },
        ],
      },
      'b-2': { sizes: [{ scale: 2, copies: 1 }] },
    };
    expect(keptPrinting(printing)).toEqual(printing);
  });

  test('what is none is left out, and nothing else with it', () => {
    const good = { scale: 1, copies: 1 };
    expect(
      keptPrinting({
        none: null,
        words: 'one',
        empty: { sizes: [] },
        nowhere: { copies: 1, scale: 0 },
        nobody: { copies: 0, scale: 1 },
        'b-1': { sizes: [{ scale: Number.NaN, copies: 1 }, good, { scale: 1, copies: 1.5 }, null] },
      }),
    ).toEqual({ 'b-1': { sizes: [good] } });
    for (const kept of [undefined, null, 'text', 3]) expect(keptPrinting(kept)).toEqual({});
  });
});
