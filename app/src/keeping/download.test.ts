import { expect, test } from 'vitest';
import { fileName } from './download.ts';

test('a title becomes a file name that every system takes', () => {
  expect(fileName('Paper boat', '.pdf')).toBe('Paper boat.pdf');
  expect(fileName('Boats: 1/2 size?', '.pdf')).toBe('Boats 1 2 size.pdf');
  expect(fileName('..\\..\\boat', '.pdf')).toBe('boat.pdf');
  expect(fileName(' \u0000 ', '.pdf')).toBe('pattern.pdf');
});

test('a long title is cut at a whole character', () => {
  const name = fileName('灯'.repeat(300), '.pdf');
  expect(new TextEncoder().encode(name).length).toBeLessThanOrEqual(184);
  expect(name).toMatch(/^灯+\.pdf$/);
});
