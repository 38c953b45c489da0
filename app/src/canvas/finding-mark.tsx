import type { Finding } from '@seamwright/arrangement';
import type { Point } from '@seamwright/geometry';
import 'konva/lib/shapes/Line.js';
import 'konva/lib/shapes/Text.js';
import { memo } from 'react';
import { Group, Line, Text } from 'react-konva/lib/ReactKonvaCore.js';
import type { Stand } from './mark-places.ts';
import { flat } from './outline-shape.tsx';
import { FACE, useTheme } from './theme.ts';
import { useFlip, useScale } from './view-context.ts';

interface FindingMarkProps {
  readonly finding: Finding;
  /** Its number in the list of findings, from 1. */
  readonly number: number;
  /** Where its marks stand, CSS pixels from the block's origin. */
  readonly marks: readonly Stand[];
}

/** CSS pixels. */
const SIZE = 11;

/** An octagon stops, a triangle warns: the sign alone tells an error from a caution. */
const OCTAGON = [22.5, 67.5, 112.5, 157.5, 202.5, 247.5, 292.5, 337.5].map((degrees) => ({
  x: SIZE * Math.cos((degrees * Math.PI) / 180),
  y: SIZE * Math.sin((degrees * Math.PI) / 180),
}));
const TRIANGLE = [
  { x: 0, y: -13 },
  { x: 13, y: 10 },
  { x: -13, y: 10 },
];

/** Where its sign stands: a ring of seams has one, in its middle, so that the ends of the seams are seen. */
export function placesOf({ at, ring }: Finding): readonly Point[] {
  if (ring === undefined || at.length === 0) return at;
  const mean = (coordinate: (point: Point) => number) =>
    at.reduce((sum, point) => sum + coordinate(point), 0) / at.length;
  return [{ x: mean(({ x }) => x), y: mean(({ y }) => y) }];
}

/** A finding's sign and number at each of its places, or beside it with a line to it; the same size at every zoom. */
export const FindingMark = memo(function FindingMark({ finding, number, marks }: FindingMarkProps) {
  const theme = useTheme();
  const scale = useScale();
  const flip = useFlip();
  const error = finding.severity === 'error';
  const fill = error ? theme.wrong : theme.caution;
  return marks.map(({ x, y, from }, index) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: places have no name of their own
    <Group key={index} x={x / scale} y={y / scale} scaleX={flip / scale} scaleY={1 / scale}>
      {from !== null && (
        <Line
          points={[(from.x - x) * flip, from.y - y, 0, 0]}
          stroke={fill}
          strokeWidth={2}
          lineCap="round"
          perfectDrawEnabled={false}
        />
      )}
      <Line
        points={flat(error ? OCTAGON : TRIANGLE)}
        closed
        fill={fill}
        stroke={theme.sheet}
        strokeWidth={1.5}
        lineJoin="round"
        perfectDrawEnabled={false}
      />
      <Text
        text={String(number)}
        x={-20}
        y={error ? -7 : -5}
        width={40}
        height={15}
        align="center"
        verticalAlign="middle"
        fontFamily={FACE}
        fontStyle="700"
        fontSize={error ? 13 : 12}
        fill={error ? theme['on-wrong'] : theme['on-caution']}
        perfectDrawEnabled={false}
      />
    </Group>
  ));
});
