import type { Drawing } from '@seamwright/arrangement';
import { memo } from 'react';
import { blockBounds, corners } from '../canvas/bounds.ts';
import styles from './block-thumbnail.module.css';

interface BlockThumbnailProps {
  readonly drawing: Drawing;
  /** CSS pixels; a stamp's otherwise. */
  readonly size?: number;
}

/** A block as a small picture: outline and splits. */
export const BlockThumbnail = memo(function BlockThumbnail({ drawing, size = 36 }: BlockThumbnailProps) {
  const { minX, minY, maxX, maxY } = blockBounds(drawing);
  const side = Math.max(maxX - minX, maxY - minY);
  const margin = side / 16;
  const outline = corners(drawing)
    .map(({ x, y }) => `${x},${y}`)
    .join(' ');
  const splits = drawing.splits.map(({ from, to }) => {
    const [a, b] = [drawing.points[from]!, drawing.points[to]!];
    return `M${a.x} ${a.y}L${b.x} ${b.y}`;
  });
  return (
    <svg
      className={styles.stamp}
      width={size}
      height={size}
      viewBox={`${(minX + maxX - side) / 2 - margin} ${(minY + maxY - side) / 2 - margin} ${side + 2 * margin} ${side + 2 * margin}`}
      aria-hidden="true"
    >
      <polygon points={outline} />
      <path d={splits.join('')} />
    </svg>
  );
});
