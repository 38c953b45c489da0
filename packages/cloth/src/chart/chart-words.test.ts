import { expect, test } from 'vitest';
import { blocksText } from './chart-words.ts';

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
