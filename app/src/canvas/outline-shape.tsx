import type { Drawing } from '@seamwright/arrangement';
import 'konva/lib/shapes/Line.js';
import { Line } from 'react-konva/lib/ReactKonvaCore.js';
import { corners } from './bounds.ts';
import { useTheme } from './theme.ts';

/** The numbers x, y, x, y … of points, as Konva takes them. */
export const flat = (points: readonly { readonly x: number; readonly y: number }[]): number[] =>
  points.flatMap((point) => [point.x, point.y]);

/** The sheet that the block lies on: its outline, filled. */
export function Sheet({ drawing }: { readonly drawing: Drawing }) {
  const theme = useTheme();
  return <Line points={flat(corners(drawing))} closed fill={theme.sheet} perfectDrawEnabled={false} />;
}

/** The block's outline as it was drawn. */
export function OutlineLine({ drawing }: { readonly drawing: Drawing }) {
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
}
