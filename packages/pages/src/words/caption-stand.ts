import { type Box, boundingBox, type Point, type Polygon } from '@seamwright/geometry';
import type { Caption } from './caption.ts';

/** A foundation and its caption beside each other; the corner of their upright rectangle at (0, 0). Points. */
export interface CaptionStand {
  readonly caption: Caption;
  readonly captionAt: Point<'page'>;
  /** By how much the foundation is moved. */
  readonly linesAt: Point<'page'>;
  readonly size: { readonly width: number; readonly height: number };
}

/**
 * Where the caption takes least paper: above the foundation or below it, at its left or right end, as near to it as `gap`
 * allows, so that it slips into the corner that a slanting edge leaves free. Of stands that take the same, the first:
 * above before below, left before right, and the captions in the order in which they come.
 *
 * @param outlines the cutting line, and what stands beyond it
 */
export function captionStand(
  outlines: readonly Polygon<'page'>[],
  captions: readonly Caption[],
  gap: number,
): CaptionStand {
  const box = boundingBox(outlines.flat());
  let best: CaptionStand | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const caption of captions)
    for (const side of SIDES)
      for (const x of [box.minX, Math.max(box.minX, box.maxX - caption.width)]) {
        const stand = standAt(outlines, box, caption, gap, side, x);
        const paper = stand.size.width * stand.size.height;
        if (paper < least) [best, least] = [stand, paper];
      }
  if (best === null) throw new RangeError('There is no caption to be placed');
  return best;
}

const SIDES = ['above', 'below'] as const;

function standAt(
  outlines: readonly Polygon<'page'>[],
  { minX, minY, maxX, maxY }: Box<'page'>,
  caption: Caption,
  gap: number,
  side: 'above' | 'below',
  x: number,
): CaptionStand {
  const [top, bottom] = reach(outlines, x - gap, x + caption.width + gap);
  const y = side === 'above' ? top - gap - caption.height : bottom + gap;
  const above = Math.min(minY, y);
  return {
    caption,
    captionAt: { x: x - minX, y: y - above },
    linesAt: { x: -minX, y: -above },
    size: {
      width: Math.max(maxX, x + caption.width) - minX,
      height: Math.max(maxY, y + caption.height) - above,
    },
  };
}

/** The least and the greatest y of the outlines between two x. */
function reach(
  outlines: readonly Polygon<'page'>[],
  left: number,
  right: number,
): readonly [top: number, bottom: number] {
  let [top, bottom] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  // In plain numbers: it is asked several times for each way in which a foundation may lie.
  for (const outline of outlines)
    for (let i = 0; i < outline.length; i++) {
      const [a, b] = [outline[i]!, outline[(i + 1) % outline.length]!];
      const [p, q] = a.x < b.x ? [a, b] : [b, a];
      if (q.x < left || p.x > right) continue;
      const from = p.x === q.x ? p.y : yAt(p, q, Math.max(p.x, left));
      const to = p.x === q.x ? q.y : yAt(p, q, Math.min(q.x, right));
      top = Math.min(top, from, to);
      bottom = Math.max(bottom, from, to);
    }
  return [top, bottom];
}

const yAt = (p: Point<'page'>, q: Point<'page'>, x: number): number =>
  p.y + ((x - p.x) / (q.x - p.x)) * (q.y - p.y);
