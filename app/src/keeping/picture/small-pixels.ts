import type { Picture } from '@seamwright/pattern';

/** Pixels of the longer side that colours are taken from: fewer would lose small things, more add nothing. */
const SIDE = 96;

/** A picture's pixels when it is made small: red, green, blue and opacity of each, 0 to 255. */
export async function smallPixels({ data, width, height }: Picture): Promise<Uint8ClampedArray> {
  const image = new Image();
  image.src = data;
  await image.decode();
  const share = Math.min(1, SIDE / Math.max(width, height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(width * share));
  canvas.height = Math.max(1, Math.round(height * share));
  const context = canvas.getContext('2d')!;
  context.imageSmoothingQuality = 'high';
  context.drawImage(image, 0, 0, canvas.width, canvas.height);
  return context.getImageData(0, 0, canvas.width, canvas.height).data;
}
