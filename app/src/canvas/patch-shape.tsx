import type { Patch } from '@seamwright/arrangement';
import type { Point } from '@seamwright/geometry';
import 'konva/lib/shapes/Line.js';
import 'konva/lib/shapes/Text.js';
import { memo } from 'react';
import { Group, Line, Text } from 'react-konva/lib/ReactKonvaCore.js';
import { useWork } from '../store/work.ts';
import { flat } from './outline-shape.tsx';
import { sectionLook, TILE_DENSITY, tile } from './section-look.ts';
import { FACE, useTheme } from './theme.ts';
import { useScale } from './view-context.ts';

/** Where a point of the block is shown: itself, or its mirror image. */
export type Place = (point: Point) => Point;
export const inFront: Place = (point) => point;

interface PatchFillProps {
  readonly patch: Patch;
  /** Index of the patch's section; -1: held by none. */
  readonly section: number;
  readonly place?: Place;
}

/** A patch in its section's tint and hatching. */
export const PatchFill = memo(function PatchFill({ patch, section, place = inFront }: PatchFillProps) {
  const theme = useTheme();
  const scale = useScale();
  const look = section < 0 ? null : sectionLook(section, theme.dark);
  const points = flat(patch.polygon.map(place));
  if (look === null) return <Line points={points} closed fill={theme.sheet} perfectDrawEnabled={false} />;
  return (
    <Line
      points={points}
      closed
      fillPatternImage={tile(look, theme.ink) as unknown as HTMLImageElement}
      fillPatternScaleX={1 / (scale * TILE_DENSITY)}
      fillPatternScaleY={1 / (scale * TILE_DENSITY)}
      perfectDrawEnabled={false}
    />
  );
});

/** The line round a patch; the seams of the block are these. */
export const PatchEdge = memo(function PatchEdge({
  patch,
  place = inFront,
}: {
  patch: Patch;
  place?: Place;
}) {
  const theme = useTheme();
  return (
    <Line
      points={flat(patch.polygon.map(place))}
      closed
      stroke={theme.ink}
      strokeWidth={1.25}
      strokeScaleEnabled={false}
      perfectDrawEnabled={false}
      lineJoin="round"
    />
  );
});

interface PatchSelectionProps {
  readonly patch: Patch;
  /** The id of the patch's record. */
  readonly id: string;
  readonly place?: Place;
}

/** The ring round a patch that is in hand; each patch asks only about itself. */
export const PatchSelection = memo(function PatchSelection({
  patch,
  id,
  place = inFront,
}: PatchSelectionProps) {
  const theme = useTheme();
  const inHand = useWork((work) => work.selection.patches.includes(id));
  if (!inHand) return null;
  return (
    <Line
      points={flat(patch.polygon.map(place))}
      closed
      fill={theme['accent-soft']}
      stroke={theme.accent}
      strokeWidth={4}
      strokeScaleEnabled={false}
      perfectDrawEnabled={false}
      lineJoin="round"
    />
  );
});

interface PatchNameProps {
  readonly patch: Patch;
  readonly name: string;
  readonly place?: Place;
}

/** CSS pixels: names are no larger than this, and left out below this. */
const LARGEST = 22;
const SMALLEST = 8;
/** CSS pixels: wider than any name. */
const BOX = 200;

/** A patch's name (A1) at its heart, as large as fits, upright in every view. */
export const PatchName = memo(function PatchName({ patch, name, place = inFront }: PatchNameProps) {
  const theme = useTheme();
  const scale = useScale();
  // A circle of the patch's depth holds the name when its half-diagonal fits; digits are about half as wide as tall.
  const fits = (patch.depth * scale * 2) / Math.hypot(1.1, 0.56 * name.length);
  const size = Math.min(fits, LARGEST);
  if (size < SMALLEST) return null;
  const at = place(patch.heart);
  // Written at screen size in a group of its own: canvases round the metrics of type that is a fraction of a unit.
  return (
    <Group x={at.x} y={at.y} scaleX={1 / scale} scaleY={1 / scale}>
      <Text
        text={name}
        x={-BOX / 2}
        y={-size * 0.6}
        width={BOX}
        height={size * 1.2}
        align="center"
        verticalAlign="middle"
        fontFamily={FACE}
        fontStyle="600"
        fontSize={size}
        fill={theme.ink}
        perfectDrawEnabled={false}
      />
    </Group>
  );
});
