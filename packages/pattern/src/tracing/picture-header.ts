/** The kinds of picture that are brought in; SVG is text and told otherwise. */
export type PictureKind = 'png' | 'jpeg' | 'webp';

/** Kinds that are known by their first bytes, to be named when they are refused. */
export type OtherKind = 'GIF' | 'BMP' | 'TIFF' | 'HEIC' | 'AVIF' | 'PDF' | 'PSD';

/** What the first bytes of a picture say of it. */
export interface PictureHeader {
  readonly kind: PictureKind;
  /** Pixels as stored: turned by a quarter where a camera says so beside it. Null when the header is not sound. */
  readonly size: { readonly width: number; readonly height: number } | null;
}

/** What kind of picture begins with these bytes; null when none that is known. */
export function kindOfPicture(bytes: Uint8Array): PictureKind | OtherKind | null {
  // PNG 3rd edition, 5.2; JPEG ITU-T T.81, B.1.1.3; WebP container (RFC 9649, 2.4).
  if (startsWith(bytes, 0, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return 'png';
  if (startsWith(bytes, 0, [0xff, 0xd8, 0xff])) return 'jpeg';
  if (letters(bytes, 0, 4) === 'RIFF' && letters(bytes, 8, 4) === 'WEBP') return 'webp';
  const start = letters(bytes, 0, 4);
  if (start === 'GIF8') return 'GIF';
  if (start.startsWith('BM') && bytes.length > 26) return 'BMP';
  if (start === 'II*\0' || start === 'MM\0*') return 'TIFF';
  if (start === '%PDF') return 'PDF';
  if (start === '8BPS') return 'PSD';
  if (letters(bytes, 4, 4) !== 'ftyp') return null;
  return letters(bytes, 8, 4).startsWith('avi') ? 'AVIF' : 'HEIC';
}

/**
 * Kind and size of a picture by its first bytes, before anything is decoded: 100 megapixels would take 400 MB. Null when
 * the bytes are no picture of the three kinds.
 *
 * @param bytes the file's beginning; in JPEG the size may come after what a camera wrote, so give as much as can be spared
 */
export function readPictureHeader(bytes: Uint8Array): PictureHeader | null {
  const kind = kindOfPicture(bytes);
  if (kind !== 'png' && kind !== 'jpeg' && kind !== 'webp') return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const size = { png: pngSize, jpeg: jpegSize, webp: webpSize }[kind](bytes, view);
  return { kind, size: size === null || size.width === 0 || size.height === 0 ? null : size };
}

type Size = PictureHeader['size'];

/** The first chunk, IHDR, begins with width and height: PNG 3rd edition, 11.2.1. */
function pngSize(bytes: Uint8Array, view: DataView): Size {
  if (bytes.length < 24 || letters(bytes, 12, 4) !== 'IHDR') return null;
  return { width: view.getUint32(16), height: view.getUint32(20) };
}

/** The frame header SOFn, after any number of other segments: ITU-T T.81, B.2.2 and table B.1. */
function jpegSize(bytes: Uint8Array, view: DataView): Size {
  let at = 2;
  while (at + 9 < bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1]!;
    // A marker may be filled up with further 0xff; these three stand alone.
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (isFrame) return { height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
    if (marker === 0xda || marker === 0xd9) return null;
    const length = view.getUint16(at + 2);
    if (length < 2) return null;
    at += 2 + length;
  }
  return null;
}

/** The first chunk says which of three forms it has: RFC 9649, 2.5 to 2.7; RFC 6386, 9.1 for the first. */
function webpSize(bytes: Uint8Array, view: DataView): Size {
  if (bytes.length < 30) return null;
  switch (letters(bytes, 12, 4)) {
    case 'VP8 ':
      if (!startsWith(bytes, 23, [0x9d, 0x01, 0x2a])) return null;
      return { width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff };
    case 'VP8L': {
      if (bytes[20] !== 0x2f) return null;
      const bits = view.getUint32(21, true);
      return { width: (bits & 0x3fff) + 1, height: ((bits >> 14) & 0x3fff) + 1 };
    }
    case 'VP8X': {
      const three = (at: number) => view.getUint16(at, true) + bytes[at + 2]! * 0x10000;
      return { width: three(24) + 1, height: three(27) + 1 };
    }
    default:
      return null;
  }
}

const startsWith = (bytes: Uint8Array, at: number, wanted: readonly number[]): boolean =>
  wanted.every((byte, i) => bytes[at + i] === byte);

const letters = (bytes: Uint8Array, at: number, count: number): string =>
  String.fromCharCode(...bytes.subarray(at, at + count));
