import { FACE } from './theme.ts';

/** Pictures of names that are kept; a block's names in all the sizes that zooming goes through are fewer. */
const MOST = 8_000;

/** Capitals and digits of the face are about this high, in ems. */
const CAPITAL = 0.66;

const written = new Map<string, HTMLCanvasElement>();

/**
 * A name as a picture, its capitals in the middle: writing is the slowest thing that a canvas does, and the same
 * names are shown again at every step of a drag.
 *
 * @param size of the type, whole device pixels
 */
export function writtenName(name: string, size: number, ink: string): HTMLCanvasElement {
  const key = `${size} ${ink} ${name}`;
  const known = written.get(key);
  if (known !== undefined) return known;
  if (written.size >= MOST) written.clear();
  const fresh = write(name, size, ink);
  written.set(key, fresh);
  return fresh;
}

function write(name: string, size: number, ink: string): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d')!;
  const font = `600 ${size}px ${FACE}`;
  context.font = font;
  canvas.width = Math.ceil(context.measureText(name).width) + 2;
  canvas.height = Math.ceil(size);
  // Another size empties a canvas, and its settings.
  context.font = font;
  context.fillStyle = ink;
  context.textAlign = 'center';
  context.textBaseline = 'alphabetic';
  context.fillText(name, canvas.width / 2, (canvas.height + CAPITAL * size) / 2);
  return canvas;
}
