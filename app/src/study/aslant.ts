import type { Drawing } from '@seamwright/arrangement';

/**
 * A drawing as it would look from aside: lines stay straight and meet as before, but no two shapes are alike any more, no
 * line is upright and all places are other ones. What a drag does to a few patches is done to all.
 */
export function aslant(drawing: Drawing): Drawing {
  const points = Object.entries(drawing.points);
  const xs = points.map(([, { x }]) => x);
  const ys = points.map(([, { y }]) => y);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const seen = ([id, point]: (typeof points)[number]) => {
    // A perspective image: each place drawn together towards the upper left corner, by up to a third.
    const far = 1 + (point.x - left) / (4 * width) + (point.y - top) / (6 * height);
    return [id, { ...point, x: left + (point.x - left) / far, y: top + (point.y - top) / far }] as const;
  };
  return { ...drawing, points: Object.fromEntries(points.map(seen)) };
}
