import { type ChartRow, type Cloth, mayTurn } from '@seamwright/cloth';
import type { Point } from '@seamwright/geometry';
import { STROKES } from '../marks/marks.ts';
import type { Ink, Mark, Stroke } from '../marks/model.ts';

/** Points that the picture of a piece takes at most, and how far the arrow stands from it. */
export const PICTURE = { width: 36, height: 19 } as const;
const ARROW_AWAY = 6;

/** Points: a sliver is still seen. */
const THINNEST = 2.5;

/** The palest grey that a home printer holds. */
const SHADE: Ink = 0.3;

/**
 * A row's rectangle in small, right side up, its width across: halves with the cut from corner to corner, and where only one
 * of them serves, that one shaded. Fabric with a grain or an up has an arrow on the right, along the fabric's length. The
 * top left corner of its room at (0, 0).
 */
export function cutPicture({ shape, width, height }: ChartRow, cloth: Cloth): readonly Mark[] {
  const scale = Math.min(PICTURE.width / width, PICTURE.height / height);
  const [across, down] = [Math.max(width * scale, THINNEST), Math.max(height * scale, THINNEST)];
  const left = (PICTURE.width - across) / 2;
  const top = (PICTURE.height - down) / 2;
  const corner = (x: 0 | 1, y: 0 | 1): Point<'page'> => ({ x: left + x * across, y: top + y * down });
  const around = [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)];
  const isHalf = shape === 'half-rectangle';
  return [
    ...(isHalf && cloth.directional
      ? [path([corner(0, 0), corner(1, 0), corner(0, 1)], true, undefined, SHADE)]
      : []),
    path(around, true, STROKES.diagram),
    ...(isHalf ? [path([corner(0, 1), corner(1, 0)], false, STROKES.diagram)] : []),
    ...(mayTurn(cloth) ? [] : arrows(cloth.directional)),
  ];
}

/** Up the print; or both ways along the grain. */
function arrows(onlyUp: boolean): readonly Mark[] {
  const x = PICTURE.width + ARROW_AWAY;
  const [top, bottom] = [2, PICTURE.height - 2];
  const head = (y: number, back: number): Mark =>
    path(
      [
        { x: x - 2.5, y: y + back },
        { x, y },
        { x: x + 2.5, y: y + back },
      ],
      false,
      STROKES.arrow,
    );
  return [
    path(
      [
        { x, y: bottom },
        { x, y: top },
      ],
      false,
      STROKES.arrow,
    ),
    head(top, 3),
    ...(onlyUp ? [] : [head(bottom, -3)]),
  ];
}

const path = (points: readonly Point<'page'>[], closed: boolean, stroke?: Stroke, fill?: Ink): Mark => ({
  kind: 'path',
  role: 'footer',
  points,
  closed,
  ...(stroke && { stroke }),
  ...(fill !== undefined && { fill }),
});
