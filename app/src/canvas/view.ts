import type { Box, Point } from '@seamwright/geometry';

/** Where the block lies on the canvas: screen = (block x × flip, block y) × scale + (x, y). */
export interface View {
  /** CSS pixels per inch. */
  readonly scale: number;
  /** CSS pixels. */
  readonly x: number;
  readonly y: number;
  /** 1: seen from the front. -1: from the printed side, left and right exchanged. */
  readonly flip: Flip;
}

export type Flip = 1 | -1;

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** How far in and out one can go, as multiples of the fitting scale. */
const FARTHEST_OUT = 0.25;
const CLOSEST_IN = 60;

/** The view that shows the whole of `box`, centred, with at least `margin` pixels all round. */
export function fit(box: Box, size: Size, margin: number): View {
  const width = Math.max(box.maxX - box.minX, Number.MIN_VALUE);
  const height = Math.max(box.maxY - box.minY, Number.MIN_VALUE);
  const room = (length: number) => Math.max(length - 2 * margin, 1);
  const scale = Math.min(room(size.width) / width, room(size.height) / height);
  return {
    scale,
    x: size.width / 2 - ((box.minX + box.maxX) / 2) * scale,
    y: size.height / 2 - ((box.minY + box.maxY) / 2) * scale,
    flip: 1,
  };
}

/** CSS pixels that the zoom buttons take in the lower right corner. */
export interface Corner {
  readonly width: number;
  readonly height: number;
}

/** {@link fit}, but with the block above the corner's buttons where it would come to lie under them. */
export function fitClear(box: Box, size: Size, margin: number, corner: Corner): View {
  const view = fit(box, size, margin);
  const end = toScreen(view, { x: box.maxX, y: box.maxY });
  const clear = end.x <= size.width - corner.width || end.y <= size.height - corner.height;
  if (clear) return view;
  const above = { width: size.width, height: size.height - corner.height + margin / 2 };
  return fit(box, above, margin);
}

/** Zooms by `factor` so that the block's point under `at` stays under it; stops at the limits round `fitting`. */
export function zoomAt(view: View, at: Point<'screen'>, factor: number, fitting: View): View {
  const least = fitting.scale * FARTHEST_OUT;
  const most = fitting.scale * CLOSEST_IN;
  const scale = Math.min(Math.max(view.scale * factor, least), most);
  const ratio = scale / view.scale;
  return { ...view, scale, x: at.x - (at.x - view.x) * ratio, y: at.y - (at.y - view.y) * ratio };
}

/** The same part of the block seen from its other side: left and right exchanged about the canvas's middle. */
export const turnedOver = (view: View, { width }: Size): View => ({
  ...view,
  x: width - view.x,
  flip: view.flip === 1 ? -1 : 1,
});

export const pan = (view: View, dx: number, dy: number): View => ({
  ...view,
  x: view.x + dx,
  y: view.y + dy,
});

export const toScreen = (view: View, at: Point): Point<'screen'> => ({
  x: at.x * view.flip * view.scale + view.x,
  y: at.y * view.scale + view.y,
});

export const toBlock = (view: View, at: Point<'screen'>): Point => ({
  x: ((at.x - view.x) / view.scale) * view.flip,
  y: (at.y - view.y) / view.scale,
});
