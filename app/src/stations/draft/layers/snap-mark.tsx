import type { Snap } from '@seamwright/drafting';
import 'konva/lib/shapes/Circle.js';
import 'konva/lib/shapes/Line.js';
import { Circle, Group, Line } from 'react-konva/lib/ReactKonvaCore.js';
import { useTheme } from '../../../canvas/theme.ts';
import { useScale } from '../../../canvas/view-context.ts';
import { SNAP_SHAPES } from './snap-shapes.ts';

/** Marks what the pointer was caught by; each kind has a shape of its own, on a lighter border that sets it off. */
export function SnapMark({ snap }: { readonly snap: Snap }) {
  const theme = useTheme();
  const scale = useScale();
  const { strokes, closed = false, ring, dot } = SNAP_SHAPES[snap.kind];
  const looks = [
    { stroke: theme.sheet, strokeWidth: 5.5 },
    { stroke: theme.accent, strokeWidth: 2.5 },
  ];
  return (
    <Group x={snap.at.x} y={snap.at.y} scaleX={1 / scale} scaleY={1 / scale} listening={false}>
      {looks.map((look) => (
        <Group key={look.strokeWidth}>
          {ring !== undefined && <Circle {...look} radius={ring} perfectDrawEnabled={false} />}
          {strokes.map((points) => (
            <Line
              key={points.join()}
              {...look}
              points={[...points]}
              closed={closed && points.length > 4}
              lineJoin="round"
              perfectDrawEnabled={false}
            />
          ))}
        </Group>
      ))}
      {dot !== undefined && <Circle radius={dot} fill={theme.accent} perfectDrawEnabled={false} />}
    </Group>
  );
}
