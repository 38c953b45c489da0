import { fail } from '@seamwright/geometry';
import { LONGEST_SIDE } from './limits.ts';
import { readPictureHeader } from './picture-header.ts';
import type { Picture } from './tracing.ts';

const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
const VALUES = new Map([...ALPHABET].map((letter, value) => [letter, value]));

/** Characters in which the size has to be named; canvases name it in the first hundred. */
const HEADER = 400_000;

/**
 * Whether a picture of a file is what it says it is: a picture of its kind and size, no larger than pictures are kept. Told
 * from its header; what is behind is decoded when it is shown.
 */
export function checkPicture(
  { data, width, height }: Picture,
  where: string,
): ReturnType<typeof fail> | null {
  const remedy = 'Open a saved copy of the pattern, or take the picture out of the file';
  const comma = data.indexOf(',');
  const header = readPictureHeader(bytesOf(data.slice(comma + 1, comma + 1 + HEADER)));
  if (header === null || header.size === null || data.slice(0, comma) !== `data:image/${header.kind};base64`)
    return fail('A picture of the pattern file is broken', where, remedy);
  if (header.size.width !== width || header.size.height !== height) {
    const { width: w, height: h } = header.size;
    return fail(
      `A picture has ${w} × ${h} pixels, and the pattern file says ${width} × ${height}`,
      where,
      remedy,
    );
  }
  if (Math.max(width, height) > LONGEST_SIDE)
    return fail(`A picture of the pattern file has more than ${LONGEST_SIDE} pixels a side`, where, remedy);
  return null;
}

/** The bytes that a text in base64 stands for (RFC 4648, 4); the text is known to be of its letters. */
function bytesOf(base64: string): Uint8Array {
  const plain = base64.replace(/=+$/, '');
  const bytes = new Uint8Array(Math.floor((plain.length * 3) / 4));
  let bits = 0;
  let held = 0;
  let at = 0;
  for (const letter of plain) {
    bits = ((bits << 6) | VALUES.get(letter)!) & 0xffff;
    held += 6;
    if (held < 8) continue;
    held -= 8;
    bytes[at++] = (bits >> held) & 0xff;
  }
  return bytes;
}
