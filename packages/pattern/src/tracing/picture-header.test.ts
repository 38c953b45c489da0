import { describe, expect, it } from 'vitest';
import { greyPng } from '../../test/png.ts';
import { kindOfPicture, readPictureHeader } from './picture-header.ts';

const ascii = (text: string): number[] => [...text].map((letter) => letter.charCodeAt(0));
const bytes = (...parts: readonly (readonly number[])[]): Uint8Array => Uint8Array.from(parts.flat());
const zeros = (count: number): number[] => new Array<number>(count).fill(0);

/** A JPEG up to its frame header (ITU-T T.81, B.2.2), after the given segments. */
const jpeg = (width: number, height: number, marker: number, ...before: readonly number[][]): Uint8Array =>
  bytes(
    [0xff, 0xd8],
    ...before,
    [0xff, marker, 0, 17, 8, height >> 8, height & 255, width >> 8, width & 255],
    zeros(12),
  );

const segment = (marker: number, length: number): number[] => [
  0xff,
  marker,
  length >> 8,
  length & 255,
  // Bytes that would pass for a frame header if segments were not stepped over.
  ...new Array<number>(length - 2).fill(0xff).map((one, i) => (i % 2 === 0 ? one : 0xc0)),
];

const webp = (form: string, ...data: readonly (readonly number[])[]): Uint8Array =>
  bytes(ascii('RIFF'), zeros(4), ascii('WEBP'), ascii(form), zeros(4), ...data, zeros(16));

describe('the size of a picture by its first bytes', () => {
  it('PNG, whole or only begun', () => {
    const whole = greyPng(7, 300);
    const size = { width: 7, height: 300 };
    expect(readPictureHeader(whole)).toEqual({ kind: 'png', size });
    expect(readPictureHeader(whole.subarray(0, 24))).toEqual({ kind: 'png', size });
    expect(readPictureHeader(whole.subarray(0, 20))).toEqual({ kind: 'png', size: null });
  });

  it.each([
    ['baseline', 0xc0],
    ['progressive', 0xc2],
  ])('JPEG, %s, behind what a camera wrote', (_name, marker) => {
    const file = jpeg(4000, 3000, marker, segment(0xe1, 60_000), segment(0xdb, 67), [0xff]);
    expect(readPictureHeader(file)).toEqual({ kind: 'jpeg', size: { width: 4000, height: 3000 } });
  });

  it('JPEG, with a Huffman table before the frame', () => {
    const file = jpeg(640, 480, 0xc1, segment(0xc4, 31));
    expect(readPictureHeader(file)?.size).toEqual({ width: 640, height: 480 });
  });

  it('WebP in its three forms', () => {
    // 0x0123 − 1 and 0x0045 − 1 in 24 bits; 14 bits each; 14 bits less one each in a row: RFC 9649 and RFC 6386.
    const size = { width: 0x123, height: 0x45 };
    expect(readPictureHeader(webp('VP8X', zeros(4), [0x22, 1, 0, 0x44, 0, 0]))?.size).toEqual(size);
    const frame = [0, 0, 0, 0x9d, 0x01, 0x2a, 0x23, 0x01, 0x45, 0x00];
    expect(readPictureHeader(webp('VP8 ', frame))?.size).toEqual(size);
    const bits = 0x122 | (0x44 << 14);
    const lossless = [0x2f, bits & 255, (bits >> 8) & 255, (bits >> 16) & 255, bits >> 24];
    expect(readPictureHeader(webp('VP8L', lossless))?.size).toEqual(size);
  });

  it('none where the header is not sound', () => {
    expect(readPictureHeader(jpeg(0, 480, 0xc0))).toEqual({ kind: 'jpeg', size: null });
    expect(readPictureHeader(bytes([0xff, 0xd8, 0xff, 0xda], zeros(20)))).toEqual({
      kind: 'jpeg',
      size: null,
    });
    expect(readPictureHeader(bytes([0xff, 0xd8, 0xff, 0xe0, 0, 0], zeros(20)))?.size).toBeNull();
    expect(readPictureHeader(webp('VP8 ', zeros(12)))).toEqual({ kind: 'webp', size: null });
  });
});

describe('the kind of a picture', () => {
  it.each([
    ['GIF', ascii('GIF89a')],
    ['BMP', [...ascii('BM'), ...zeros(40)]],
    ['TIFF', [...ascii('II*'), 0]],
    ['HEIC', [0, 0, 0, 24, ...ascii('ftypheic')]],
    ['AVIF', [0, 0, 0, 24, ...ascii('ftypavif')]],
    ['PDF', ascii('%PDF-1.7')],
  ])('%s is known, and not read', (kind, start) => {
    expect(kindOfPicture(bytes(start))).toBe(kind);
    expect(readPictureHeader(bytes(start))).toBeNull();
  });

  it.each([
    ['nothing', []],
    ['a pattern file', ascii('{"format": "seamwright-pattern/1"}')],
    ['an SVG drawing', ascii('<svg xmlns="http://www.w3.org/2000/svg">')],
    ['words', ascii('BMs and other words')],
  ])('%s is none', (_name, start) => {
    expect(kindOfPicture(bytes(start))).toBeNull();
  });
});
