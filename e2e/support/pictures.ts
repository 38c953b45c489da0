import { crc32, deflateSync } from 'node:zlib';
import type { Page } from '@playwright/test';

/** Pictures made here: PNG by the standard, with Node's zlib; JPEG and WebP by the browser's own writers. */

/** Red, green, blue, each 0 … 255. */
export type Colour = readonly [number, number, number];

/** A PNG (3rd edition, 5.3 and 11.2) of that size, its colours by a function of the pixel. */
export function png(width: number, height: number, colourAt: (x: number, y: number) => Colour): Buffer {
  const rows = Buffer.alloc((3 * width + 1) * height);
  for (let y = 0, at = 0; y < height; y++) {
    at++;
    for (let x = 0; x < width; x++) for (const part of colourAt(x, y)) rows[at++] = part;
  }
  return pngOf(width, height, deflateSync(rows));
}

/** A PNG whose header says that size, and which has nothing behind it. */
export const pngHeader = (width: number, height: number): Buffer => pngOf(width, height, Buffer.alloc(0));

function pngOf(width: number, height: number, data: Buffer): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  // 8 bits each of red, green, blue; no interlacing.
  header[8] = 8;
  header[9] = 2;
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    chunk('IDAT', data),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(name: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

/** A picture half red (left) and half blue, as the browser writes that type. */
export async function written(
  page: Page,
  type: 'image/jpeg' | 'image/webp',
  width: number,
  height: number,
): Promise<Buffer> {
  const base64 = await page.evaluate(
    async ([kind, wide, high]) => {
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [wide, high];
      const context = canvas.getContext('2d')!;
      context.fillStyle = 'rgb(200,0,0)';
      context.fillRect(0, 0, wide / 2, high);
      context.fillStyle = 'rgb(0,0,200)';
      context.fillRect(wide / 2, 0, wide / 2, high);
      return canvas.toDataURL(kind, 0.9).split(',')[1]!;
    },
    [type, width, height] as const,
  );
  return Buffer.from(base64, 'base64');
}

/**
 * The JPEG with a camera's word that it was held turned: an Exif segment with Orientation 6, "0th row at the right" (CIPA DC-008,
 * 4.6.4 A; segment: ITU-T T.81, B.2.4.6), and a word that stands for where it was taken.
 */
export function turnedByCamera(jpeg: Buffer): Buffer {
  const tiff = Buffer.concat([
    Buffer.from('MM\0*\0\0\0\x08', 'latin1'),
    // One entry: tag 0x0112, type SHORT, one value, 6; then no further directory.
    Buffer.from([0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0, 0, 0, 0, 0]),
    Buffer.from('SECRET HARBOUR', 'latin1'),
  ]);
  const data = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff]);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(data.length + 2, 2);
  return Buffer.concat([jpeg.subarray(0, 2), head, data, jpeg.subarray(2)]);
}

export interface PictureFile {
  readonly name: string;
  readonly type: string;
  readonly bytes: Buffer;
}

/** Files as the page has them, in a `DataTransfer`. */
const transferOf = (page: Page, files: readonly PictureFile[]) =>
  page.evaluateHandle(
    (given) => {
      const data = new DataTransfer();
      for (const { name, type, base64 } of given) {
        const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
        data.items.add(new File([bytes], name, { type }));
      }
      return data;
    },
    files.map(({ name, type, bytes }) => ({ name, type, base64: bytes.toString('base64') })),
  );

/** Drops files on the drawing. */
export async function dropOnDrawing(page: Page, ...files: readonly PictureFile[]): Promise<void> {
  const dataTransfer = await transferOf(page, files);
  const canvas = page.getByRole('application', { name: 'Drawing of the block' });
  await canvas.dispatchEvent('dragover', { dataTransfer });
  await canvas.dispatchEvent('drop', { dataTransfer });
}

/** Pastes files, as a picture that was copied elsewhere comes. */
export async function pasteFiles(page: Page, ...files: readonly PictureFile[]): Promise<void> {
  const data = await transferOf(page, files);
  await data.evaluate((clipboardData) =>
    (document.activeElement ?? document.body).dispatchEvent(
      new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }),
    ),
  );
}
