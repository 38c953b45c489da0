import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { hasPoppler } from '../../../../e2e/support/pdf.ts';
import { withResolution } from './png.ts';

/** A chunk; its CRC is left zero: the pixels are of no interest here. */
const chunk = (type: string, data: Uint8Array): Buffer => {
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  return Buffer.concat([length, Buffer.from(type, 'latin1'), data, Buffer.alloc(4)]);
};

const SIGNATURE = Buffer.from('89504e470d0a1a0a', 'hex');

const picture = (...between: readonly Buffer[]): Buffer =>
  Buffer.concat([
    SIGNATURE,
    chunk('IHDR', Buffer.from('00000001000000010800000000', 'hex')),
    ...between,
    chunk('IDAT', deflateSync(Buffer.alloc(2))),
    chunk('IEND', Buffer.alloc(0)),
  ]);

/** The chunks as hexadecimal digits, in order, walked by their lengths. */
function chunks(png: Uint8Array): readonly { type: string; data: string; crc: string }[] {
  const file = Buffer.from(png);
  const found: { type: string; data: string; crc: string }[] = [];
  for (let at = 8; at < file.length; ) {
    const end = at + 8 + file.readUInt32BE(at);
    found.push({
      type: file.toString('latin1', at + 4, at + 8),
      data: file.toString('hex', at + 8, end),
      crc: file.toString('hex', end, end + 4),
    });
    at = end + 4;
  }
  return found;
}

const resolutionOf = (png: Uint8Array) => chunks(png).filter(({ type }) => type === 'pHYs');

test('the chunk says pixels per metre, both ways, with its CRC', () => {
  // 72 per inch is 2834.65 per metre, 300 is 11811.02. Bytes and CRCs as widespread programs write them (from memory).
  expect(resolutionOf(withResolution(picture(), 72))).toEqual([
    { type: 'pHYs', data: '00000b1300000b1301', crc: '009a9c18' },
  ]);
  expect(resolutionOf(withResolution(picture(), 300))).toEqual([
    { type: 'pHYs', data: '00002e2300002e2301', crc: '78a53f76' },
  ]);
});

test('it stands after the header and before the pixels, which stay as they are', () => {
  const before = picture(chunk('gAMA', Buffer.from('0000b18f', 'hex')));
  const after = chunks(withResolution(before, 150));
  expect(after.map(({ type }) => type)).toEqual(['IHDR', 'pHYs', 'gAMA', 'IDAT', 'IEND']);
  expect(after.filter(({ type }) => type !== 'pHYs')).toEqual(chunks(before));
});

test('what was said before is replaced', () => {
  expect(withResolution(withResolution(picture(), 96), 300)).toEqual(withResolution(picture(), 300));
});

test('what is no PNG, and what is no resolution, is a bug of the caller', () => {
  expect(() => withResolution(new Uint8Array([0xff, 0xd8, 0xff]), 300)).toThrow('no PNG');
  expect(() => withResolution(picture().subarray(0, 40), 300)).toThrow('cut short');
  expect(() => withResolution(picture().subarray(0, 8), 300)).toThrow('without a header');
  for (const perInch of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => withResolution(picture(), perInch)).toThrow('no resolution');
});

describe.skipIf(!hasPoppler)('against the PNGs that Poppler writes', () => {
  test('its picture at 75 per inch, told to be one of 600, has the chunk of its picture at 600', () => {
    const folder = mkdtempSync(join(tmpdir(), 'seamwright-png-'));
    try {
      const file = join(folder, 'page.pdf');
      writeFileSync(file, ONE_PAGE);
      const at = (perInch: number): Uint8Array => {
        execFileSync('pdftoppm', ['-png', '-singlefile', '-r', `${perInch}`, file, join(folder, 'page')]);
        return readFileSync(join(folder, 'page.png'));
      };
      const [low, high] = [at(75), at(600)];
      expect(resolutionOf(high)).toHaveLength(1);
      expect(resolutionOf(withResolution(low, 600))).toEqual(resolutionOf(high));
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

/** A blank page of half an inch; readers find their way through it without a table of places. */
const ONE_PAGE = `%PDF-1.4
1 0 obj <</Type/Catalog/Pages 2 0 R>> endobj
2 0 obj <</Type/Pages/Kids[3 0 R]/Count 1>> endobj
3 0 obj <</Type/Page/Parent 2 0 R/MediaBox[0 0 36 36]>> endobj
trailer <</Size 4/Root 1 0 R>>
`;
