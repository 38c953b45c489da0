import { expect, test } from 'vitest';
import { towards } from './towards.ts';

test('ways are named as on a sheet on the table, y pointing down', () => {
  expect(towards({ x: 1, y: 0 })).toBe('the right');
  expect(towards({ x: -2, y: 0.1 })).toBe('the left');
  expect(towards({ x: 0, y: 3 })).toBe('the bottom');
  expect(towards({ x: 0, y: -1 })).toBe('the top');
  expect(towards({ x: 1, y: -1 })).toBe('the upper right');
  expect(towards({ x: -1, y: 1 })).toBe('the lower left');
});
