import type { Section } from '@seamwright/sewing';
import 'konva/lib/shapes/Line.js';
import { memo } from 'react';
import { Line } from 'react-konva/lib/ReactKonvaCore.js';
import { flat } from './outline-shape.tsx';
import { inFront, type Place } from './paint-patches.ts';
import { useTheme } from './theme.ts';

/** The finished outline of a section: heavier than the seams inside it. */
export const SectionOutline = memo(function SectionOutline({
  section,
  place = inFront,
}: {
  section: Section;
  place?: Place;
}) {
  const theme = useTheme();
  return (
    <Line
      points={flat(section.outline.map(place))}
      closed
      stroke={theme.ink}
      strokeWidth={3}
      strokeScaleEnabled={false}
      perfectDrawEnabled={false}
      lineJoin="round"
    />
  );
});
