import { type PictureSize, pictureBox } from '@seamwright/pattern';

interface Turned {
  readonly turn: number;
  readonly share: number;
  readonly canvas: HTMLCanvasElement;
}

const known = new WeakMap<HTMLImageElement, Turned>();

/**
 * The picture turned, on a canvas that is its box: drawing a large picture turned takes ten times as long as drawing it
 * upright, and the canvas is drawn again at every move of a line. Kept until it is turned further, or looked at much closer.
 *
 * @param detail pixels of the screen for each of the picture
 */
export function turnedImage(
  image: HTMLImageElement,
  size: PictureSize,
  turn: number,
  detail: number,
): HTMLCanvasElement {
  // By powers of two, so that zooming does not make it anew at every step.
  const share = Math.min(1, 2 ** Math.ceil(Math.log2(detail)));
  const before = known.get(image);
  if (before?.turn === turn && before.share === share) return before.canvas;
  const { minX, minY, maxX, maxY } = pictureBox({ x: 0, y: 0, width: size.width * share, turn }, size);
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.ceil(maxX - minX));
  canvas.height = Math.max(1, Math.ceil(maxY - minY));
  const context = canvas.getContext('2d')!;
  context.imageSmoothingQuality = 'high';
  context.scale(canvas.width / (maxX - minX), canvas.height / (maxY - minY));
  context.translate(-minX, -minY);
  context.rotate((-turn * Math.PI) / 180);
  context.drawImage(
    image,
    (-size.width * share) / 2,
    (-size.height * share) / 2,
    size.width * share,
    size.height * share,
  );
  known.set(image, { turn, share, canvas });
  return canvas;
}
