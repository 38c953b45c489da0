import type { PieceCut } from '../src/types.ts';

/** A piece of the fabric `sea`, a rectangle unless said otherwise. */
export const piece = (
  name: string,
  width: number,
  height: number,
  more: Partial<PieceCut> = {},
): PieceCut => ({
  patch: 0,
  name,
  cloth: 'sea',
  shape: 'rectangle',
  width,
  height,
  angle: 0,
  toleranceShift: 0.25,
  toleranceAngle: 3,
  ...more,
});

export const half = (name: string, width: number, height: number, more: Partial<PieceCut> = {}): PieceCut =>
  piece(name, width, height, { shape: 'half-rectangle', ...more });
