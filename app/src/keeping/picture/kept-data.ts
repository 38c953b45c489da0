import { fail, ok, type Result } from '@seamwright/geometry';
import { MOST_PICTURE_DATA, type Picture } from '@seamwright/pattern';

/** Of the JPEG's and WebP's quality: edges stay clear enough to put a line on. */
const QUALITY = 0.85;

/** By this much a picture is made narrower that is still too long in every form. */
const SHRINK = 0.75;

/**
 * What is on a canvas as it is kept: as PNG where that is short enough, since it changes nothing; photographs, and what would
 * be too long, as JPEG, or as WebP where something shows through. The last resort is a smaller picture.
 */
export async function keptData(
  canvas: HTMLCanvasElement,
  photograph: boolean,
): Promise<Result<Pick<Picture, 'width' | 'height' | 'data'>>> {
  const types = photograph
    ? ['image/jpeg']
    : ['image/png', showsThrough(canvas) ? 'image/webp' : 'image/jpeg'];
  for (const type of types) {
    const data = await dataOf(canvas, type);
    if (data === null) return fail('This browser could not keep the picture', '', 'Try a smaller one');
    if (data.length <= MOST_PICTURE_DATA) return ok({ width: canvas.width, height: canvas.height, data });
  }
  return keptData(shrunk(canvas), photograph);
}

/** As a text. A browser that does not write the type asked for gives a PNG instead. */
async function dataOf(canvas: HTMLCanvasElement, type: string): Promise<string | null> {
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, type, QUALITY));
  if (blob === null) return null;
  return new Promise((done) => {
    const reader = new FileReader();
    reader.onload = () => done(reader.result as string);
    reader.onerror = () => done(null);
    reader.readAsDataURL(blob);
  });
}

/** Whether any pixel is not wholly opaque. */
function showsThrough(canvas: HTMLCanvasElement): boolean {
  const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
  for (let i = 3; i < data.length; i += 4) if (data[i]! < 255) return true;
  return false;
}

function shrunk(canvas: HTMLCanvasElement): HTMLCanvasElement {
  const smaller = document.createElement('canvas');
  smaller.width = Math.max(1, Math.round(canvas.width * SHRINK));
  smaller.height = Math.max(1, Math.round(canvas.height * SHRINK));
  const context = smaller.getContext('2d')!;
  context.imageSmoothingQuality = 'high';
  context.drawImage(canvas, 0, 0, smaller.width, smaller.height);
  return smaller;
}
