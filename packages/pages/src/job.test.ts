import { sentence } from '@seamwright/geometry';
import { describe, expect, test } from 'vitest';
import { block, house, lantern, rectangle, usual } from '../test/blocks.ts';
import { type FoundationJob, layFoundations } from './index.ts';

const said = (job: FoundationJob): string => {
  const result = layFoundations(job);
  return result.ok ? 'laid' : sentence(result.problem);
};

describe('a job that cannot be laid out gets one clear sentence', () => {
  test.each([
    [{ copies: 0 }, '0 is no number of blocks (copies). Give a whole number from 1 to 99999.'],
    [{ copies: 1.5 }, '1.5 is no number of blocks (copies). Give a whole number from 1 to 99999.'],
    [{ copies: Number.NaN }, 'NaN is no number of blocks (copies). Give a whole number from 1 to 99999.'],
    [{ copies: 100_000 }, '100000 is no number of blocks (copies). Give a whole number from 1 to 99999.'],
    [{ allowance: -0.25 }, '−¼ in is too small (seam allowance). Type at least 0 in.'],
    [{ allowance: 3 }, '3 in is too large (seam allowance). Type at most 2 in.'],
    [{ allowance: Number.POSITIVE_INFINITY }, /not a number \(seam allowance\)/],
    [{ scale: 0 }, 'The block cannot be made 0 times as large (scale). Give a number above 0.'],
    [{ scale: -1 }, /cannot be made -1 times as large/],
    [{ scale: Number.NaN }, /cannot be made NaN times as large/],
    [{ scale: 40 }, '240 in is too large (finished width). Type at most 120 in.'],
    [{ scale: 0.001 }, /too small \(finished width\)/],
    [{ sizes: [] }, 'No finished size is asked for (sizes). Give at least one.'],
    [
      { sizes: [{ scale: 1, copies: 2, mirrored: -1 }] },
      '-1 is no number of blocks (mirrored blocks). Give a whole number from 0 to 99999.',
    ],
    [
      { sizes: [{ scale: 1, copies: 0, mirrored: 0 }] },
      '0 is no number of blocks (copies). Give a whole number from 1 to 99999.',
    ],
    [{ paper: { width: 2, height: 11 } }, '2 in is too small (width of the paper). Type at least 4 in.'],
    [{ paper: { width: 8, height: Number.NaN } }, /not a number \(height of the paper\)/],
    [
      { margins: { top: 6, right: 0.25, bottom: 6, left: 0.25 } },
      'The margins leave nothing of the sheet (margins). Make them smaller, or choose a larger paper.',
    ],
    [
      { margins: { top: 0.25, right: 3, bottom: 0.25, left: 3 } },
      'Only 2½ × 10½ in of the sheet can be printed on (paper and margins). Choose a larger paper or smaller margins: the check squares and a foundation need 3¼ × 4½ in.',
    ],
    [
      { paper: { width: 4, height: 4 } },
      'Only 3½ × 3½ in of the sheet can be printed on (paper and margins). Choose a larger paper or smaller margins: the check squares and a foundation need 3¼ × 4½ in.',
    ],
    [
      { margins: { top: -1, right: 0.25, bottom: 0.25, left: 0.25 } },
      '−1 in is too small (top margin). Type at least 0 in.',
    ],
    [
      { printer: { name: 'Quay laser', across: 0.875, down: 1 } },
      'A printer that prints 87.5 % is not off by itself: pages are corrected within 90 and 110 % (across). Look in the print dialog for “fit to page” or “scale”, set it to 100 % or “actual size”, and print the check page again.',
    ],
    [{ printer: { name: '', across: 1, down: Number.NaN } }, /prints NaN % is not off by itself/],
    [{ paper: 'foolscap' as 'a4' }, 'There is no paper “foolscap”. Choose letter, legal, tabloid, a4 or a3.'],
    [{ paper: 'toString' as 'a4' }, 'There is no paper “toString”. Choose letter, legal, tabloid, a4 or a3.'],
  ])('%o', (more, wanted) => {
    const sentenceSaid = said(usual(house(), 'Harbour house', more));
    if (typeof wanted === 'string') expect(sentenceSaid).toBe(wanted);
    else expect(sentenceSaid).toMatch(wanted);
  });

  test('a block that cannot be sewn', () => {
    // Five oblongs that chase each other round a square: not with straight seams, once partial seams are ruled out.
    const of = block(rectangle(3, 3), [
      [1, 0, 1, 2],
      [0, 2, 2, 2],
      [2, 1, 2, 3],
      [1, 1, 3, 1],
    ]);
    const plan = { ...of.plan, verdict: 'not sewable' as const };
    expect(said({ ...usual(of, 'Cycle'), plan })).toBe(
      'This block cannot be sewn yet, so it has no foundations. Change the drawing as the findings say.',
    );
  });
});

describe('a job at the edge of what can be laid out', () => {
  test('the largest and the smallest block, and the widest allowance', () => {
    expect(said(usual(lantern(6), 'Lantern', { scale: 20 }))).toBe('laid');
    expect(said(usual(lantern(1), 'Lantern', { scale: 1 / 16 }))).toBe('laid');
    expect(said(usual(lantern(6), 'Lantern', { allowance: 2 }))).toBe('laid');
  });

  test('names with control characters, line breaks and half characters become one clean line', () => {
    const result = layFoundations(usual(lantern(3), 'Sea\u0000\n\tglass\ud800 \u202egreen'));
    expect(result.ok && result.value.title).toBe('Sea glass green');
  });
});
