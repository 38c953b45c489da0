import type { Drawing } from '@seamwright/arrangement';
import { centreOf, turnsAndAxes } from '@seamwright/drafting';
import 'konva/lib/shapes/Circle.js';
import 'konva/lib/shapes/Line.js';
import { Circle, Group, Line } from 'react-konva/lib/ReactKonvaCore.js';
import { blockBounds } from '../../../canvas/bounds.ts';
import { useTheme } from '../../../canvas/theme.ts';
import { useScale } from '../../../canvas/view-context.ts';
import { useHand } from '../hand.ts';

/** How far the axes reach, in half diagonals of the block. */
const REACH = 1.1;
/** CSS pixels: the arms that show turns without axes, and the ring in the centre. */
const ARM = 22;
const RING = 5;

/** The axes and the centre about which things are repeated, faintly; nothing while they are not. */
export function RepeatAxes({ drawing }: { readonly drawing: Drawing }) {
  const theme = useTheme();
  const scale = useScale();
  const symmetry = useHand((hand) => hand.symmetry);
  const found = turnsAndAxes(symmetry);
  if (!found.ok || found.value.turns + found.value.axes.length === 1) return null;
  const { turns, axes } = found.value;
  const { minX, minY, maxX, maxY } = blockBounds(drawing);
  const reach = (REACH * Math.hypot(maxX - minX, maxY - minY)) / 2;
  const look = { stroke: theme.accent, strokeScaleEnabled: false, perfectDrawEnabled: false };
  return (
    <Group {...centreOf(drawing)} opacity={0.6}>
      {axes.map((angle) => (
        <Line
          key={angle}
          {...look}
          rotation={-angle}
          points={[-reach, 0, reach, 0]}
          strokeWidth={1.25}
          dash={[10, 4, 2, 4]}
        />
      ))}
      {axes.length === 0 &&
        Array.from({ length: turns }, (_, k) => (
          <Line
            // biome-ignore lint/suspicious/noArrayIndexKey: the arms are told apart by their turn
            key={k}
            {...look}
            rotation={(360 * k) / turns}
            points={[0, -RING / scale, 0, -ARM / scale]}
            strokeWidth={2}
          />
        ))}
      <Circle {...look} radius={RING / scale} strokeWidth={2} />
    </Group>
  );
}
