import { expect, test } from 'vitest';
import { photocopyTable } from './photocopy.ts';

test('what a percentage makes of a quarter inch, exactly', () => {
  // Allowance × percentage ÷ 100 (exact, plane geometry).
  const { allowance, rows, why } = photocopyTable([50, 75, 100, 150, 200]);
  expect(allowance).toBe(1 / 4);
  expect(rows).toEqual([
    { percentage: 50, becomes: 1 / 8, off: -1 / 8 },
    { percentage: 75, becomes: 3 / 16, off: -1 / 16 },
    { percentage: 100, becomes: 1 / 4, off: 0 },
    { percentage: 150, becomes: 3 / 8, off: 1 / 8 },
    { percentage: 200, becomes: 1 / 2, off: 1 / 4 },
  ]);
  expect(why).toContain('Print the size that you want instead');
});

test('other allowances', () => {
  // 7 mm at 130 % is 9.1 mm.
  const { rows } = photocopyTable([130], 7 / 25.4);
  expect(rows[0]!.becomes * 25.4).toBeCloseTo(9.1, 12);
});
