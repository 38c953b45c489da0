import { boundingBox, type Polygon } from '@seamwright/geometry';
import type { SewingPlan } from '@seamwright/sewing';
import { memo } from 'react';
import { sectionLook } from '../../canvas/section-look.ts';
import { useTheme } from '../../canvas/theme.ts';
import type { Study } from '../../study/study.ts';
import styles from './ways.module.css';

interface WayThumbnailProps {
  readonly study: Study;
  readonly plan: SewingPlan | null;
}

/** How a plan divides the block, small: its sections in their tints. Said in figures below it. */
export const WayThumbnail = memo(function WayThumbnail({ study, plan }: WayThumbnailProps) {
  const { dark } = useTheme();
  const outline = study.arrangement!.outline;
  const { minX, minY, maxX, maxY } = boundingBox(outline);
  // Room for half of the outline's width on the screen.
  const margin = Math.max(maxX - minX, maxY - minY) / 50;
  const box = [minX - margin, minY - margin, maxX - minX + 2 * margin, maxY - minY + 2 * margin];
  return (
    <svg className={styles.thumbnail} viewBox={box.join(' ')} aria-hidden="true">
      <polygon points={points(outline)} />
      {plan?.sections.map(({ letter, outline: corners }, index) => (
        <polygon key={letter} points={points(corners)} style={{ fill: sectionLook(index, dark).tint }} />
      ))}
    </svg>
  );
});

const points = (polygon: Polygon): string => polygon.map(({ x, y }) => `${x},${y}`).join(' ');
