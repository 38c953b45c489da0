import type { Drawing, DrawingPoint } from '@seamwright/arrangement';
import 'konva/lib/shapes/Circle.js';
import 'konva/lib/shapes/Rect.js';
import { memo } from 'react';
import { Circle, Rect } from 'react-konva/lib/ReactKonvaCore.js';
import { useTheme } from '../../../canvas/theme.ts';
import { useScale } from '../../../canvas/view-context.ts';
import { useWork } from '../../../store/work.ts';

/** What the adjusting tool can take hold of: corners are squares, ends of lines are round. */
export function Handles({ drawing }: { readonly drawing: Drawing }) {
  const corners = new Set(drawing.outline);
  return Object.values(drawing.points).map((point) => (
    <Handle key={point.id} point={point} corner={corners.has(point.id)} />
  ));
}

const Handle = memo(function Handle({
  point,
  corner,
}: {
  readonly point: DrawingPoint;
  readonly corner: boolean;
}) {
  const theme = useTheme();
  const scale = useScale();
  const chosen = useWork((work) => work.selection.points.includes(point.id));
  const radius = (chosen ? 7 : 4.5) / scale;
  const look = {
    fill: chosen ? theme.accent : theme.sheet,
    stroke: chosen ? theme.sheet : theme.ink,
    strokeWidth: 1.75,
    strokeScaleEnabled: false,
    perfectDrawEnabled: false,
  };
  return corner ? (
    <Rect {...look} x={point.x - radius} y={point.y - radius} width={2 * radius} height={2 * radius} />
  ) : (
    <Circle {...look} x={point.x} y={point.y} radius={radius} />
  );
});
