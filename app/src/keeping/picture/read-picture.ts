import { fail, ok, type Result } from '@seamwright/geometry';
import { LONGEST_SIDE, type Picture, readPictureHeader } from '@seamwright/pattern';
import { keptData } from './kept-data.ts';
import { drawSvg } from './svg-picture.ts';

/**
 * Pixels of the largest picture that is decoded, which takes four bytes each: 256 MB. Cameras and scanners stay below; the
 * few telephones above give smaller pictures when asked.
 */
const MOST_PIXELS = 64_000_000;

/** Bytes in which a JPEG's size has to be found: behind a small picture and a profile that a camera wrote. */
const HEADER_BYTES = 1_000_000;

/** A picture as it is kept, and what the maker should know of it. */
export interface ReadPicture {
  readonly picture: Picture;
  /** Its own size in pixels, where it was scaled down. */
  readonly scaledFrom: { readonly width: number; readonly height: number } | null;
}

/**
 * Reads a PNG, JPEG or WebP picture, or an SVG drawing as a picture. What is kept is always written anew: upright as the
 * camera held it, no larger than is traced from, and without what a camera writes beside it (where it was, and when), since
 * patterns are given away. Pictures that are too large are refused before they are decoded.
 */
export async function readPicture(file: Blob, name: string): Promise<Result<ReadPicture>> {
  const header = readPictureHeader(new Uint8Array(await file.slice(0, HEADER_BYTES).arrayBuffer()));
  if (header === null) return readSvgPicture(await file.text(), name);
  if (header.size === null) return broken();
  const { width, height } = header.size;
  if (width * height > MOST_PIXELS) {
    return fail(
      `The picture has ${Math.round((width * height) / 1e6)} megapixels (${width} × ${height}), and no more than ${MOST_PIXELS / 1e6} are opened`,
      '',
      'Scale it down in a picture program and bring it in again',
    );
  }
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    return broken();
  }
  // A quarter turn by the camera's word has changed width and height.
  const own = { width: bitmap.width, height: bitmap.height };
  const canvas = canvasFor(own);
  const context = canvas.getContext('2d')!;
  context.imageSmoothingQuality = 'high';
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  return pictureOf(canvas, name, header.kind === 'jpeg', canvas.width < own.width ? own : null);
}

async function readSvgPicture(text: string, name: string): Promise<Result<ReadPicture>> {
  const drawn = await drawSvg(text, canvasFor);
  return drawn.ok ? pictureOf(drawn.value, name, false, null) : drawn;
}

/** A canvas in the picture's proportions, no larger than it, nor than pictures are kept. */
function canvasFor({
  width,
  height,
}: {
  readonly width: number;
  readonly height: number;
}): HTMLCanvasElement {
  const share = Math.min(1, LONGEST_SIDE / Math.max(width, height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(width * share));
  canvas.height = Math.max(1, Math.round(height * share));
  return canvas;
}

async function pictureOf(
  canvas: HTMLCanvasElement,
  name: string,
  photograph: boolean,
  scaledFrom: ReadPicture['scaledFrom'],
): Promise<Result<ReadPicture>> {
  const kept = await keptData(canvas, photograph);
  return kept.ok ? ok({ picture: { name, ...kept.value }, scaledFrom }) : kept;
}

const broken = () =>
  fail(
    'The picture is broken or cut short',
    '',
    'Open it in a picture program, save it again, and bring that in',
  );
