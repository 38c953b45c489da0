import type { Drawing } from '@seamwright/arrangement';
import 'konva/lib/shapes/Line.js';
import { memo } from 'react';
import { Line } from 'react-konva/lib/ReactKonvaCore.js';
import { corners } from './bounds.ts';
import { useTheme } from './theme.ts';

/** The numbers x, y, x, y … of points, as Konva takes them. */
export const flat = (points: readonly { readonly x: number; readonly y: number }[]): number[] =>
  points.flatMap((point) => [point.x, point.y]);

interface OutlineProps {
  readonly drawing: Drawing;
}

/** Drawings are made anew at every step of a drag; what is shown of them here is the same while their corners are. */
const isSameOutline = ({ drawing: a }: OutlineProps, { drawing: b }: OutlineProps): boolean =>
  a.outline.length === b.outline.length &&
  a.outline.every((id, i) => a.points[id] === b.points[b.outline[i]!]);

/** The sheet that the block lies on: its outline, filled. */
export const Sheet = memo(function Sheet({ drawing }: OutlineProps) {
  const theme = useTheme();
  return <Line points={flat(corners(drawing))} closed fill={theme.sheet} perfectDrawEnabled={false} />;
}, isSameOutline);

/** The block's outline as it was drawn. */
export const OutlineLine = memo(function OutlineLine({ drawing }: OutlineProps) {
  const theme = useTheme();
  return (
    <Line
      points={flat(corners(drawing))}
      closed
      stroke={theme.ink}
      strokeWidth={2}
      strokeScaleEnabled={false}
      perfectDrawEnabled={false}
      lineJoin="round"
    />
  );
}, isSameOutline);
