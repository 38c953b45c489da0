import { expect, test } from 'vitest';
import type { ChartRow, CutShape } from '../types.ts';
import { blocksText, halvesTexts } from './chart-words.ts';
import { shapeName } from './words.ts';

const lantern = { name: 'Lantern', copies: 4, mirrored: 0 };
const boat = { name: 'Paper boat', copies: 2, mirrored: 1 };

test('what a chart is for: one block, as many of each, or others of each', () => {
  expect(blocksText([lantern])).toBe('4 of Lantern');
  expect(blocksText([lantern, { ...boat, copies: 4, mirrored: 0 }])).toBe('4 of each: Lantern, Paper boat');
  expect(blocksText([lantern, boat])).toBe('4 of Lantern, 2 and 1 mirrored of Paper boat');
  expect(blocksText([{ ...boat, copies: 0 }])).toBe('1 mirrored of Paper boat');
  const sizes = [
    { ...lantern, size: '6 × 6 in' },
    { ...lantern, copies: 1, size: '3 × 3 in' },
  ];
  expect(blocksText(sizes)).toBe('4 of Lantern at 6 × 6 in, 1 of Lantern at 3 × 3 in');
  expect(blocksText(sizes.slice(1), 'Night')).toBe('1 of Lantern at 3 × 3 in, from the fabrics of “Night”');
});

test('squares are squares, and their halves half-squares, as the trade has it', () => {
  const row = (shape: CutShape, width: number, height: number): ChartRow => ({
    cloth: null,
    shape,
    width,
    height,
    cut: 1,
    yields: 1,
    pieces: ['A1'],
  });
  const rows = [
    row('rectangle', 3, 3),
    row('rectangle', 3, 4),
    row('half-rectangle', 2.875, 2.875),
    row('half-rectangle', 3, 2),
  ];
  expect(rows.map(shapeName)).toEqual(['square', 'rectangle', 'half-square', 'half-rectangle']);
  expect(halvesTexts(rows.slice(0, 2))).toEqual([]);
  expect(halvesTexts(rows.slice(0, 3))).toEqual(['A half-square is a square cut corner to corner.']);
  expect(halvesTexts(rows)).toHaveLength(2);
});
