import { type Polygon, scaling, transformPolygon } from '@seamwright/geometry';
import { useMemo } from 'react';
import { addPolygon, inFront, type Look } from '../../../canvas/paint-patches.ts';
import { type Paint, Painting } from '../../../canvas/painting.tsx';
import { useLook } from '../../../canvas/use-look.ts';
import { type InspectedPiece, useInspectedPiece } from './use-inspected-piece.ts';

/** On the block: where the piece is laid down, what it must cover, where it lies after the flip, and what it leaves bare. */
export function PieceMarks() {
  const look = useLook(inFront);
  const inspected = useInspectedPiece();
  const paint = useMemo(() => paintPiece(inspected, look), [inspected, look]);
  return <Painting paint={paint} />;
}

/** CSS pixels. */
const LINE = 2.5;
const CASING = 2.5;
const DASHES: readonly number[] = [8, 5];
const DOTS: readonly number[] = [2, 5];

function paintPiece(inspected: InspectedPiece | null, look: Look): Paint {
  const { theme, scale: pixels } = look;
  return (context) => {
    if (inspected === null) return;
    const {
      need,
      sewn,
      block: { scale },
    } = inspected;
    const drawn = scaling(1 / scale);
    const outline = (polygon: Polygon, colour: string, dashes: readonly number[]) => {
      context.beginPath();
      addPolygon(context, transformPolygon(drawn, polygon), look.place);
      context.lineJoin = 'round';
      context.setLineDash([]);
      context.strokeStyle = theme.sheet;
      context.lineWidth = (LINE + 2 * CASING) / pixels;
      context.stroke();
      context.setLineDash(dashes.map((length) => length / pixels));
      context.strokeStyle = colour;
      context.lineWidth = LINE / pixels;
      context.stroke();
      context.setLineDash([]);
    };
    if (need.sewLine !== null) outline(sewn.laid, theme.accent, DOTS);
    outline(need.needed, theme.ink, DASHES);
    outline(sewn.flipped, theme.accent, []);
    context.beginPath();
    for (const part of sewn.uncovered) addPolygon(context, transformPolygon(drawn, part), look.place);
    context.fillStyle = theme.wrong;
    context.fill();
  };
}
