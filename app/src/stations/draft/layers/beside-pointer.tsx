import type { Point } from '@seamwright/geometry';
import 'konva/lib/shapes/Rect.js';
import { Text as KonvaText } from 'konva/lib/shapes/Text.js';
import { Group, Rect, Text } from 'react-konva/lib/ReactKonvaCore.js';
import { FACE, useTheme } from '../../../canvas/theme.ts';
import { toScreen } from '../../../canvas/view.ts';
import { useView } from '../../../canvas/view-context.ts';

interface BesidePointerProps {
  readonly at: Point;
  readonly words: readonly string[];
  /** A finger covers what is below it: the words go above. */
  readonly above: boolean;
  /** CSS pixels: the width that the words must stay within. */
  readonly width: number;
}

const SIZE = 14;
const LINE = 19;
const PADDING = 7;

/** CSS pixels: down to here the tools lie over the canvas. */
const TOOLS_END = 56;

let measure: KonvaText | null = null;

function widthOf(text: string): number {
  measure ??= new KonvaText({ fontFamily: FACE, fontSize: SIZE, fontStyle: '600' });
  measure.text(text);
  return measure.width();
}

/** Words beside the pointer: what it caught, and measures. They turn to the other side at the canvas's edge. */
export function BesidePointer({ at, words, above, width }: BesidePointerProps) {
  const theme = useTheme();
  const view = useView();
  const wide = Math.max(...words.map(widthOf)) + 2 * PADDING;
  const high = words.length * LINE + PADDING;
  const { x, y } = toScreen(view, at);
  const left = x + 18 + wide > width ? -wide - 18 : 18;
  const top = above ? -high - 46 : y - high - 12 < TOOLS_END ? 16 : -high - 12;
  return (
    <Group x={at.x} y={at.y} scaleX={view.flip / view.scale} scaleY={1 / view.scale}>
      <Rect
        x={left}
        y={top}
        width={wide}
        height={high}
        fill={theme.ink}
        cornerRadius={3}
        perfectDrawEnabled={false}
      />
      {words.map((line, i) => (
        <Text
          key={line}
          x={left + PADDING}
          y={top + PADDING / 2 + i * LINE + 2}
          text={line}
          fontFamily={FACE}
          fontSize={SIZE}
          fontStyle={i === 0 ? '600' : '400'}
          fill={theme.sheet}
          perfectDrawEnabled={false}
        />
      ))}
    </Group>
  );
}
