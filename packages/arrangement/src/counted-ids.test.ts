import { expect, it } from 'vitest';
import { idsAfter, numberOfId } from './counted-ids.ts';

it('ids count on from the highest number, and those of other makes count by the number that they end in', () => {
  const next = idsAfter(['p2', 's7', 'line-b', 'row3']);
  expect([next('p'), next('s'), next('p')]).toEqual(['p8', 's9', 'p10']);
  expect(idsAfter([])('patch')).toBe('patch1');
});

it('ids never have more digits than a file takes, whatever a file has, and are never taken', () => {
  // Twelve digits are the most, docs/file-format.md.
  const next = idsAfter(['p999999999999', 'p999999999', 'p1000000000']);
  expect([next('p'), next('p')]).toEqual(['p1000000001', 'p1000000002']);
  expect(numberOfId('p999999999999')).toBe(0);
});
