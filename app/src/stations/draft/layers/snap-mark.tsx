import type { Snap } from '@seamwright/drafting';
import 'konva/lib/shapes/Circle.js';
import 'konva/lib/shapes/Line.js';
import { Circle, Group, Line } from 'react-konva/lib/ReactKonvaCore.js';
import { useTheme } from '../../../canvas/theme.ts';
import { useScale } from '../../../canvas/view-context.ts';

/** CSS pixels. */
const R = 8;

const SQUARE = [-R, -R, R, -R, R, R, -R, R];
const TRIANGLE = [0, -R - 2, R + 1, R - 1, -R - 1, R - 1];
const DIAMOND = [0, -R, R, 0, 0, R, -R, 0];
const RISING = [-R, R, R, -R];
const FALLING = [-R, -R, R, R];
/** A foot and an upright on it, two level strokes, two marks as on equal sides, a corner's two legs. */
const SQUARE_TO = [-R, -R, -R, R, R, R];
const STROKES = [
  [-R, -4, R, -4],
  [-R, 4, R, 4],
];
const TICKS = [
  [-4, -R, -4, R],
  [4, -R, 4, R],
];
const LEGS = [R, -R, -R, R, R, R];
const ACROSS = [-R, 0, R, 0];
const UPRIGHT = [0, -R, 0, R];

/** Marks what the pointer was caught by; each kind has a shape of its own. */
export function SnapMark({ snap }: { readonly snap: Snap }) {
  const theme = useTheme();
  const scale = useScale();
  const look = { stroke: theme.accent, strokeWidth: 2.5, perfectDrawEnabled: false };
  const marks = {
    corner: <Line {...look} points={SQUARE} closed />,
    end: <Circle {...look} radius={R} />,
    crossing: (
      <>
        <Line {...look} points={RISING} />
        <Line {...look} points={FALLING} />
      </>
    ),
    middle: <Line {...look} points={TRIANGLE} closed />,
    line: <Line {...look} points={DIAMOND} closed />,
    edge: <Line {...look} points={DIAMOND} closed />,
    grid: (
      <>
        <Line {...look} points={ACROSS} />
        <Line {...look} points={UPRIGHT} />
      </>
    ),
    perpendicular: <Line {...look} points={SQUARE_TO} />,
    parallel: STROKES.map((points) => <Line key={points.join()} {...look} points={points} />),
    equal: TICKS.map((points) => <Line key={points.join()} {...look} points={points} />),
    angle: <Line {...look} points={LEGS} />,
    free: <Circle radius={3} fill={theme.accent} perfectDrawEnabled={false} />,
  };
  return (
    <Group x={snap.at.x} y={snap.at.y} scaleX={1 / scale} scaleY={1 / scale}>
      {marks[snap.kind]}
    </Group>
  );
}
