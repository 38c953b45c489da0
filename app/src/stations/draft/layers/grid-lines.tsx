import type { Grid } from '@seamwright/drafting';
import type { Box } from '@seamwright/geometry';
import { memo } from 'react';
import { Shape } from 'react-konva/lib/ReactKonvaCore.js';
import { useTheme } from '../../../canvas/theme.ts';
import { useScale } from '../../../canvas/view-context.ts';

interface GridLinesProps {
  /** Where the grid is drawn, inches. */
  readonly box: Box;
  readonly grid: Grid;
}

/** CSS pixels: lines closer than this would be a grey wash. */
const CLOSEST = 9;

/** The drawing grid; where it would be too fine to see, every second, fourth … line of it. */
export const GridLines = memo(function GridLines({ box, grid }: GridLinesProps) {
  const theme = useTheme();
  const scale = useScale();
  const across = seen(grid.across, scale);
  const down = seen(grid.down, scale);
  return (
    <Shape
      stroke={theme['line-strong']}
      opacity={0.45}
      perfectDrawEnabled={false}
      sceneFunc={(context, shape) => {
        context.setAttr('lineWidth', 1 / scale);
        context.beginPath();
        for (const x of multiples(box.minX, box.maxX, grid.origin.x, across)) {
          context.moveTo(x, box.minY);
          context.lineTo(x, box.maxY);
        }
        for (const y of multiples(box.minY, box.maxY, grid.origin.y, down)) {
          context.moveTo(box.minX, y);
          context.lineTo(box.maxX, y);
        }
        context.setAttr('strokeStyle', shape.stroke());
        context.stroke();
      }}
    />
  );
});

/** The grid's own distance, or the next one of it that can be seen. */
function seen(step: number, scale: number): number {
  let shown = step;
  while (shown * scale < CLOSEST) shown *= 2;
  return shown;
}

function* multiples(from: number, to: number, origin: number, step: number): Generator<number> {
  for (let n = Math.ceil((from - origin) / step); origin + n * step <= to; n++) yield origin + n * step;
}
