import type { Finding } from '@seamwright/arrangement';
import type { Segment } from '@seamwright/geometry';
import { useMemo } from 'react';
import { pointedNow, usePointed } from '../store/pointed.ts';
import type { Study } from '../study/study.ts';
import { addPolygon, type Look, type Place } from './paint-patches.ts';
import { BLANK, type Paint, Painting } from './painting.tsx';
import { useLook } from './use-look.ts';

interface RingMarksProps {
  readonly study: Study;
  readonly place: Place;
}

/**
 * Seams in each other's way: each an arrow to the seam that it ends on. The ring that a list is at, or the only one, has
 * its patches outlined, too.
 */
export function RingMarks({ study, place }: RingMarksProps) {
  const look = useLook(place);
  const at = usePointed((pointing) => {
    const pointed = pointedNow(pointing);
    return pointed?.of === study.drawing ? (pointed.finding ?? null) : null;
  });
  const paint = useMemo(() => paintRings(study, at, look), [study, at, look]);
  return <Painting paint={paint} />;
}

/** CSS pixels. */
const WIDTH = 4;
const OUTLINE = 2.5;
const CASING = 3;
const HEAD = 13;
/** Radians between an arrow and either side of its head. */
const HEAD_TURN = 0.5;

function paintRings({ findings, arrangement }: Study, at: number | null, look: Look): Paint {
  const rings = findings.flatMap(({ ring }, index) => (ring === undefined ? [] : [{ ring, index }]));
  const detailed = at ?? (rings.length === 1 ? rings[0]!.index : null);
  const outlined = detailed === null ? undefined : findings[detailed];
  if (rings.length === 0 && outlined === undefined) return BLANK;
  return (context) => {
    if (outlined !== undefined) {
      outlinePatches(context, outlined, arrangement, look);
    }
    arrows(
      context,
      rings.flatMap(({ ring }) => ring),
      look,
    );
  };
}

function outlinePatches(
  context: CanvasRenderingContext2D,
  { patches = [] }: Finding,
  arrangement: Study['arrangement'],
  { theme, scale, place }: Look,
): void {
  context.beginPath();
  for (const patch of patches) {
    const shape = arrangement?.patches[patch];
    if (shape !== undefined) addPolygon(context, shape.polygon, place);
  }
  context.strokeStyle = theme.wrong;
  context.lineWidth = OUTLINE / scale;
  context.lineJoin = 'round';
  context.stroke();
}

/** Seams from where they begin to where each ends on the next, with a head there; light on either side of all of them. */
function arrows(context: CanvasRenderingContext2D, seams: readonly Segment[], look: Look): void {
  const { theme, scale } = look;
  context.lineCap = 'round';
  context.lineJoin = 'round';
  context.beginPath();
  for (const seam of seams) addArrow(context, seam, look);
  context.strokeStyle = theme.sheet;
  context.lineWidth = (WIDTH + 2 * CASING) / scale;
  context.stroke();
  context.strokeStyle = theme.wrong;
  context.lineWidth = WIDTH / scale;
  context.stroke();
}

function addArrow(context: CanvasRenderingContext2D, seam: Segment, { scale, place }: Look): void {
  const [a, b] = [place(seam.a), place(seam.b)];
  const angle = Math.atan2(b.y - a.y, b.x - a.x);
  context.moveTo(a.x, a.y);
  context.lineTo(b.x, b.y);
  for (const turn of [HEAD_TURN, -HEAD_TURN]) {
    const size = HEAD / scale;
    context.moveTo(b.x - size * Math.cos(angle + turn), b.y - size * Math.sin(angle + turn));
    context.lineTo(b.x, b.y);
  }
}
