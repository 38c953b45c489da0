import { MM_PER_INCH } from '@seamwright/geometry';

/** The eight bytes that every PNG begins with (PNG, third edition, W3C 2025, section 5.2). */
const SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** A chunk's length and type stand before its data, its CRC after (section 5.3). Bytes. */
const BEFORE = 8;
const AROUND = 12;

/** The unit of pHYs, metre (section 11.3.4.3). */
const METRE = 1;

/**
 * The same picture, saying in a pHYs chunk how many pixels make an inch: programs that print it then print it at its
 * true size. A resolution that it said before is replaced.
 *
 * Format: Portable Network Graphics (PNG) Specification, third edition, W3C 2025, sections 5 and 11.3.4.3. The chunk
 * counts pixels per metre, so what is read back is within 0.5 px/m of what was asked: 300 become 299.9994.
 *
 * Throws a RangeError when the bytes are no PNG or the resolution is not above 0.
 *
 * @param png the bytes of a PNG file, as a canvas gives them
 * @param perInch pixels per inch, across and down
 */
export function withResolution(png: Uint8Array, perInch: number): Uint8Array<ArrayBuffer> {
  const perMetre = Math.round((perInch * 1000) / MM_PER_INCH);
  if (!(perMetre >= 1 && perMetre < 2 ** 31))
    throw new RangeError(`${perInch} pixels per inch is no resolution`);
  if (!SIGNATURE.every((byte, i) => png[i] === byte)) throw new RangeError('The picture is no PNG');
  const chunks = chunksOf(png).filter(({ type }) => type !== 'pHYs');
  // It has to stand before the first IDAT; the header stands before everything (section 5.6).
  const [header, ...others] = chunks.map(({ bytes }) => bytes);
  if (header === undefined) throw new RangeError('The picture is a PNG without a header');
  return joined([Uint8Array.from(SIGNATURE), header, resolutionChunk(perMetre), ...others]);
}

function chunksOf(png: Uint8Array): readonly { readonly type: string; readonly bytes: Uint8Array }[] {
  const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
  const chunks: { type: string; bytes: Uint8Array }[] = [];
  for (let at = SIGNATURE.length; at < png.length; ) {
    const end = at + BEFORE <= png.length ? at + AROUND + view.getUint32(at) : Infinity;
    if (end > png.length) throw new RangeError('The picture is a PNG that is cut short');
    const type = String.fromCharCode(...png.subarray(at + 4, at + BEFORE));
    chunks.push({ type, bytes: png.subarray(at, end) });
    at = end;
  }
  return chunks;
}

function resolutionChunk(perMetre: number): Uint8Array {
  const bytes = new Uint8Array(AROUND + 9);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, 9);
  bytes.set(
    [...'pHYs'].map((letter) => letter.charCodeAt(0)),
    4,
  );
  view.setUint32(8, perMetre);
  view.setUint32(12, perMetre);
  bytes[16] = METRE;
  view.setUint32(17, crc(bytes.subarray(4, 17)));
  return bytes;
}

/** CRC-32 of type and data (section 5.5), bit by bit: there are thirteen bytes. */
function crc(bytes: Uint8Array): number {
  let rest = 0xffffffff;
  for (const byte of bytes) {
    rest ^= byte;
    for (let bit = 0; bit < 8; bit++) rest = (rest >>> 1) ^ (rest & 1 ? 0xedb88320 : 0);
  }
  return ~rest >>> 0;
}

function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const all = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
