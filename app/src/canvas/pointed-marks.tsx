import { midpoint, type Point, type Segment } from '@seamwright/geometry';
import { useMemo } from 'react';
import { type Pointed, pointedNow, usePointed } from '../store/pointed.ts';
import type { Study } from '../study/study.ts';
import { addPolygon, type Look, type Place } from './paint-patches.ts';
import { BLANK, type Paint, Painting } from './painting.tsx';
import { useLook } from './use-look.ts';

interface PointedMarksProps {
  readonly study: Study;
  readonly place: Place;
}

/**
 * What a list beside the canvas is at: rings round patches, seams made heavy, lines that would be added dashed, those that
 * would be taken away crossed out.
 */
export function PointedMarks({ study, place }: PointedMarksProps) {
  const look = useLook(place);
  const pointed = usePointed(pointedNow);
  const shown = pointed?.of === study.drawing ? pointed : null;
  const paint = useMemo(() => paintPointed(shown, study, look), [shown, study, look]);
  return <Painting paint={paint} />;
}

/** CSS pixels. */
const RING = 4;
const SEAM = 6;
const ADDED = 3;
/** Light on either side of a line, so that it stands out from hatching and seams. */
const CASING = 3;
/** Half the width of the cross on a line that would be taken away. */
const CROSS = 8;
const DASHES: readonly number[] = [9, 6];

function paintPointed(pointed: Pointed | null, { arrangement }: Study, look: Look): Paint {
  if (pointed === null) return BLANK;
  const { patches = [], seams = [], added = [], removed = [] } = pointed;
  const { theme, scale, place } = look;
  return (context) => {
    context.lineJoin = 'round';
    context.lineCap = 'round';
    context.beginPath();
    for (const patch of patches) {
      const shape = arrangement?.patches[patch];
      if (shape !== undefined) addPolygon(context, shape.polygon, place);
    }
    stroke(context, theme.accent, RING / scale);
    context.beginPath();
    addSegments(context, seams, place);
    stroke(context, theme.sheet, (SEAM + CASING) / scale);
    stroke(context, theme.accent, SEAM / scale);
    context.beginPath();
    addSegments(context, removed, place);
    for (const { a, b } of removed) addCross(context, place(midpoint(a, b)), CROSS / scale);
    stroke(context, theme.sheet, (ADDED + 2 * CASING) / scale);
    stroke(context, theme.wrong, ADDED / scale);
    context.beginPath();
    addSegments(context, added, place);
    stroke(context, theme.sheet, (ADDED + 2 * CASING) / scale);
    context.setLineDash(DASHES.map((pixels) => pixels / scale));
    context.lineCap = 'butt';
    stroke(context, theme.accent, ADDED / scale);
    context.setLineDash([]);
  };
}

function stroke(context: CanvasRenderingContext2D, colour: string, width: number): void {
  context.strokeStyle = colour;
  context.lineWidth = width;
  context.stroke();
}

/** Adds stretches to the path that is being drawn. */
function addSegments(context: CanvasRenderingContext2D, segments: readonly Segment[], place: Place): void {
  for (const segment of segments) {
    const [a, b] = [place(segment.a), place(segment.b)];
    context.moveTo(a.x, a.y);
    context.lineTo(b.x, b.y);
  }
}

function addCross(context: CanvasRenderingContext2D, { x, y }: Point, size: number): void {
  context.moveTo(x - size, y - size);
  context.lineTo(x + size, y + size);
  context.moveTo(x - size, y + size);
  context.lineTo(x + size, y - size);
}
